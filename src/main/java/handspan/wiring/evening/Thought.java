package handspan.wiring.evening;

import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import java.util.List;
import java.util.Optional;

/**
 * What a room can hold; worked out meanwhile, so that it may speak of the room as it was before.
 *
 * @param of the very room that it speaks of; empty where there is none
 * @param tuning name of the tuning that it speaks of
 * @param advice what the room holds, in words
 * @param warning what the tuning asks too much of; empty when it does not
 * @param feel how steady and how quick it is, in words
 * @param measured what was measured and what it can promise, a sentence each
 */
public record Thought(
        Optional<RoomProfile> of, String tuning, String advice, String warning, String feel, List<String> measured) {
    /** Copies the list. */
    public Thought {
        measured = List.copyOf(measured);
    }

    /** Nothing was worked out yet. */
    public static Thought none() {
        return new Thought(Optional.empty(), "", "", "", "", List.of());
    }

    /** Whether it speaks of this room and tuning, and not of them as they were before. */
    public boolean speaksOf(RoomProfile profile, Tuning one) {
        return of.equals(Optional.of(profile)) && tuning.equals(one.name());
    }
}
