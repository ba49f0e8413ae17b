package handspan.live.path;

import handspan.number.units.Nanos;

/**
 * Notices a sensor that has stopped measuring while its board goes on printing: the same number for far longer than
 * such a sensor repeats itself. How long a number lasts is first told by the room, from noise and step, then learned
 * from play; with {@code L} the mean of it, a number lasts for {@code t} by chance in {@code exp(-t/L)} of the cases
 * (runs of independent readings). Frozen is what has a chance of a millionth, and lasts for 1.5 s at least. Pure: time
 * comes with the calls. Owned by one thread.
 *
 * <p>Where a sensor counts in steps of more than twice its noise, as with whole centimetres, or has no noise, a still
 * hand looks the same as a frozen sensor: then nothing is said.
 */
final class FreezeWatch {
    private static final double LEAST_S = 1.5;

    /** {@code ln 10^6}: a chance of a millionth. */
    private static final double MEANS = 13.8;

    private static final double LEARNED01 = 0.05;
    private static final double COARSEST = 0.5;

    private final double usualS;
    private double meanS;
    private double value = Double.NaN;
    private long sinceNanos;
    private long latestNanos;
    private boolean frozen;

    /**
     * A watch over one sensor.
     *
     * @param ratePerS lines a second
     * @param noiseMm standard deviation of a reading where it is quietest
     * @param stepMm step in which it counts; 0 where none was seen
     */
    FreezeWatch(double ratePerS, double noiseMm, double stepMm) {
        double steps = stepMm == 0 ? Double.POSITIVE_INFINITY : noiseMm / stepMm;
        boolean tells = noiseMm > 0 && steps > COARSEST;
        // two readings of a normal noise fall into one step: 1 / (2 sqrt(pi) k), k the noise in steps
        double alike01 = tells ? Math.min(0.9, 1 / (2 * Math.sqrt(Math.PI) * steps)) : 1;
        this.usualS = tells ? 1 / ratePerS / (1 - alike01) : Double.POSITIVE_INFINITY;
        this.meanS = tells ? usualS : 0;
    }

    /**
     * A line came.
     *
     * @param raw the sensor's number; NaN where it sees nothing
     */
    void onReading(double raw, long timeNanos) {
        latestNanos = timeNanos;
        if (Double.compare(raw, value) == 0) {
            frozen = !Double.isNaN(raw) && seconds() >= LEAST_S && seconds() >= MEANS * Math.max(usualS, meanS);
            return;
        }
        if (!Double.isNaN(value) && !Double.isNaN(raw)) {
            meanS += LEARNED01 * (seconds() - meanS);
        }
        value = raw;
        sinceNanos = timeNanos;
        frozen = false;
    }

    /** The link is gone, and with it what lasted. */
    void restart() {
        value = Double.NaN;
        frozen = false;
    }

    /** Whether the sensor has stopped measuring. */
    boolean isFrozen() {
        return frozen;
    }

    /** For how long its number has been the same. */
    double seconds() {
        return Nanos.toSeconds(latestNanos - sinceNanos);
    }

    /** That number. */
    double value() {
        return value;
    }
}
