package handspan.number.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Numbers as words for people: always a decimal point, whatever the machine's locale. Not for the path of a reading.
 */
public final class Figures {
    private Figures() {}

    /**
     * A number with a fixed count of decimals, for example {@code text(2.146, 2)} is {@code 2.15}.
     *
     * @param decimals 0 or more
     */
    public static String text(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** A number with thousands marked by commas, for example {@code 200,244}. */
    public static String count(long value) {
        return String.format(Locale.ROOT, "%,d", value);
    }

    /** A share as a whole percentage, for example {@code 4.5 %}. */
    public static String percent(double share01) {
        return text(100 * share01, share01 < 0.1 ? 1 : 0) + " %";
    }

    /** A value with as few decimals as say it to a millionth: {@code 0.5}, {@code 127}. */
    public static String shortest(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
