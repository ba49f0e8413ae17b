package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.util.OptionalDouble;
import java.util.Random;

/**
 * Laser time-of-flight ranger, printed in millimetres. A measurement is the mean of the true distance over the
 * measuring time; a hand that is out of range for more than half of it, or absent, prints the settings' number for no
 * reading.
 */
public final class TimeOfFlightModel implements SensorModel {
    /** The farthest hand that is seen, mm. */
    public static final double RANGE_MM = 1200;

    private static final int SAMPLES = 8;
    private static final double SLOWEST_DRIFT_HZ = 1 / 1800.0;
    private static final double QUICKEST_DRIFT_HZ = 1 / 6.0;

    private final TimeOfFlightSettings settings;
    private final Sines drift;
    private final Dropouts dropouts;
    private final Random noise;
    private final double perMm;

    /** A specimen with its own noise. */
    public TimeOfFlightModel(TimeOfFlightSettings settings, long seed) {
        this.settings = settings;
        drift = new Sines(
                settings.driftRmsMm(), SLOWEST_DRIFT_HZ, QUICKEST_DRIFT_HZ, 8, Seeds.random(seed, "ranging drift"));
        dropouts = new Dropouts(settings.dropouts01(), Seeds.random(seed, "ranging dropouts"));
        noise = Seeds.random(seed, "ranging noise");
        perMm = Math.pow(10, settings.decimals());
    }

    @Override
    public double read(SimulatedHand hand, long timeNanos, double settlingErrorMm) {
        OptionalDouble seenMm = meanSeenMm(hand, timeNanos);
        if (seenMm.isEmpty() || dropouts.next()) {
            return settings.noReading();
        }
        double trueMm = seenMm.getAsDouble();
        double mm = settings.errors().sensedMm(trueMm) + drift.at(timeNanos) + settlingErrorMm + noiseMm(trueMm);
        return Math.max(0, Math.rint(mm * perMm) / perMm);
    }

    @Override
    public int decimals() {
        return settings.decimals();
    }

    @Override
    public double measuringMs() {
        return settings.measuringMs();
    }

    private OptionalDouble meanSeenMm(SimulatedHand hand, long timeNanos) {
        int samples = settings.measuringMs() > 0 ? SAMPLES : 1;
        double sum = 0;
        int seen = 0;
        for (int i = 0; i < samples; i++) {
            long moment = timeNanos - Nanos.ofMs(settings.measuringMs() * (i + 0.5) / samples);
            double mm = hand.trueMm(moment);
            if (mm <= RANGE_MM) {
                sum += mm;
                seen++;
            }
        }
        return 2 * seen >= samples ? OptionalDouble.of(sum / seen) : OptionalDouble.empty();
    }

    private double noiseMm(double trueMm) {
        double printed = settings.noiseMm() * (1 + settings.noiseGrowthPerM() * trueMm / 1000);
        // rounding to steps adds step^2/12 of variance, and the settings speak of printed values
        double variance = printed * printed - 1 / (12 * perMm * perMm);
        return variance > 0 ? Math.sqrt(variance) * noise.nextGaussian() : 0;
    }
}
