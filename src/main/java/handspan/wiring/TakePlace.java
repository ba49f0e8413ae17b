package handspan.wiring;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Where a recording stands that runs by the clock. Immutable.
 *
 * @param placeS seconds from its start
 * @param lengthS its length, s; empty until it has been read through once
 * @param running whether it goes on by itself
 * @param marks of the calibration that was recorded with it
 * @param remark what is to be said of its file, once it has been read through; may be empty
 */
public record TakePlace(double placeS, OptionalDouble lengthS, boolean running, List<Mark> marks, String remark) {
    /**
     * A moment with a name.
     *
     * @param atS seconds from the recording's start
     * @param words what it is
     */
    public record Mark(double atS, String words) {}

    /** Copies the marks. */
    public TakePlace {
        if (!(placeS >= 0)) {
            throw new IllegalArgumentException("place " + placeS + " s (0 and more)");
        }
        marks = List.copyOf(marks);
    }
}
