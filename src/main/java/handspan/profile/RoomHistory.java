package handspan.profile;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a room is and was.
 *
 * @param room its name
 * @param today what its file holds; empty when it can't be read
 * @param fault why not; empty when it can
 * @param entries its earlier versions, the newest first
 */
public record RoomHistory(String room, Optional<RoomProfile> today, String fault, List<Entry> entries) {
    /**
     * An earlier version.
     *
     * @param version with when it was saved
     * @param changedAfter what differs in the one after it, a word each; empty where one of both can't be read
     */
    public record Entry(Version version, List<String> changedAfter) {
        /** Copies the words. */
        public Entry {
            changedAfter = List.copyOf(changedAfter);
        }

        /** When it was saved, ISO 8601 to the second. */
        public String savedAt() {
            return version.savedAt().truncatedTo(ChronoUnit.SECONDS).toString();
        }

        /** What became of it, in words; may be empty. */
        public String words() {
            return version.profile().isEmpty()
                    ? "can't be read: " + version.fault()
                    : changedAfter.isEmpty() ? "" : "changed after it: " + String.join(", ", changedAfter);
        }
    }

    /** Copies the list. */
    public RoomHistory {
        entries = List.copyOf(entries);
    }

    /**
     * Looks it up.
     *
     * @throws ProfileException where there is neither a file that can be read nor an earlier version
     */
    public static RoomHistory of(ProfileFolder folder, String room) throws ProfileException {
        List<Version> versions = folder.history(room);
        Optional<RoomProfile> today = Optional.empty();
        String fault = "";
        try {
            today = Optional.of(folder.load(room));
        } catch (ProfileException e) {
            if (versions.isEmpty()) {
                throw e;
            }
            fault = String.valueOf(e.getMessage());
        }
        List<Entry> entries = new ArrayList<>();
        Optional<RoomProfile> next = today;
        for (Version version : versions) {
            entries.add(new Entry(version, changed(version.profile(), next)));
            next = version.profile();
        }
        return new RoomHistory(room, today, fault, entries);
    }

    private static List<String> changed(Optional<RoomProfile> before, Optional<RoomProfile> after) {
        return before.isEmpty() || after.isEmpty()
                ? List.of()
                : RoomComparison.of(before.get(), after.get()).words();
    }
}
