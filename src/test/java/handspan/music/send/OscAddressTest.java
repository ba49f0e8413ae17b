package handspan.music.send;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OscAddressTest {
    /** OSC 1.0 (M. Wright, 2002), "OSC Address Spaces and OSC Addresses": printable, without these. */
    private static final String FORBIDDEN = " #*,/?[]{}";

    @ParameterizedTest
    @CsvSource({
        "Moth, Moth",
        "Ring & Reed #2, Ring_&_Reed__2",
        "'  padded  ', padded",
        "a/b*c?d[e]f{g}h_i, a_b_c_d_e_f_g_h_i",
        "'one,two', one_two",
        "Flöte à bec, Flote_a_bec",
        "Ærø, _r_",
        "'', instrument",
        "'   ', instrument",
        "///, ___",
    })
    void anyNameBecomesOnePartOfAnAddress(String name, String part) {
        assertEquals(part, OscAddress.part(name));
    }

    @Test
    void everyPrintableCharacterIsKeptUnlessTheSpecificationForbidsIt() {
        for (char c = '!'; c <= '~'; c++) {
            String name = "x" + c + "x";
            assertEquals(FORBIDDEN.indexOf(c) < 0 ? name : "x_x", OscAddress.part(name));
        }
    }

    @Test
    void whateverTheNameThePartMakesAnAddress() {
        Random random = new Random(24);
        for (int i = 0; i < 2_000; i++) {
            StringBuilder name = new StringBuilder();
            for (int n = random.nextInt(12); n > 0; n--) {
                name.appendCodePoint(random.nextInt(random.nextBoolean() ? 0x80 : 0x1_F700));
            }
            String part = OscAddress.part(name.toString());
            assertDoesNotThrow(() -> OscAddress.check("/" + part + "/pitch"));
        }
    }

    @Test
    void everyForbiddenCharacterIsRefusedAndItsNeighbourAccepted() {
        for (int i = 0; i < FORBIDDEN.length(); i++) {
            char c = FORBIDDEN.charAt(i);
            if (c != '/') {
                String address = "/a" + c + "b/pitch";
                IllegalArgumentException e =
                        assertThrows(IllegalArgumentException.class, () -> OscAddress.check(address));
                assertTrue(String.valueOf(e.getMessage()).contains("character 3 "), e.getMessage());
                assertDoesNotThrow(() -> OscAddress.check("/a" + (char) (c + 1) + "b/pitch"));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/a", "/a/b", "/a/b/c", "/-/.", "/1", "/a~", "/A|b"})
    void anAddressOfNamesIsAccepted(String address) {
        assertDoesNotThrow(() -> OscAddress.check(address));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a", "/", "/a/", "//a", "/a//b", "a/b", "/a\t", "/a\u007f", "/\u00e9", "/a b"})
    void anAddressWithoutNamesOrWithStrangeCharactersIsRefused(String address) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> OscAddress.check(address));
        assertTrue(String.valueOf(e.getMessage()).contains("'" + address + "'"), e.getMessage());
    }
}
