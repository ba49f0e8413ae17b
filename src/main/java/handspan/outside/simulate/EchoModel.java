package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * Ultrasonic echo module: prints the time of the echo, {@code t = 2 d / c(T)}, or what the board made of it.
 *
 * <p>A hand is seen up to about 600 mm; nearer than 20 mm the number is garbage, often large; an absent hand gives no
 * echo. A neighbour's sound is taken for the own echo where it comes first, or where there is no other.
 */
public final class EchoModel implements SensorModel {
    /** The farthest hand that returns an echo, mm (common practice; a wall is heard to 4 m). */
    public static final double HAND_RANGE_MM = 600;

    /** The nearest distance the module can tell, mm (HC-SR04 module data sheet: 2 cm). */
    public static final double FLOOR_MM = 20;

    private static final double FARTHEST_MM = 4000;
    private static final double MEASURING_MS = 3;
    private static final double MM_PER_M = 1000;
    private static final double US_PER_S = 1e6;

    private final EchoSettings settings;
    private final double mmPerUs;
    private final @Nullable Neighbour neighbour;
    private final Dropouts turns;
    private final Dropouts dropouts;
    private final Random noise;

    /** A specimen with its own noise. */
    public EchoModel(EchoSettings settings, long seed) {
        this(settings, seed, null);
    }

    /** A specimen beside another sensor, whose sound it hears now and then. */
    public EchoModel(EchoSettings settings, long seed, @Nullable Neighbour neighbour) {
        this.settings = settings;
        this.neighbour = neighbour;
        turns = new Dropouts(neighbour == null ? 0 : neighbour.heard01(), Seeds.random(seed, "echo neighbour"));
        mmPerUs = AirSound.metresPerSecond(settings.airCelsius()) * MM_PER_M / US_PER_S;
        dropouts = new Dropouts(settings.dropouts01(), Seeds.random(seed, "echo dropouts"));
        noise = Seeds.random(seed, "echo noise");
    }

    /**
     * Standard deviation of echo distances to a flat target: 1.25, 1.7 and 3.5 mm measured at 20, 30 and 40 cm;
     * straight lines between, the last one carried on, level below 20 cm.
     */
    public static double flatTargetNoiseMm(double distanceMm) {
        if (distanceMm <= 200) {
            return 1.25;
        }
        return distanceMm <= 300
                ? 1.25 + (distanceMm - 200) * (1.7 - 1.25) / 100
                : 1.7 + (distanceMm - 300) * (3.5 - 1.7) / 100;
    }

    @Override
    public double read(SimulatedHand hand, long timeNanos, double settlingErrorMm) {
        double heardMm = heardMm(hand, timeNanos - Nanos.ofMs(MEASURING_MS / 2));
        if (heardMm > HAND_RANGE_MM || dropouts.next()) {
            return settings.print().raw(settings.sentinelUs());
        }
        double echoUs = 2 * sensedMm(heardMm) / mmPerUs;
        double step = settings.timingStepUs();
        return settings.print().raw(step > 0 ? step * Math.rint(echoUs / step) : echoUs);
    }

    @Override
    public int decimals() {
        return settings.print().decimals();
    }

    /** There and back through half a metre of air. */
    @Override
    public double measuringMs() {
        return MEASURING_MS;
    }

    private double heardMm(SimulatedHand hand, long timeNanos) {
        double ownMm = hand.trueMm(timeNanos);
        boolean disturbed = turns.next();
        return neighbour != null && disturbed ? Math.min(ownMm, neighbour.heardMm(timeNanos)) : ownMm;
    }

    private double sensedMm(double trueMm) {
        if (trueMm < FLOOR_MM) {
            return Seeds.between(noise, FLOOR_MM, FARTHEST_MM);
        }
        double spreadMm = settings.noiseFactor() * flatTargetNoiseMm(trueMm);
        return Math.max(0, settings.errors().sensedMm(trueMm) + spreadMm * noise.nextGaussian());
    }
}
