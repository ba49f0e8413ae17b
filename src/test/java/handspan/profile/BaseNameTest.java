package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each refused name beside one that is nearly the same and allowed. Characters and device names: Microsoft Learn,
 * "Naming Files, Paths, and Namespaces", section "Naming Conventions" (from memory); length: 255 bytes on usual file
 * systems, less what temporary files and versions add (common practice).
 */
class BaseNameTest {
    static Stream<Arguments> twins() {
        return Stream.of(
                Arguments.of("", "a"),
                Arguments.of(".", "a.b"),
                Arguments.of("..", "a..b"),
                Arguments.of(".hidden", "hidden"),
                Arguments.of("hall.", "hall.1"),
                Arguments.of(" hall", "big hall"),
                Arguments.of("hall ", "hall 2"),
                Arguments.of("\u00a0hall", "big\u00a0hall"),
                Arguments.of("\u3000\u90e8\u5c4b", "\u90e8\u5c4b"),
                Arguments.of("a/b", "a-b"),
                Arguments.of("../hall", "..-hall".substring(2)),
                Arguments.of("a\\b", "a_b"),
                Arguments.of("c:hall", "c-hall"),
                Arguments.of("hall?", "hall!"),
                Arguments.of("\"hall\"", "'hall'"),
                Arguments.of("a<b", "a(b"),
                Arguments.of("a|b", "a&b"),
                Arguments.of("hall*", "hall+"),
                Arguments.of("a\tb", "a b"),
                Arguments.of("a\u0000b", "a0b"),
                Arguments.of("a\u007fb", "a~b"),
                Arguments.of("a\u0085b", "a\u00e5b"),
                Arguments.of("con", "console"),
                Arguments.of("NUL", "NULL"),
                Arguments.of("Aux", "Auxerre"),
                Arguments.of("prn.old", "prn-old"),
                Arguments.of("com1", "com10"),
                Arguments.of("LPT9", "LPT"),
                Arguments.of("com\u00b2", "com\u2082"),
                Arguments.of("nul .a", "nul a"),
                Arguments.of("x".repeat(101), "x".repeat(100)),
                Arguments.of("\u00e9".repeat(51), "\u00e9".repeat(50)),
                Arguments.of("half \ud834", "whole \ud834\udd1e"),
                Arguments.of("Salle/\u00e9t\u00e9", "Salle d'\u00e9t\u00e9"));
    }

    @ParameterizedTest
    @MethodSource("twins")
    void aNameIsRefusedAndItsNearMissIsNot(String refused, String allowed) throws ProfileException {
        ProfileException e = assertThrows(ProfileException.class, () -> BaseName.check(refused, "room"));
        assertEquals(ProfileException.Kind.BAD_NAME, e.kind());
        assertTrue(String.valueOf(e.getMessage()).contains("room name '" + refused + "'"), e.getMessage());
        BaseName.check(allowed, "room");
    }
}
