package handspan.room.budget;

import handspan.hand.smooth.Quickness;
import handspan.hand.smooth.SmoothSettings;
import handspan.music.tuning.Tuning;
import handspan.room.HandSetup;
import handspan.room.Room;

/** How the pitch hand is smoothed: the settings follow from the room's own noise and rate. */
public final class PitchSmoothing {
    /** Wanted wobble of a still hand, cents rms: the smallest pitch step that is heard (textbooks). */
    public static final double TARGET_CENTS = 5;

    private PitchSmoothing() {}

    /** Smoothing of the pitch hand in a room. */
    public static SmoothSettings of(Room room, Tuning tuning) {
        return of(
                room.pitch(),
                room.ratePerS(),
                tuning.centsPerMm(room.pitch().zone().lengthMm()),
                tuning.quickness());
    }

    /**
     * Smoothing of a hand.
     *
     * @param hand with its noise
     * @param ratePerS readings a second
     * @param centsPerMm of the pitch curve where it is steepest
     * @param quickness that the player wants
     */
    static SmoothSettings of(HandSetup hand, double ratePerS, double centsPerMm, Quickness quickness) {
        return SmoothSettings.reaching(hand.noise(), ratePerS, TARGET_CENTS / centsPerMm, quickness);
    }
}
