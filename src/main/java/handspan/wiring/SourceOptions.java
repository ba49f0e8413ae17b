package handspan.wiring;

import handspan.instrument.line.CommaRule;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.PortIdentity;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * How a source is opened.
 *
 * @param baud link speed of a port; {@link #AUTO} to find it by trying
 * @param ratePerS lines a second of a recording without times
 * @param seed of a simulation
 * @param comma what a comma between digits stands for
 * @param realTime whether recordings and simulations run by the clock; else as fast as the machine can
 * @param board that is expected at the port, and looked for elsewhere when it is not there; null for whatever is there
 * @param beginS where a recording begins, seconds from its start
 * @param staying whether a recording that runs by the clock waits at its end to be taken elsewhere; else it is over
 */
public record SourceOptions(
        int baud,
        OptionalDouble ratePerS,
        long seed,
        CommaRule comma,
        boolean realTime,
        @Nullable PortIdentity board,
        double beginS,
        boolean staying) {
    /** The speed that stands for "find it by trying". */
    public static final int AUTO = 0;

    /** More than anyone records, s. */
    private static final double MOST_S = 1e7;

    /** 115200 baud, real time, seed 1. */
    public static final SourceOptions USUAL = new SourceOptions(Instrument.USUAL_BAUD, OptionalDouble.empty(), 1, true);

    /** Checks where it begins. */
    public SourceOptions {
        if (!(beginS >= 0 && beginS <= MOST_S)) {
            throw new IllegalArgumentException(
                    "a recording from " + beginS + " s on (0.." + Math.round(MOST_S) + "): name a place in it");
        }
    }

    /** With whatever board is there; commas that can be read in two ways are asked about. */
    public SourceOptions(int baud, OptionalDouble ratePerS, long seed, boolean realTime) {
        this(baud, ratePerS, seed, CommaRule.ASK, realTime, null, 0, false);
    }

    /** The same at another link speed. */
    public SourceOptions at(int otherBaud) {
        return new SourceOptions(otherBaud, ratePerS, seed, comma, realTime, board, beginS, staying);
    }

    /** The same for one board. */
    public SourceOptions expecting(@Nullable PortIdentity expected) {
        return new SourceOptions(baud, ratePerS, seed, comma, realTime, expected, beginS, staying);
    }

    /** The same with a rule for commas. */
    public SourceOptions with(CommaRule rule) {
        return new SourceOptions(baud, ratePerS, seed, rule, realTime, board, beginS, staying);
    }

    /** The same with another seed. */
    public SourceOptions seeded(long other) {
        return new SourceOptions(baud, ratePerS, other, comma, realTime, board, beginS, staying);
    }

    /** The same, as fast as the machine can. */
    public SourceOptions fast() {
        return new SourceOptions(baud, ratePerS, seed, comma, false, board, beginS, staying);
    }

    /** The same, with a recording from a place on. */
    public SourceOptions from(double seconds) {
        return new SourceOptions(baud, ratePerS, seed, comma, realTime, board, seconds, staying);
    }

    /** The same, with a recording that waits at its end. */
    public SourceOptions staying(boolean stays) {
        return new SourceOptions(baud, ratePerS, seed, comma, realTime, board, beginS, stays);
    }

    /** Where a recording begins, microseconds from its start. */
    long beginMicros() {
        return Math.round(beginS * 1e6);
    }

    /** Whether a source's readings come by the clock: a port's always do. */
    public boolean byTheClock(Source source) {
        return realTime || source.kind() == Source.Kind.PORT;
    }
}
