package handspan.instrument.line;

import org.jspecify.annotations.Nullable;

/**
 * Turns lines of one learned shape into readings. A bad line is a counted rejection, never an exception, and no NaN or
 * infinity gets through. Owned by one thread.
 */
public final class LineReader {
    private final LineShape shape;
    private final Rejections rejections;
    private final LineTokens tokens = new LineTokens();
    private final String[] keys;
    private final int[] slotAt;

    /**
     * A reader for one shape.
     *
     * @param shape learned or remembered
     * @param rejections counts what does not fit
     */
    public LineReader(LineShape shape, Rejections rejections) {
        this.shape = shape;
        this.rejections = rejections;
        this.keys =
                shape.slots().stream().map(slot -> LineShape.key(slot.label())).toArray(String[]::new);
        this.slotAt = new int[LineSplitter.LONGEST + 1];
        java.util.Arrays.fill(slotAt, -1);
        for (int i = 0; i < keys.length; i++) {
            slotAt[shape.slots().get(i).position()] = i;
        }
    }

    /** The shape it reads by. */
    public LineShape shape() {
        return shape;
    }

    /**
     * Reads one line.
     *
     * @param line bytes without the line end
     * @param length how many of them, from the first
     * @param timeNanos arrival
     * @return null when the line was rejected and counted
     */
    public @Nullable Reading read(byte[] line, int length, long timeNanos) {
        if (!tokens.split(line, length, shape.separator(), shape.decimalComma())) {
            return reject(Rejection.NOT_TEXT);
        }
        if (tokens.count() == 0) {
            return reject(Rejection.NO_NUMBER);
        }
        return shape.matching() == LineShape.Matching.BY_LABEL ? byLabel(timeNanos) : byPosition(timeNanos);
    }

    private @Nullable Reading byLabel(long timeNanos) {
        double[] values = new double[keys.length];
        long present = 0;
        boolean known = false;
        for (int number = 0; number < tokens.count(); number++) {
            int slot = slotOfLabel(number);
            if (slot >= 0) {
                known = true;
                values[slot] = tokens.value(number);
                present |= tokens.isMissing(number) ? 0 : 1L << slot;
            }
        }
        return known ? new Reading(timeNanos, values, present) : reject(Rejection.OTHER_LABEL);
    }

    private int slotOfLabel(int number) {
        for (int slot = 0; slot < keys.length; slot++) {
            if (tokens.labelIs(number, keys[slot])) {
                return slot;
            }
        }
        return -1;
    }

    private @Nullable Reading byPosition(long timeNanos) {
        boolean byField = shape.matching() == LineShape.Matching.BY_FIELD;
        if (!(byField ? hasTheFields() : tokens.count() == shape.fieldCount())) {
            return reject(Rejection.OTHER_COUNT);
        }
        double[] values = new double[keys.length];
        long present = 0;
        for (int number = 0; number < tokens.count(); number++) {
            int slot = slotAt[byField ? tokens.field(number) : number];
            if (slot < 0) {
                continue;
            }
            if (!tokens.labelIs(number, keys[slot])) {
                return reject(Rejection.OTHER_LABEL);
            }
            values[slot] = tokens.value(number);
            present |= tokens.isMissing(number) ? 0 : 1L << slot;
        }
        return new Reading(timeNanos, values, present);
    }

    /** The empty last field of a line is one more field where the shape has it: that number is missing. */
    private boolean hasTheFields() {
        int more = shape.fieldCount() - tokens.fields();
        return more == 0 || (more == 1 && tokens.endsEmpty());
    }

    private @Nullable Reading reject(Rejection reason) {
        rejections.count(reason);
        return null;
    }
}
