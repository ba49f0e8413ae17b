package handspan.room;

import java.util.Locale;

/** What a calibration step asks for. */
public enum StepKind {
    /** No hand anywhere. */
    REST,
    /** Hand at the near end of the play zone. */
    NEAR,
    /** Hand at the far end of the play zone. */
    FAR,
    /** Light sensor in the open. */
    OPEN,
    /** Hand half-way over the light sensor. */
    MID,
    /** Light sensor covered as far as the player will go. */
    COVERED,
    /** Hand at a distance measured by a ruler. */
    RULER,
    /** Hand where a note shall be. */
    NOTE;

    /** The word in events and files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
