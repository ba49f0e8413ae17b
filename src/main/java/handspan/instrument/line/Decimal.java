package handspan.instrument.line;

/** Decimal numbers as boards print them, from bytes, without making a string and without regard to any locale. */
final class Decimal {
    private static final double[] POWERS = new double[23];

    static {
        double power = 1;
        for (int i = 0; i < POWERS.length; i++) {
            POWERS[i] = power;
            power *= 10;
        }
    }

    private Decimal() {}

    /**
     * The number between two positions: an optional sign, digits, a point or comma, digits, an exponent. Exact for up
     * to 15 digits and powers of ten to 22, as board programs print them; else within a few units of the last place.
     */
    static double parse(byte[] line, int from, int to) {
        long mantissa = 0;
        int exponent = 0;
        int digits = 0;
        boolean fraction = false;
        boolean negative = false;
        for (int at = from; at < to; at++) {
            byte b = line[at];
            if (b == '-') {
                negative = true;
            } else if (isDigit(b)) {
                if (digits < 18) {
                    mantissa = 10 * mantissa + (b - '0');
                    digits += mantissa == 0 ? 0 : 1;
                    exponent -= fraction ? 1 : 0;
                } else {
                    exponent += fraction ? 0 : 1;
                }
            } else if (b == 'e' || b == 'E') {
                exponent += exponentOf(line, at + 1, to);
                break;
            } else if (b != '+') {
                fraction = true;
            }
        }
        double number = scaled(mantissa, exponent);
        return negative ? -number : number;
    }

    /** A whole number written in digits to base 16; infinite beyond 13 of them, which no double holds exactly. */
    static double parseHex(byte[] line, int from, int to) {
        if (to - from > 13) {
            return Double.POSITIVE_INFINITY;
        }
        long number = 0;
        for (int at = from; at < to; at++) {
            number = 16 * number + Character.digit(line[at], 16);
        }
        return number;
    }

    private static int exponentOf(byte[] line, int from, int to) {
        int exponent = 0;
        for (int at = from; at < to; at++) {
            if (isDigit(line[at]) && exponent < 10_000) {
                exponent = 10 * exponent + (line[at] - '0');
            }
        }
        return line[from] == '-' ? -exponent : exponent;
    }

    private static double scaled(long mantissa, int exponent) {
        if (exponent == 0 || mantissa == 0) {
            return mantissa;
        }
        int size = Math.abs(exponent);
        if (size < POWERS.length) {
            return exponent < 0 ? mantissa / POWERS[size] : mantissa * POWERS[size];
        }
        return exponent < 0 ? mantissa / Math.pow(10, size) : mantissa * Math.pow(10, size);
    }

    private static boolean isDigit(byte b) {
        return b >= '0' && b <= '9';
    }
}
