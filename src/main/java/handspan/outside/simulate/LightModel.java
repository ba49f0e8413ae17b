package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.util.Random;

/**
 * Photoresistor in a divider, printed as 10-bit counts.
 *
 * <p>The cell follows the light as a first-order lag, 20 ms when it grows and 30 ms when it fades (data sheet, part
 * GL5528 at 10 lux). Flicker is taken at the very moment of conversion, so it shows as the alias that the line rate
 * makes of it.
 */
public final class LightModel implements SensorModel {
    /** Time constant while the light grows, ms. */
    public static final double RISE_MS = 20;

    /** Time constant while the light fades, ms. */
    public static final double FALL_MS = 30;

    /** Usual noise of the converter, standard deviation in counts (assumed). */
    public static final double USUAL_NOISE_COUNTS = 0.7;

    private static final long STEP_NANOS = 2 * Nanos.PER_MS;
    private static final long LONGEST_MEMORY_NANOS = Nanos.PER_SECOND / 2;

    private final LightCell cell;
    private final LightRoom room;
    private final double noiseCounts;
    private final Random noise;
    private boolean started;
    private long lastNanos;
    private double followedLux;

    /**
     * A cell in a room.
     *
     * @param noiseCounts standard deviation of the converter, counts
     */
    public LightModel(LightCell cell, LightRoom room, double noiseCounts, long seed) {
        this.cell = cell;
        this.room = room;
        this.noiseCounts = Allowed.within("converter noise", noiseCounts, 0, 100, "counts");
        noise = Seeds.random(seed, "light noise");
    }

    @Override
    public double read(SimulatedHand hand, long timeNanos, double settlingErrorMm) {
        follow(hand, timeNanos);
        double counts = cell.counts(followedLux * room.flicker(timeNanos)) + noiseCounts * noise.nextGaussian();
        return Math.max(0, Math.min(LightCell.FULL_SCALE, Math.rint(counts)));
    }

    @Override
    public int decimals() {
        return 0;
    }

    /** A conversion is over in an instant; the cell's slowness is apart from it. */
    @Override
    public double measuringMs() {
        return 0;
    }

    private void follow(SimulatedHand hand, long timeNanos) {
        if (!started || timeNanos < lastNanos || timeNanos - lastNanos > LONGEST_MEMORY_NANOS) {
            started = true;
            lastNanos = timeNanos - LONGEST_MEMORY_NANOS;
            followedLux = room.lux(hand, lastNanos);
        }
        while (lastNanos < timeNanos) {
            long step = Math.min(STEP_NANOS, timeNanos - lastNanos);
            // the light half-way through the step stands for the whole of it
            double lux = room.lux(hand, lastNanos + step / 2);
            double lagMs = lux > followedLux ? RISE_MS : FALL_MS;
            followedLux += (lux - followedLux) * -Math.expm1(-Nanos.toMs(step) / lagMs);
            lastNanos += step;
        }
    }
}
