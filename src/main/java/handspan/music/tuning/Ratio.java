package handspan.music.tuning;

import handspan.number.units.Cents;

/**
 * An interval as a frequency ratio.
 *
 * @param over frequency of the higher note, 1..1000000
 * @param under frequency of the lower, 1..1000000
 */
public record Ratio(int over, int under) {
    private static final int MOST = 1_000_000;

    /** Checks both. */
    public Ratio {
        if (over < 1 || under < 1 || over > MOST || under > MOST) {
            throw new IllegalArgumentException(
                    "ratio " + over + "/" + under + " (two whole numbers, 1..1000000): for example 5/4");
        }
    }

    /** Its size in cents. */
    public double cents() {
        return Cents.between(under, over);
    }

    /** As written, for example {@code 5/4}. */
    public String text() {
        return over + "/" + under;
    }
}
