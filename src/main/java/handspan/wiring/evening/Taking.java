package handspan.wiring.evening;

import handspan.wiring.TakePlace;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Recordings in an evening. Immutable.
 *
 * @param shelf those that are kept, newest first
 * @param place where the one stands that runs in place of a board; empty where none does
 * @param made the one that is being made, or was made last; empty where none was
 * @param trouble why one could not be made, in words with what to do; empty when nothing went wrong
 */
public record Taking(List<Kept> shelf, Optional<TakePlace> place, Optional<Made> made, String trouble) {
    /**
     * A recording that is kept.
     *
     * @param file of it
     * @param words of which instrument, from where, how large
     */
    public record Kept(Path file, String words) {}

    /**
     * A recording of this evening.
     *
     * @param file of it
     * @param seconds since it began, or how long it took
     * @param lines in the file so far, but for those of the last half second
     * @param running whether it goes on
     */
    public record Made(Path file, double seconds, long lines, boolean running) {}

    /** Copies the list. */
    public Taking {
        shelf = List.copyOf(shelf);
    }

    /** No recording at all. */
    public static Taking nothing() {
        return new Taking(List.of(), Optional.empty(), Optional.empty(), "");
    }

    Taking listing(List<Kept> kept) {
        return new Taking(kept, place, made, trouble);
    }

    Taking at(Optional<TakePlace> now) {
        return new Taking(shelf, now, made, trouble);
    }

    Taking making(Optional<Made> now, String words) {
        return new Taking(shelf, place, now, words);
    }
}
