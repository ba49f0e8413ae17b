package handspan.outside.take;

import handspan.number.units.Figures;
import java.util.Optional;

/** Counts the lines of a file that had to be skipped and remembers the first. */
final class Damage {
    private long count;
    private String first = "";

    void add(long lineNumber, String what) {
        if (count == 0) {
            first = "line " + lineNumber + ": " + what;
        }
        count++;
    }

    long count() {
        return count;
    }

    /** All damage in words, empty when there was none. */
    Optional<String> remark() {
        if (count == 0) {
            return Optional.empty();
        }
        String skipped = count == 1
                ? "1 damaged line skipped: "
                : Figures.count(count) + " damaged lines skipped, the first of them ";
        return Optional.of(skipped + first);
    }
}
