package handspan.music.passage;

import handspan.number.fit.MeanDifference;
import java.util.Optional;

/**
 * One figure of two passages.
 *
 * @param what it is
 * @param first mean over the notes of the first; NaN where it has none
 * @param second likewise
 * @param difference first less second; empty where there are too few notes to tell
 * @param probability01 that the uncertainty is stated at
 */
public record ComparedFigure(
        What what, double first, double second, Optional<MeanDifference> difference, double probability01) {
    /** What can be compared note by note. */
    public enum What {
        /** Signed mean of what sounded. */
        MEAN_OFF,
        /** Rms of what sounded. */
        OFF,
        /** Rms of the hand alone. */
        HAND_OFF,
        /** Wobble of still notes. */
        WOBBLE
    }

    /** Whether the difference is larger than its own uncertainty. */
    public boolean isTold() {
        return difference.filter(it -> it.isBeyondChance(probability01)).isPresent();
    }
}
