package handspan.live.path;

/** Sees every line as it was received; for recordings. Called by the path thread; must return at once. */
public interface LineTap {
    /** A tap that sees nothing. */
    LineTap NONE = (line, length, timeNanos) -> {};

    /**
     * A line came.
     *
     * @param line bytes without the line end, valid during the call only
     * @param length how many of them
     * @param timeNanos arrival
     */
    void onLine(byte[] line, int length, long timeNanos);
}
