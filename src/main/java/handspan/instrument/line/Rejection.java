package handspan.instrument.line;

/** Why a line did not become a reading. */
public enum Rejection {
    /** Longer than {@link LineSplitter#LONGEST} bytes. */
    TOO_LONG("longer than 256 characters"),
    /** Holds control characters: often the wrong baud rate. */
    NOT_TEXT("not text"),
    /** Holds no number at all. */
    NO_NUMBER("no number"),
    /** Holds more or fewer numbers than the learned shape. */
    OTHER_COUNT("other count of numbers"),
    /** Holds none of the learned labels, or a label where none was learned. */
    OTHER_LABEL("other label"),
    /** Holds a number in another unit than the learned one. */
    OTHER_UNIT("other unit"),
    /** Lacks what all learned lines begin or end with. */
    CUT("cut short"),
    /** Came right after a connect, when sensors are still settling. */
    SETTLING("first readings after a connect");

    private final String words;

    Rejection(String words) {
        this.words = words;
    }

    /** The reason in words. */
    public String words() {
        return words;
    }
}
