package handspan.show.chart;

/**
 * The range of an axis under live values: it widens at once to round numbers where a value would leave it, and narrows
 * only where much of it has been empty for a whole window, so that it does not twitch.
 */
final class CalmRange {
    /** Narrower than this share of the range, the values get a narrower one. */
    private static final double EMPTY01 = 0.4;

    private static final double ROOM01 = 0.06;
    private static final double[] ROUND = {1, 2, 5, 10};

    /** A range has so many round steps at least. */
    private static final double STEPS = 5;

    private double low = 0;
    private double high = 1;
    private long edition;
    private boolean used;

    /**
     * What has to be shown now.
     *
     * @param least of all values
     * @param most of all values, not below it
     */
    void show(double least, double most) {
        double span = Math.max(most - least, 1e-3 * Math.max(1, Math.abs(most)));
        boolean outside = least < low || most > high;
        if (used && !outside && span >= EMPTY01 * (high - low)) {
            return;
        }
        double step = step(span);
        double from = step * Math.floor((least - ROOM01 * span) / step);
        double to = step * Math.ceil((most + ROOM01 * span) / step);
        if (!used || Double.compare(from, low) != 0 || Double.compare(to, high) != 0) {
            low = from;
            high = to;
            used = true;
            edition++;
        }
    }

    /** A round step of which the span has five or more. */
    private static double step(double span) {
        double decade = Math.pow(10, Math.floor(Math.log10(span / STEPS)));
        double best = decade;
        for (double round : ROUND) {
            best = round * decade <= span / STEPS ? round * decade : best;
        }
        return best;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    /** Rises with each change. */
    long edition() {
        return edition;
    }
}
