package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.util.Random;

/**
 * Infrared triangulation part of 10-80 cm on a 10-bit converter of 5 V, printed as counts.
 *
 * <p>The part measures in cycles of its own, whatever the board does: its output is the mean over one cycle and stays
 * for the whole of the next, so that a board which prints faster repeats values. A hand beyond {@link #SIGHT_MM}, or
 * none, leaves the low voltage of an empty view. Nearer than 60 mm the output falls again.
 *
 * <p>Noise: standard deviations of 0.8, 2.1 and 5.0 mm were measured at 20, 30 and 40 cm; turned into volts by the
 * curve's slope there, straight lines between, level outside.
 */
public final class InfraredModel implements SensorModel {
    /** The farthest hand that is seen, mm (assumed: a little beyond the range of the data sheet). */
    public static final double SIGHT_MM = 1000;

    /** Full scale of the converter, volts. */
    public static final double REFERENCE_VOLTS = 5;

    private static final double FULL_SCALE = 1023;
    private static final double STEP_VOLTS = REFERENCE_VOLTS / FULL_SCALE;
    private static final double LEAST_SPIKE_VOLTS = 0.1;
    private static final double MOST_SPIKE_VOLTS = 0.8;
    private static final int SAMPLES = 8;

    private static final double NOISE_AT_200_VOLTS = 0.8 * InfraredCurve.voltsPerMm(200);
    private static final double NOISE_AT_300_VOLTS = 2.1 * InfraredCurve.voltsPerMm(300);
    private static final double NOISE_AT_400_VOLTS = 5.0 * InfraredCurve.voltsPerMm(400);

    private final InfraredSettings settings;
    private final long cycleNanos;
    private final long phaseNanos;
    private final Random noise;
    private final Random spikes;
    private boolean started;
    private long lastCycle;
    private double outputVolts;

    /** A specimen with its own noise; its cycles stand anywhere in time. */
    public InfraredModel(InfraredSettings settings, long seed) {
        this.settings = settings;
        cycleNanos = Nanos.ofMs(settings.cycleMs());
        phaseNanos = Nanos.ofMs(Seeds.between(Seeds.random(seed, "infrared phase"), 0, settings.cycleMs()));
        noise = Seeds.random(seed, "infrared noise");
        spikes = Seeds.random(seed, "infrared spikes");
    }

    /** Standard deviation of the printed output at a distance, volts, the converter's steps included. */
    public static double noiseVolts(double mm) {
        double far01 = Math.max(0, Math.min(1, (mm - 300) / 100));
        double near01 = Math.max(0, Math.min(1, (300 - mm) / 100));
        return NOISE_AT_300_VOLTS
                + far01 * (NOISE_AT_400_VOLTS - NOISE_AT_300_VOLTS)
                + near01 * (NOISE_AT_200_VOLTS - NOISE_AT_300_VOLTS);
    }

    @Override
    public double read(SimulatedHand hand, long timeNanos, double settlingErrorMm) {
        long cycle = Math.floorDiv(timeNanos - phaseNanos, cycleNanos);
        if (!started || cycle != lastCycle) {
            started = true;
            lastCycle = cycle;
            outputVolts = measuredVolts(hand, phaseNanos + cycle * cycleNanos);
        }
        double volts = outputVolts;
        if (spikes.nextDouble() < settings.spikes01()) {
            volts += Seeds.between(spikes, LEAST_SPIKE_VOLTS, MOST_SPIKE_VOLTS);
        }
        return Math.max(0, Math.min(FULL_SCALE, Math.rint(volts / STEP_VOLTS)));
    }

    @Override
    public int decimals() {
        return 0;
    }

    /** One cycle; on top of its half comes the age of the output, another half on average. */
    @Override
    public double measuringMs() {
        return settings.cycleMs();
    }

    /** Output of the cycle that ends at a time. */
    private double measuredVolts(SimulatedHand hand, long endNanos) {
        double sumVolts = 0;
        double sumNoise = 0;
        for (int i = 0; i < SAMPLES; i++) {
            double mm = hand.trueMm(endNanos - Nanos.ofMs(settings.cycleMs() * (i + 0.5) / SAMPLES));
            sumVolts += mm <= SIGHT_MM ? InfraredCurve.volts(mm) : InfraredCurve.emptyVolts();
            sumNoise += noiseVolts(mm);
        }
        return settings.voltageScale() * sumVolts / SAMPLES
                + settings.offsetVolts()
                + noiseVoltsBeforeSteps(sumNoise / SAMPLES);
    }

    private double noiseVoltsBeforeSteps(double printedVolts) {
        double wanted = settings.noiseFactor() * printedVolts;
        // rounding to steps adds step^2/12 of variance, and the measured figures are of printed values
        double variance = wanted * wanted - STEP_VOLTS * STEP_VOLTS / 12;
        return variance > 0 ? Math.sqrt(variance) * noise.nextGaussian() : 0;
    }
}
