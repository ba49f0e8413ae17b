package handspan.instrument.line;

/** The numbers of one line. Immutable once made. */
public final class Reading {
    private final long timeNanos;
    private final long printedNanos;
    private final double[] values;
    private final long present;
    private final long told;

    /**
     * A reading of a line that tells of every slot.
     *
     * @param timeNanos arrival on the session's monotonic clock
     * @param values one for each slot of the line shape, at most 64; kept, not copied
     * @param present bit i is set when slot i held a number
     */
    public Reading(long timeNanos, double[] values, long present) {
        this(timeNanos, timeNanos, values, present, -1);
    }

    /**
     * A reading of a line that may leave slots out.
     *
     * @param timeNanos arrival on the session's monotonic clock
     * @param values one for each slot of the line shape, at most 64; kept, not copied
     * @param present bit i is set when slot i held a number
     * @param told bit i is set when the line tells of slot i, even if only that it has no number
     */
    public Reading(long timeNanos, double[] values, long present, long told) {
        this(timeNanos, timeNanos, values, present, told | present);
    }

    private Reading(long timeNanos, long printedNanos, double[] values, long present, long told) {
        this.told = told;
        this.timeNanos = timeNanos;
        this.printedNanos = printedNanos;
        this.values = values;
        this.present = present;
    }

    /** Arrival on the session's monotonic clock. */
    public long timeNanos() {
        return timeNanos;
    }

    /** The same reading, of which it is known when its line was probably printed. */
    public Reading printedAt(long nanos) {
        return new Reading(timeNanos, nanos, values, present, told);
    }

    /**
     * When its line was probably printed, on the same clock; the arrival where nothing else is known. For how far a
     * hand has moved in which time; deadlines and what sounds go by the arrival.
     */
    public long printedNanos() {
        return printedNanos;
    }

    /** Slots of the line shape. */
    public int size() {
        return values.length;
    }

    /** Whether slot {@code index} held a number. */
    public boolean has(int index) {
        return index >= 0 && index < values.length && (present >>> index & 1) != 0;
    }

    /** Whether the line told of slot {@code index} at all; where it did not, nothing is known of that moment. */
    public boolean tells(int index) {
        return index >= 0 && index < values.length && (told >>> index & 1) != 0;
    }

    /** The number in slot {@code index}; only where {@link #has} says so. */
    public double value(int index) {
        return values[index];
    }
}
