package handspan.instrument.survey;

import handspan.instrument.line.Reading;
import java.util.Arrays;

/** The numbers of one slot in one part of the search for the hands. Bounded; owned by one thread. */
final class SlotInPart {
    /** Five seconds at 1000 lines a second. */
    private static final int MOST = 5000;

    private double[] values = new double[256];
    private int size;

    /** A line of this part; NaN stands for no number. */
    void add(Reading reading, int slot) {
        if (size == MOST || !reading.tells(slot)) {
            return;
        }
        if (size == values.length) {
            values = Arrays.copyOf(values, Math.min(MOST, 2 * size));
        }
        values[size++] = reading.has(slot) ? reading.value(slot) : Double.NaN;
    }

    int lines() {
        return size;
    }

    /** In their order; NaN for a line without a number. */
    double[] lineByLine() {
        return Arrays.copyOf(values, size);
    }

    /** Only the numbers, the least first. */
    double[] sorted() {
        return Arrays.stream(lineByLine())
                .filter(value -> !Double.isNaN(value))
                .sorted()
                .toArray();
    }
}
