package handspan.room.budget;

import handspan.instrument.survey.ChannelReport;
import handspan.number.units.Figures;

/**
 * The same hand's sensor in two recordings: which is quieter, quicker, more complete.
 *
 * @param first report of the one
 * @param second report of the other
 */
public record SensorContrast(ChannelReport first, ChannelReport second) {
    /** The standard deviation of a standard deviation is taken so many times. */
    private static final double COVERAGE = 2;

    /** Rates within this are the same. */
    private static final double RATE_SHARE = 0.05;

    /** Shares of missing readings within this are the same. */
    private static final double MISSING = 0.01;

    private static final int FEWEST_HELD = 20;

    /** Which way the noise differs. */
    public enum Verdict {
        /** The first is quieter. */
        FIRST,
        /** The second is. */
        SECOND,
        /** Neither beyond chance. */
        SAME,
        /** There is no still stretch in one of them, or they count in different units. */
        UNKNOWN
    }

    /**
     * Whose noise is less. The relative uncertainty of a standard deviation from n readings is {@code 1 / sqrt(2 (n -
     * 1))} (JCGM 100:2008 (GUM), E.4.3, equation (E.7)); of the ratio of two, both together, taken twice.
     */
    public Verdict verdict() {
        if (!isHeld(first)
                || !isHeld(second)
                || first.spec().unit() != second.spec().unit()) {
            return Verdict.UNKNOWN;
        }
        double logRatio = Math.log(first.noise() / second.noise());
        double u = Math.sqrt(0.5 / (first.heldCount() - 1) + 0.5 / (second.heldCount() - 1));
        if (Math.abs(logRatio) <= COVERAGE * u) {
            return Verdict.SAME;
        }
        return logRatio < 0 ? Verdict.FIRST : Verdict.SECOND;
    }

    private static boolean isHeld(ChannelReport report) {
        return report.heldCount() >= FEWEST_HELD && report.noise() > 0;
    }

    /**
     * The verdict in words.
     *
     * @param one what the first is called
     * @param other what the second is called
     */
    public String words(String one, String other) {
        String noise = switch (verdict()) {
            case FIRST -> one + " is quieter: " + noise(first) + " against " + noise(second);
            case SECOND -> other + " is quieter: " + noise(second) + " against " + noise(first);
            case SAME -> "equally quiet, as far as can be told: " + noise(first) + " and " + noise(second);
            case UNKNOWN -> why(one, other);
        };
        return noise + "; " + rate(one, other) + "; " + missing(one, other);
    }

    private static String noise(ChannelReport report) {
        return Figures.text(report.noise(), 2) + " " + report.spec().unit().word() + " at "
                + Figures.text(report.centre(), 0)
                + " " + report.spec().unit().word();
    }

    private String why(String one, String other) {
        if (isHeld(first) && isHeld(second)) {
            return "noise can't be compared: " + first.spec().unit().word() + " against "
                    + second.spec().unit().word();
        }
        return "noise can't be told: no hand was held still in "
                + (isHeld(first) ? other : isHeld(second) ? one : one + " and " + other);
    }

    private String rate(String one, String other) {
        double a = first.ratePerS();
        double b = second.ratePerS();
        if (Math.abs(a - b) <= RATE_SHARE * Math.max(a, b)) {
            return "as quick, " + Figures.text(a, 1) + " readings a second";
        }
        return (a > b ? one : other) + " is quicker: " + Figures.text(Math.max(a, b), 1) + " readings a second against "
                + Figures.text(Math.min(a, b), 1);
    }

    private String missing(String one, String other) {
        double a = first.dropouts01();
        double b = second.dropouts01();
        if (Double.isNaN(a) || Double.isNaN(b)) {
            return "missing readings can't be told";
        }
        if (Math.abs(a - b) <= MISSING) {
            return "as complete, " + Figures.percent(a) + " missing";
        }
        return (a < b ? one : other) + " is more complete: " + Figures.percent(Math.min(a, b)) + " missing against "
                + Figures.percent(Math.max(a, b));
    }
}
