package handspan.wiring;

import java.util.OptionalDouble;

/**
 * How a source is opened.
 *
 * @param baud link speed of a port
 * @param ratePerS lines a second of a recording without times
 * @param seed of a simulation
 * @param realTime whether recordings and simulations run by the clock; else as fast as the machine can
 */
public record SourceOptions(int baud, OptionalDouble ratePerS, long seed, boolean realTime) {
    /** 115200 baud, real time, seed 1. */
    public static final SourceOptions USUAL = new SourceOptions(115_200, OptionalDouble.empty(), 1, true);

    /** The same at another link speed. */
    public SourceOptions at(int otherBaud) {
        return new SourceOptions(otherBaud, ratePerS, seed, realTime);
    }

    /** The same, as fast as the machine can. */
    public SourceOptions fast() {
        return new SourceOptions(baud, ratePerS, seed, false);
    }
}
