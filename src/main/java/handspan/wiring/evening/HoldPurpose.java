package handspan.wiring.evening;

/** What holds are taken for. */
public enum HoldPurpose {
    /** A room from nothing. */
    FRESH,
    /** Ends and light of the room that is there; how the sensors respond is kept. */
    AGAIN,
    /** The open light of the room that is there. */
    LIGHT,
    /** To see whether the room still fits. */
    CHECK,
    /** Ends and light again, and then ten unaided reaches. */
    AIM
}
