package handspan.instrument.line;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Turns lines of one learned shape into readings. A bad line is a counted rejection, never an exception, and no NaN or
 * infinity gets through. A line that says in words that there is nothing to tell is a reading without a number. Owned
 * by one thread.
 */
public final class LineReader {
    private final LineShape shape;
    private final Rejections rejections;
    private final LineTokens tokens = new LineTokens();
    private final LabelAbove above = new LabelAbove();
    private final NumberlessLines numberless = new NumberlessLines();
    private final String[] keys;
    private final String[] keysInBytes;
    private final @Nullable String[] units;
    private final @Nullable String[] unitsInBytes;
    private final int[] slotAt;
    private final long allSlots;
    private double[] values;
    private long present;
    private long told;
    private boolean rejected;
    private boolean remark;

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
        this.keysInBytes = shape.slots().stream()
                .map(slot -> LineShape.key(LineText.asBytes(slot.label())))
                .toArray(String[]::new);
        this.units = shape.slots().stream().map(slot -> unit(slot, false)).toArray(String[]::new);
        this.unitsInBytes = shape.slots().stream().map(slot -> unit(slot, true)).toArray(String[]::new);
        this.slotAt = new int[LineSplitter.LONGEST + 1];
        Arrays.fill(slotAt, -1);
        for (int i = 0; i < keys.length; i++) {
            slotAt[shape.slots().get(i).position()] = i;
        }
        this.allSlots = -1L >>> (Long.SIZE - keys.length);
        this.values = new double[keys.length];
    }

    /** A known unit in lower case, as text or as it stands in a line; null for none or any other. */
    private static @Nullable String unit(LineShape.Slot slot, boolean inBytes) {
        String unit = LineShape.key(LineText.asBytes(slot.unit()));
        byte[] bytes = unit.getBytes(StandardCharsets.ISO_8859_1);
        if (!BoardWords.isUnit(bytes, 0, bytes.length)) {
            return null;
        }
        return inBytes ? unit : LineShape.key(slot.unit());
    }

    /** A board that has changed from millimetres to centimetres must not be heard a tenth as far. */
    private boolean isOtherUnit(int number, int slot) {
        String unit = units[slot];
        String inBytes = unitsInBytes[slot];
        return unit != null
                && inBytes != null
                && tokens.hasOtherUnit(number, inBytes)
                && tokens.hasOtherUnit(number, unit);
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
     * @return null when the line was rejected and counted, or is only a part of a reading
     */
    public @Nullable Reading read(byte[] line, int length, long timeNanos) {
        rejected = false;
        if (!shape.layout().labelAbove()) {
            return readWhole(line, length, timeNanos);
        }
        if (LabelAbove.isLabel(line, length)) {
            above.keep(line, length);
            return null;
        }
        int both = above.join(line, length);
        return readWhole(above.bytes(), both, timeNanos);
    }

    /** Whether the latest line was rejected; if not, it was a reading or a part of one. */
    public boolean rejectedLast() {
        return rejected;
    }

    /** Whether the latest line was rejected because it holds no number: a remark. */
    public boolean lacksNumber() {
        return rejected && remark;
    }

    /** Whether that remark is more than a line drawn between readings, or one that comes round after them. */
    public boolean isNews() {
        return lacksNumber() && !numberless.parts();
    }

    private @Nullable Reading readWhole(byte[] line, int length, long timeNanos) {
        if (!tokens.split(line, length, shape.separator(), shape.decimalComma())) {
            return reject(tokens.failure());
        }
        if (tokens.count() == 0) {
            return numberless(line, length, timeNanos);
        }
        if (tokens.hasNumber() && !LineFrame.isWhole(shape.layout(), line, length)) {
            return reject(Rejection.CUT);
        }
        boolean labelled = shape.matching() == LineShape.Matching.BY_LABEL;
        if (!tokens.hasNumber() && !(labelled ? tellsOfSlot() : hasThePlaces())) {
            return numberless(line, length, timeNanos);
        }
        Reading reading = labelled ? byLabel(timeNanos) : byPosition(timeNanos);
        if (!rejected) {
            numberless.onReading(timeNanos);
        }
        return reading;
    }

    private @Nullable Reading numberless(byte[] line, int length, long timeNanos) {
        boolean emptyFields = shape.matching() == LineShape.Matching.BY_FIELD && tokens.fields() > 1 && hasTheFields();
        if (emptyFields || numberless.standsForReading(line, length, timeNanos)) {
            return new Reading(timeNanos, new double[keys.length], 0, allSlots);
        }
        return reject(Rejection.NO_NUMBER);
    }

    private @Nullable Reading byLabel(long timeNanos) {
        boolean inParts = shape.layout().linesPerReading() > 1;
        long before = inParts ? told : 0;
        Reading ended = null;
        if (inParts && told != 0 && repeatsSlot()) {
            // a part of the last round never came
            ended = emit(timeNanos);
            before = 0;
        }
        if (!inParts) {
            begin();
        }
        boolean known = false;
        boolean strange = false;
        boolean textOnly = false;
        for (int number = 0; number < tokens.count(); number++) {
            int slot = slotOfLabel(number);
            if (slot < 0) {
                strange |= !tokens.isMissing(number);
                continue;
            }
            long bit = 1L << slot;
            if ((told & bit) != 0 && (before & bit) == 0) {
                begin();
                return reject(Rejection.OTHER_LABEL);
            }
            if (isOtherUnit(number, slot)) {
                begin();
                return reject(Rejection.OTHER_UNIT);
            }
            textOnly |= tokens.isMissing(number) && tokens.hasTextForNumber();
            known = true;
            told |= bit;
            values[slot] = tokens.value(number);
            present |= tokens.isMissing(number) ? 0 : bit;
        }
        if (strange && textOnly) {
            // two lines cut and glued: "Level now:Level now: 0.00"
            begin();
            return reject(Rejection.OTHER_LABEL);
        }
        if (!known) {
            return ended != null ? ended : reject(Rejection.OTHER_LABEL);
        }
        return ended != null || (inParts && told != allSlots) ? ended : emit(timeNanos);
    }

    private boolean tellsOfSlot() {
        for (int number = 0; number < tokens.count(); number++) {
            if (slotOfLabel(number) >= 0) {
                return true;
            }
        }
        return false;
    }

    private boolean hasThePlaces() {
        return shape.matching() == LineShape.Matching.BY_FIELD ? hasTheFields() : tokens.count() == shape.fieldCount();
    }

    private boolean repeatsSlot() {
        for (int number = 0; number < tokens.count(); number++) {
            int slot = slotOfLabel(number);
            if (slot >= 0 && (told & 1L << slot) != 0) {
                return true;
            }
        }
        return false;
    }

    private void begin() {
        Arrays.fill(values, 0);
        present = 0;
        told = 0;
    }

    private Reading emit(long timeNanos) {
        Reading reading = new Reading(timeNanos, values, present, told);
        values = new double[keys.length];
        present = 0;
        told = 0;
        return reading;
    }

    private int slotOfLabel(int number) {
        for (int slot = 0; slot < keys.length; slot++) {
            if (hasLabelOf(number, slot)) {
                return slot;
            }
        }
        return -1;
    }

    /** Whether a number's label is a slot's, in UTF-8 or, for letters beyond ASCII, in Latin-1. */
    private boolean hasLabelOf(int number, int slot) {
        return tokens.labelIs(number, keysInBytes[slot])
                || (keysInBytes[slot].length() != keys[slot].length() && tokens.labelIs(number, keys[slot]));
    }

    private @Nullable Reading byPosition(long timeNanos) {
        boolean byField = shape.matching() == LineShape.Matching.BY_FIELD;
        if (!hasThePlaces()) {
            return reject(Rejection.OTHER_COUNT);
        }
        begin();
        for (int number = 0; number < tokens.count(); number++) {
            int slot = slotAt[byField ? tokens.field(number) : number];
            if (slot < 0) {
                continue;
            }
            if (!hasLabelOf(number, slot)) {
                return reject(Rejection.OTHER_LABEL);
            }
            if (isOtherUnit(number, slot)) {
                return reject(Rejection.OTHER_UNIT);
            }
            values[slot] = tokens.value(number);
            present |= tokens.isMissing(number) ? 0 : 1L << slot;
        }
        told = allSlots;
        return emit(timeNanos);
    }

    /** The empty last field of a line is one more field where the shape has it: that number is missing. */
    private boolean hasTheFields() {
        int more = shape.fieldCount() - tokens.fields();
        return more == 0 || (more == 1 && tokens.endsEmpty());
    }

    private @Nullable Reading reject(Rejection reason) {
        rejected = true;
        remark = reason == Rejection.NO_NUMBER;
        rejections.count(reason);
        return null;
    }
}
