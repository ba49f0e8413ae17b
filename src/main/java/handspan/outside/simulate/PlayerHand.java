package handspan.outside.simulate;

/** Which of the player's hands. */
public enum PlayerHand {
    /** The hand whose distance makes the pitch. */
    PITCH,
    /** The hand that makes the level. */
    LEVEL
}
