package handspan.show.scene;

/** How words are meant. */
public enum Tone {
    /** As it is. */
    PLAIN,
    /** Beside the point, for whoever wants to know. */
    QUIET,
    /** As it should be. */
    GOOD,
    /** Worth a look. */
    LOOK,
    /** In the way. */
    BAD
}
