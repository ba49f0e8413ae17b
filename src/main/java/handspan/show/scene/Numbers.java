package handspan.show.scene;

import java.util.Arrays;
import java.util.List;

/** Numbers that a player has written. */
final class Numbers {
    private Numbers() {}

    /**
     * One number.
     *
     * @throws IllegalArgumentException where it is none, in words
     */
    static double of(String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + text + "' is no number: write it like 12.5", e);
        }
    }

    /**
     * One whole number.
     *
     * @throws IllegalArgumentException where it is none, in words
     */
    static int whole(String text) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + text + "' is no whole number: write it like -12", e);
        }
    }

    /** Numbers parted by commas; none where nothing is written. */
    static List<Double> several(String text) {
        return text.isBlank()
                ? List.of()
                : Arrays.stream(text.split(",", -1)).map(Numbers::of).toList();
    }
}
