package handspan.instrument.survey;

import java.util.Locale;

/** How well a channel can be played. */
public enum Verdict {
    /** Nothing to do. */
    GOOD,
    /** Plays, with the reason to know. */
    USABLE,
    /** Will not play well until the remedy is taken. */
    POOR;

    /** The word in reports. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
