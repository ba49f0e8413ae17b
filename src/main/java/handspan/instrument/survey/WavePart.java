package handspan.instrument.survey;

import java.util.Locale;
import java.util.Optional;

/** Parts of the search for the hands, in their order. */
public enum WavePart {
    /** Both hands away. */
    AWAY(1, 3, "take both hands away from the instrument"),
    /** The hand that is to play pitch moves to and fro. */
    PITCH(2, 5, "move the pitch hand to and fro over its sensor, the other hand away"),
    /** The other hand moves to and fro. */
    LEVEL(2, 5, "now the other hand: move it to and fro over its sensor, the pitch hand away");

    private final double readySeconds;
    private final double seconds;
    private final String prompt;

    WavePart(double readySeconds, double seconds, String prompt) {
        this.readySeconds = readySeconds;
        this.seconds = seconds;
        this.prompt = prompt;
    }

    /** Time to get the hands there, before anything counts. */
    public double readySeconds() {
        return readySeconds;
    }

    /** How long it is looked at. */
    public double seconds() {
        return seconds;
    }

    /** What the player is asked for. */
    public String prompt() {
        return prompt;
    }

    /** What comes after it; empty after the last. */
    public Optional<WavePart> next() {
        return switch (this) {
            case AWAY -> Optional.of(PITCH);
            case PITCH -> Optional.of(LEVEL);
            case LEVEL -> Optional.empty();
        };
    }

    /** The word in events. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
