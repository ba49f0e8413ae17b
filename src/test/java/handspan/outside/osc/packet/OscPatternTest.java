package handspan.outside.osc.packet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rules 1 to 5 of OSC 1.0 (M. Wright, 2002), section "OSC Message Dispatching and Pattern Matching". */
class OscPatternTest {
    /**
     * Expected values follow from the five rules and were checked with an independent matcher; the first row is the
     * bundle example of the specification's page of examples.
     */
    @ParameterizedTest
    @CsvSource({
        "/first/this/one, /first/this/one, 1",
        "/second/[1-2], /second/1, 1",
        "/second/[1-2], /second/3, 0",
        "/third/*, /third/a, 1",
        "/third/*, /third/a/b, 0",
        "/third/*, /third, 0",
        "/?/b/*c, /a/b/xyzc, 1",
        "/?/b/*c, /ab/b/c, 0",
        "'/{foo,bar}/x', /foo/x, 1",
        "'/{foo,bar}/x', /bar/x, 1",
        "'/{foo,bar}/x', /fo/x, 0",
        "/a[!0-9], /ab, 1",
        "/a[0-], /a-, 1",
        "/a[0-], /a0, 1",
        "/a[b!], /a!, 1",
        "/a[b!], /ab, 1",
        "/osc*/freq, /osc/freq, 1",
        "/osc*/freq, /oscillator/freq, 1",
        "/a/*/c, /a/b/d/c, 0",
        "/x, /X, 0",
        "'/{ab,a}c', /ac, 1",
        "/*, /a/b, 0",
        "/a*b*c, /abc, 1",
        "/a*b*c, /acb, 0",
        "/[a-c][x-z], /bw, 0",
        "'/v{1,2,10}', /v10, 1",
        "'/v{1,2,10}', /v100, 0",
        "/p.q, /pxq, 0",
    })
    void patternsMeanWhatTheSpecificationSays(String pattern, String address, int matches) {
        assertEquals(matches == 1, OscPattern.of(pattern).matches(address));
    }

    /** By the same rules: a list may hold nothing; a set's opposite never takes a slash; a minus in front is plain. */
    @ParameterizedTest
    @CsvSource({
        "'/a{,b}c', /ac, 1",
        "'/{a,ab}{c,bc}', /abbc, 1",
        "'/{a,ab}{c,bc}', /abb, 0",
        "/a[!b]c, /a/c, 0",
        "/[-a], /-, 1",
        "/a[!], /ax, 1",
        "/a[], /ax, 0",
        "/**, /, 1",
        "/a?, /a, 0",
        "/a, a, 0",
        "'/{a*,b}', /ax, 0",
    })
    void cornersOfTheRules(String pattern, String address, int matches) {
        assertEquals(matches == 1, OscPattern.of(pattern).matches(address));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "moth", "/a[b", "/a{b,c", "/a]", "/a}", "/[a/b]"})
    void whatIsNoPatternIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> OscPattern.of(text));
    }

    @Test
    void addressesAreToldFromPatterns() {
        assertFalse(OscPattern.isPattern("/moth/pitch"));
        for (String pattern : new String[] {"/moth/*", "/m?th", "/m[o]th", "/{moth,other}"}) {
            assertTrue(OscPattern.isPattern(pattern), pattern);
        }
    }

    /** A matcher that tries one way after the other needs some 60 over 30 = 10^17 steps here. */
    @Test
    void manyStarsCostNothing() {
        String stars = "/" + "*a".repeat(30) + "*b";
        String address = "/" + "a".repeat(60);
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> {
            assertFalse(OscPattern.of(stars).matches(address));
            assertTrue(OscPattern.of(stars).matches(address + "b"));
            assertTrue(OscPattern.of("/" + "*".repeat(60_000)).matches("/x"));
        });
    }

    /** Against the regular expressions of the Java library, into which the five rules are put here. */
    @Test
    void randomPatternsMatchAsRegularExpressionsDo() {
        Random random = new Random(5);
        String[] pieces = {"a", "b", "-", "*", "?", "[ab]", "[!a]", "[a-b]", "{a,ba}", "{,b}", "/"};
        String[] regular = {"a", "b", "-", "[^/]*", "[^/]", "[ab]", "[^a/]", "[a-b]", "(a|ba)", "(|b)", "/"};
        int matched = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder pattern = new StringBuilder("/");
            StringBuilder regex = new StringBuilder("/");
            for (int n = random.nextInt(6); n >= 0; n--) {
                int piece = random.nextInt(pieces.length);
                pattern.append(pieces[piece]);
                regex.append(regular[piece]);
            }
            StringBuilder address = new StringBuilder("/");
            for (int n = random.nextInt(6); n >= 0; n--) {
                address.append("aab-/".charAt(random.nextInt(5)));
            }
            boolean expected = Pattern.matches(regex.toString(), address);
            matched += expected ? 1 : 0;
            assertEquals(
                    expected, OscPattern.of(pattern.toString()).matches(address.toString()), pattern + " " + address);
        }
        assertTrue(matched > 1_000, matched + " matched");
    }

    @Test
    void anyCharactersAtAllAreAPatternOrARefusal() {
        Random random = new Random(6);
        int refused = 0;
        for (int i = 0; i < 50_000; i++) {
            StringBuilder text = new StringBuilder("/");
            for (int n = random.nextInt(20); n > 0; n--) {
                text.append("ab/?*[]{},!-é\u0000".charAt(random.nextInt(14)));
            }
            try {
                OscPattern.of(text.toString()).matches("/ab/ba");
            } catch (IllegalArgumentException e) {
                refused++;
            }
        }
        assertTrue(refused > 1_000 && refused < 49_000, refused + " refused");
    }
}
