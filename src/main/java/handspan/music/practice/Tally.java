package handspan.music.practice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What a run was worth.
 *
 * @param asked notes asked for and answered, by a rest or by the end of their time
 * @param reached how often the hand came to rest
 * @param hits how often that was in the note's cell
 * @param accuracy of all rests; empty where there was none
 * @param notes note by note, the lowest first
 */
public record Tally(int asked, int reached, int hits, Optional<Accuracy> accuracy, List<NoteTally> notes) {
    private static final Comparator<NoteTally> WORST_FIRST = Comparator.comparingDouble(
                    (NoteTally note) -> -note.missed01())
            .thenComparingDouble(note -> -note.rmsCents());

    /** Checks the counts, copies the list. */
    public Tally {
        notes = List.copyOf(notes);
        if (!(reached >= 0 && reached <= asked && hits >= 0 && hits <= reached)) {
            throw new IllegalArgumentException(
                    "asked " + asked + ", reached " + reached + ", hits " + hits + " (none above the one before)");
        }
        if (accuracy.isPresent() != reached > 0) {
            throw new IllegalArgumentException(reached + " rests (their accuracy goes with them)");
        }
    }

    /** Of all attempts. */
    public static Tally of(List<Attempt> attempts) {
        List<Stop> stops =
                attempts.stream().flatMap(attempt -> attempt.stop().stream()).toList();
        List<NoteTally> notes = attempts.stream()
                .collect(Collectors.groupingBy(attempt -> attempt.wanted().note(), TreeMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(NoteTally::of)
                .toList();
        return new Tally(
                attempts.size(),
                stops.size(),
                (int) attempts.stream().filter(Attempt::isHit).count(),
                stops.isEmpty() ? Optional.empty() : Optional.of(Accuracy.of(stops)),
                notes);
    }

    /** Share of askings that were a hit; 0 where nothing was asked. */
    public double hit01() {
        return asked == 0 ? 0 : hits / (double) asked;
    }

    /**
     * The note that was missed most often; of those alike, the one furthest off. Empty where fewer than two were asked.
     */
    public Optional<NoteTally> worst() {
        return notes.size() < 2 ? Optional.empty() : notes.stream().min(WORST_FIRST);
    }

    /** The note that was hit most often; of those alike, the one nearest. Empty where fewer than two were asked. */
    public Optional<NoteTally> best() {
        return notes.size() < 2 ? Optional.empty() : notes.stream().max(WORST_FIRST);
    }
}
