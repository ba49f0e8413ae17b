package handspan.outside.simulate;

/**
 * One specimen of a laser time-of-flight ranger and how it is run.
 *
 * @param errors its steady errors
 * @param noiseMm standard deviation of the printed values about the slow part, mm, rounding included
 * @param noiseGrowthPerM growth of that noise: {@code sd(d) = noiseMm (1 + growth * d)}, d in m
 * @param driftRmsMm slow part of the noise (periods of 6 s to half an hour), rms in mm
 * @param dropouts01 share of readings of a present hand that are lost
 * @param measuringMs time over which the truth is averaged, 0..200 ms
 * @param decimals printed decimals of a millimetre, 0..2
 * @param noReading what is printed when nothing is in range, usually {@link #USUAL_NO_READING}
 */
public record TimeOfFlightSettings(
        DistanceErrors errors,
        double noiseMm,
        double noiseGrowthPerM,
        double driftRmsMm,
        double dropouts01,
        double measuringMs,
        int decimals,
        double noReading) {

    /** What most programs print when nothing is in range (common practice of such parts). */
    public static final double USUAL_NO_READING = 8190;

    public TimeOfFlightSettings {
        Allowed.within("ranging noise", noiseMm, 0, 100, "mm");
        Allowed.within("growth of ranging noise", noiseGrowthPerM, 0, 20, "per m");
        Allowed.within("ranging drift", driftRmsMm, 0, 50, "mm");
        Allowed.within("share of dropouts", dropouts01, 0, Dropouts.MOST_01, "of 1");
        Allowed.within("measuring time", measuringMs, 0, 200, "ms");
        Allowed.within("count of decimals", decimals, 0, 2, "places");
        Allowed.within("number for no reading", noReading, -1, 1e6, "mm");
    }

    /** White noise of 2.15 mm, whole millimetres, 20 ms to a measurement, nothing lost. */
    public static TimeOfFlightSettings usual(DistanceErrors errors) {
        return new TimeOfFlightSettings(errors, 2.15, 0, 0, 0, 20, 0, USUAL_NO_READING);
    }

    /**
     * As {@link #usual}, with the 2.15 mm split so that the series behaves like a real part over an hour:
     * autocorrelation 0.07 at lag 1, which is the share of a slow part of {@code 2.15 sqrt(0.07) = 0.57 mm}. Source:
     * public one-hour recording of such a ranger on a static target, 200,244 readings at 55.6/s
     * (TimeOfFlightCalibration, MIT licence, commit dd22d07).
     */
    public static TimeOfFlightSettings likeTheMeasuredHour(DistanceErrors errors) {
        return usual(errors).withNoise(2.073, 0, 0.57);
    }

    /** No error of any kind, tenths of a millimetre, measured in an instant. */
    public static TimeOfFlightSettings ideal() {
        return new TimeOfFlightSettings(DistanceErrors.NONE, 0, 0, 0, 0, 0, 1, USUAL_NO_READING);
    }

    /** The same specimen with other noise. */
    public TimeOfFlightSettings withNoise(double newNoiseMm, double newGrowthPerM, double newDriftRmsMm) {
        return new TimeOfFlightSettings(
                errors, newNoiseMm, newGrowthPerM, newDriftRmsMm, dropouts01, measuringMs, decimals, noReading);
    }

    /** The same specimen with another share of lost readings. */
    public TimeOfFlightSettings withDropouts01(double newDropouts01) {
        return new TimeOfFlightSettings(
                errors, noiseMm, noiseGrowthPerM, driftRmsMm, newDropouts01, measuringMs, decimals, noReading);
    }

    /** The same specimen with another measuring time. */
    public TimeOfFlightSettings withMeasuringMs(double newMeasuringMs) {
        return new TimeOfFlightSettings(
                errors, noiseMm, noiseGrowthPerM, driftRmsMm, dropouts01, newMeasuringMs, decimals, noReading);
    }

    /** The same specimen in a program that prints another number, and decimals, when nothing is in range. */
    public TimeOfFlightSettings withNoReading(double newNoReading, int newDecimals) {
        return new TimeOfFlightSettings(
                errors, noiseMm, noiseGrowthPerM, driftRmsMm, dropouts01, measuringMs, newDecimals, newNoReading);
    }
}
