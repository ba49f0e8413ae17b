package handspan.live.session;

/** An open stream of bytes from a board. Read by one thread, closed by any. */
public interface Link extends AutoCloseable {
    /** What {@link #read} returns where lines stop for now on purpose, and what comes next is another stretch. */
    int BREAK = 0;

    /**
     * Waits for bytes.
     *
     * @param buffer takes them
     * @return how many, at least 1; {@link #BREAK}; -1 when the link has ended, by whatever cause
     */
    int read(byte[] buffer);

    /** Whether it has ended because there is no more, as at the end of a recording: then it is not opened again. */
    default boolean isOver() {
        return false;
    }

    /** Why lines stopped at the latest {@link #BREAK}, in a few words. */
    default String breakWords() {
        return "paused";
    }

    /** What is known of it. */
    default LinkFacts facts() {
        return LinkFacts.NONE;
    }

    /** Ends the link; a waiting {@link #read} returns -1. */
    @Override
    void close();
}
