package handspan.outside.simulate;

import java.util.Random;

/**
 * One specimen of an infrared triangulation part and how it is run.
 *
 * @param voltageScale factor on the data sheet's output, 0.5..1.5
 * @param offsetVolts added to it, -0.3..0.3 V
 * @param noiseFactor 1 = the measured noise of {@link InfraredModel}, 0 = none but the converter's steps
 * @param spikes01 share of readings into which a burst on the supply falls; they read too near
 * @param cycleMs time between two new outputs, 5..200 ms
 */
public record InfraredSettings(
        double voltageScale, double offsetVolts, double noiseFactor, double spikes01, double cycleMs) {
    /** Cycle of the part (data sheet E4-A00201EN: 38.3 ms, 9.6 ms more or less). */
    public static final double USUAL_CYCLE_MS = 38.3;

    /** Usual share of readings with a supply burst in them (assumed). */
    public static final double USUAL_SPIKES_01 = 0.003;

    public InfraredSettings {
        Allowed.within("output of an infrared part", voltageScale, 0.5, 1.5, "times the data sheet's");
        Allowed.within("offset of an infrared part", offsetVolts, -0.3, 0.3, "V");
        Allowed.within("noise factor", noiseFactor, 0, 20, "times");
        Allowed.within("share of supply spikes", spikes01, 0, 1, "of 1");
        Allowed.within("infrared cycle", cycleMs, 5, 200, "ms");
    }

    /**
     * One specimen: output within 10 % of the data sheet's typical one and shifted by up to 0.11 V, spread evenly:
     * together 0.25..0.55 V at 80 cm, which is what the data sheet allows there.
     */
    public static InfraredSettings seeded(long seed) {
        Random random = Seeds.random(seed, "infrared output");
        double scale = 1 + Seeds.between(random, -0.1, 0.1);
        return new InfraredSettings(scale, Seeds.between(random, -0.11, 0.11), 1, USUAL_SPIKES_01, USUAL_CYCLE_MS);
    }

    /** The data sheet's typical part without noise and spikes. */
    public static InfraredSettings ideal() {
        return new InfraredSettings(1, 0, 0, 0, USUAL_CYCLE_MS);
    }

    /** The same specimen with other random faults. */
    public InfraredSettings withFaults(double newNoiseFactor, double newSpikes01) {
        return new InfraredSettings(voltageScale, offsetVolts, newNoiseFactor, newSpikes01, cycleMs);
    }
}
