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
    /** Hand half-way: over the light sensor, or between both ends of the play zone. */
    MID,
    /** Light sensor covered as far as the player will go. */
    COVERED,
    /** Hand at a distance measured by a ruler. */
    RULER,
    /** Hand where a note shall be. */
    NOTE,
    /** Hand back at a place held before, found unaided. */
    AIM;

    /** Whether a hold of this kind is a place of the hand that it can reach for again. */
    public boolean isPlace() {
        return switch (this) {
            case NEAR, MID, FAR, RULER, NOTE -> true;
            case REST, OPEN, COVERED, AIM -> false;
        };
    }

    /** The word in events and files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
