package handspan.music.practice;

import java.util.Optional;

/**
 * A note that was asked for, and what became of it.
 *
 * @param wanted the note
 * @param stop where the hand came to rest; empty when time ran out before
 */
public record Attempt(WantedNote wanted, Optional<Stop> stop) {
    /** Whether the hand came to rest in the note's cell. */
    public boolean isHit() {
        return stop.filter(Stop::hit).isPresent();
    }
}
