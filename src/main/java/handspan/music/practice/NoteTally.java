package handspan.music.practice;

import java.util.List;

/**
 * What a run was worth at one note.
 *
 * @param key number of the note as it sounds
 * @param name what it is called
 * @param asked how often it was asked for, 1 or more
 * @param reached how often the hand came to rest
 * @param hits how often that was in the note's cell
 * @param rmsCents of the rests, off the note; 0 where there was none
 */
public record NoteTally(double key, String name, int asked, int reached, int hits, double rmsCents) {
    /** Checks the counts. */
    public NoteTally {
        if (!(asked >= 1 && reached >= 0 && reached <= asked && hits >= 0 && hits <= reached)) {
            throw new IllegalArgumentException("note " + name + ": asked " + asked + ", reached " + reached + ", hits "
                    + hits + " (asked 1 or more, none above the one before)");
        }
        if (!Double.isFinite(key) || !(rmsCents >= 0) || !Double.isFinite(rmsCents)) {
            throw new IllegalArgumentException(
                    "note " + name + ": key " + key + ", rms " + rmsCents + " cents (numbers, the rms 0 or more)");
        }
    }

    /** Of all attempts at one note, at least one. */
    static NoteTally of(List<Attempt> attempts) {
        WantedNote note = attempts.get(0).wanted();
        List<Stop> stops =
                attempts.stream().flatMap(attempt -> attempt.stop().stream()).toList();
        return new NoteTally(
                note.key(),
                note.name(),
                attempts.size(),
                stops.size(),
                (int) attempts.stream().filter(Attempt::isHit).count(),
                stops.isEmpty() ? 0 : Accuracy.of(stops).rmsCents());
    }

    /** Share of askings that were no hit. */
    public double missed01() {
        return 1 - hits / (double) asked;
    }
}
