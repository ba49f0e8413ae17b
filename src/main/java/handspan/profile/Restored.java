package handspan.profile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a restoring did.
 *
 * @param now the room as it is again
 * @param before the room as it was; it is the newest of the earlier versions now. Empty when it could not be read or
 *     was not there
 * @param setAside where the file that could not be read is kept now; empty when it could
 */
public record Restored(RoomProfile now, Optional<RoomProfile> before, Optional<Path> setAside) {
    /** What differs from what it was until now; empty where that could not be read. */
    public Optional<RoomComparison> comparison() {
        return before.map(was -> RoomComparison.of(was, now));
    }

    /**
     * What was done, a sentence each.
     *
     * @param version that was brought back
     */
    public List<String> words(int version) {
        List<String> words = new ArrayList<>();
        words.add("room '" + now.room().name() + "' is version " + version + " again");
        setAside.ifPresent(file -> words.add("the file that could not be read is kept as " + file));
        comparison()
                .ifPresent(comparison -> words.add(
                        comparison.differences().isEmpty()
                                ? "nothing differs"
                                : "what it was until now is the newest of its earlier versions"));
        return words;
    }
}
