package handspan.wiring.evening;

import handspan.room.budget.SurveyWords;
import java.util.List;

/**
 * Sensors that are being judged, and what came of it. Immutable.
 *
 * @param running whether readings are being taken for it
 * @param seconds since they are
 * @param lengthS how long they are taken for, s
 * @param channels what was found, pitch hand first; empty while it goes on
 * @param trouble why it could not be done, in words; empty when it could
 */
public record Surveyed(boolean running, double seconds, double lengthS, List<SurveyWords> channels, String trouble) {
    /** Copies the list. */
    public Surveyed {
        channels = List.copyOf(channels);
    }

    /** Nothing was judged. */
    public static Surveyed nothing() {
        return new Surveyed(false, 0, 0, List.of(), "");
    }

    /** Whether there is anything to be seen. */
    public boolean isSomething() {
        return running || !channels.isEmpty() || !trouble.isEmpty();
    }
}
