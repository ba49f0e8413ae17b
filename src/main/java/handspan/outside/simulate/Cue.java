package handspan.outside.simulate;

/**
 * What the player is asked to do with one hand.
 *
 * @param kind the request
 * @param hand which hand
 * @param mm true distance asked for, 1..1500 mm; 0 for kinds that carry none
 */
public record Cue(Kind kind, PlayerHand hand, double mm) {
    /** The requests a player understands. */
    public enum Kind {
        /** Take the hand away. */
        REST,
        /** Go to the near end of the stage. */
        NEAR,
        /** Go to the far end of the stage. */
        FAR,
        /** Leave the sensor open: hand withdrawn. */
        OPEN,
        /** Go to the middle place of the stage. */
        MID,
        /** Cover the sensor. */
        COVERED,
        /** Go to a distance with a ruler beside the hand: exact but for tremor and wander. */
        RULER,
        /** Go to a distance, exact but for tremor and wander. */
        PLACE,
        /** Reach for a distance unaided: missed by the player's aim. */
        REACH;

        /** Whether a cue of this kind names a distance. */
        public boolean hasDistance() {
            return this == RULER || this == PLACE || this == REACH;
        }
    }

    public Cue {
        if (kind.hasDistance()) {
            Allowed.within("distance of a cue", mm, 1, SimulatedHand.AWAY_MM, "mm");
        } else {
            Allowed.within("distance of a " + kind + " cue", mm, 0, 0, "mm");
        }
    }

    /** A cue without a distance: REST, NEAR, FAR, OPEN, MID or COVERED. */
    public static Cue of(Kind kind, PlayerHand hand) {
        return new Cue(kind, hand, 0);
    }

    /** A cue with a distance: RULER, PLACE or REACH. */
    public static Cue at(Kind kind, PlayerHand hand, double mm) {
        return new Cue(kind, hand, mm);
    }
}
