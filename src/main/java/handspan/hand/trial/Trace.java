package handspan.hand.trial;

import java.util.function.DoubleUnaryOperator;

/** Positions at {@value #PER_S} a second. Immutable. */
public final class Trace {
    /** Positions a second. */
    public static final int PER_S = 500;

    /** Time between two, ms. */
    public static final double STEP_MS = 1000.0 / PER_S;

    private final double[] mm;

    private Trace(double[] mm) {
        this.mm = mm;
    }

    /**
     * A trace.
     *
     * @param seconds how long
     * @param mmAtS position in mm at a time in s
     */
    public static Trace of(double seconds, DoubleUnaryOperator mmAtS) {
        double[] mm = new double[(int) Math.round(seconds * PER_S)];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = mmAtS.applyAsDouble((double) i / PER_S);
        }
        return new Trace(mm);
    }

    /** How many positions. */
    public int size() {
        return mm.length;
    }

    /** How long, s. */
    public double seconds() {
        return (double) mm.length / PER_S;
    }

    /** A position, mm. */
    public double mm(int index) {
        return mm[index];
    }

    /** The position at a time, mm; before the first and after the last these go on. */
    public double mmAt(double seconds) {
        return mm[(int) Math.max(0, Math.min(mm.length - 1, Math.round(seconds * PER_S)))];
    }

    /** All positions from one on, mm. */
    double[] from(int index) {
        return between(index, mm.length);
    }

    /** The positions from one on to before another, mm. */
    double[] between(int from, int to) {
        return java.util.Arrays.copyOfRange(mm, from, to);
    }
}
