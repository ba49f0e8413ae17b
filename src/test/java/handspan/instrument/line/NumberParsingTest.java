package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers in a line against the class library's own parser, which rounds correctly. */
class NumberParsingTest {
    private static final int NUMBERS = 100_000;

    private static final double EXACT = 0;

    private final LineTokens tokens = new LineTokens();

    private double parsed(String text) {
        byte[] bytes = Board.bytes(text);
        assertTrue(tokens.split(bytes, bytes.length, ' ', false), text);
        assertEquals(1, tokens.count(), text);
        assertFalse(tokens.isMissing(0), text);
        return tokens.value(0);
    }

    /** A double holds 15 digits and powers of ten to 22 exactly, so one division or product is correctly rounded. */
    @Test
    void numbersAsBoardsPrintThemAreExact() {
        Random random = new Random(72);
        for (int i = 0; i < NUMBERS; i++) {
            String text = decimal(random, 1 + random.nextInt(15));
            assertEquals(Double.parseDouble(text), parsed(text), EXACT, text);
        }
    }

    @Test
    void numbersWithExponentsAreExact() {
        Random random = new Random(73);
        for (int i = 0; i < NUMBERS; i++) {
            BigDecimal mantissa = new BigDecimal(new BigInteger(20 + random.nextInt(29), random), random.nextInt(8));
            int exponent = random.nextInt(29) - 14;
            String sign = exponent < 0 ? "-" : random.nextBoolean() ? "+" : "";
            String text = mantissa.toPlainString() + (random.nextBoolean() ? "e" : "E") + sign + Math.abs(exponent);
            assertEquals(Double.parseDouble(text), parsed(text), EXACT, text);
        }
    }

    /** Beyond that the last places may differ: 16 to 40 digits, exponents up to 290. */
    @Test
    void numbersThatNoBoardPrintsAreRightToFourteenFigures() {
        Random random = new Random(74);
        for (int i = 0; i < NUMBERS; i++) {
            String text = decimal(random, 16 + random.nextInt(25)) + "e" + (random.nextInt(540) - 280);
            double expected = Double.parseDouble(text);
            assertEquals(expected, parsed(text), 1e-14 * Math.abs(expected), text);
        }
    }

    private static String decimal(Random random, int digits) {
        StringBuilder text = new StringBuilder(random.nextInt(3) == 0 ? "-" : "");
        int point = random.nextInt(digits + 1);
        for (int i = 0; i < digits; i++) {
            if (i == point) {
                text.append('.');
            }
            text.append((char) ('0' + random.nextInt(10)));
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0",
                "-0",
                "0.0",
                "-0.0",
                "5.",
                ".5",
                "-.5",
                "+3",
                "+.25",
                "007",
                "0000000000000000000000000012.5",
                "0.000000000000000000000000000125",
                "1e308",
                "1E+308",
                "-1e308",
                "1e-300",
                "1e0",
                "9007199254740992",
                "99999999999999999999",
                "123456789012345678901234567890",
                "18446744073709551616",
                "65535",
                "1e22"
            })
    void oddFormsHaveTheirValue(String text) {
        double expected = Double.parseDouble(text);
        assertEquals(expected, parsed(text), 4 * Math.ulp(expected), text);
        assertEquals(1 / expected < 0, 1 / parsed(text) < 0, "sign of " + text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e999", "-1e999", "1e309", "1e99999999999999999999", "nan", "inf", "-inf", "Infinity"})
    void whatIsNoFiniteNumberIsAbsent(String text) {
        byte[] bytes = Board.bytes(text);
        assertTrue(tokens.split(bytes, bytes.length, ' ', false));
        assertEquals(1, tokens.count());
        assertTrue(tokens.isMissing(0));
        assertEquals(0, tokens.value(0), EXACT);
    }

    @Test
    void aNumberTooSmallForADoubleIsNothing() {
        assertEquals(0, parsed("1e-999"), EXACT);
        assertEquals(0, parsed("1e-99999999999999999999"), EXACT);
    }

    /** Where a number ends. */
    @ParameterizedTest
    @CsvSource({
        "12-5, 2",
        "1.2.3, 2",
        "12e, 1",
        "12e+, 1",
        "1e5e5, 2",
        "--5, 1",
        "+-5, 1",
        "5-, 1",
        "., 0",
        "-, 0",
        "e5, 1"
    })
    void oddTextHasThisManyNumbers(String text, int count) {
        byte[] bytes = Board.bytes(text);
        assertTrue(tokens.split(bytes, bytes.length, ' ', false));
        assertEquals(count, tokens.count(), text);
    }

    @Test
    void aDecimalCommaIsAPointOnlyBetweenDigits() {
        byte[] bytes = Board.bytes("-23,4;,5;6,;7");
        assertTrue(tokens.split(bytes, bytes.length, ';', true));
        assertEquals(4, tokens.count());
        assertEquals(-23.4, tokens.value(0), EXACT);
        assertEquals(5, tokens.value(1), EXACT);
        assertEquals(6, tokens.value(2), EXACT);
        assertEquals(7, tokens.value(3), EXACT);
    }
}
