package handspan.room;

import java.util.Locale;

/** What a hand does. */
public enum HandRole {
    /** It plays the pitch. */
    PITCH,
    /** It plays the level. */
    LEVEL;

    /** The word in events and files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
