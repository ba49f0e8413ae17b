package handspan.live.session;

/**
 * The latest of a run of things, each with a number that counts up from 0; those of long ago have been let go.
 * Immutable: what is added later is not seen here. A reader who remembers {@link #next} goes on from there at the next
 * look, so that nothing is missed between two looks that are not too far apart.
 *
 * @param <T> immutable things
 */
public final class Recent<T> {
    private final Object[][] chunks;
    private final long first;
    private final long next;

    Recent(Object[][] chunks, long first, long next) {
        this.chunks = chunks;
        this.first = first;
        this.next = next;
    }

    /** Of nothing. */
    public static <T> Recent<T> none() {
        return new Recent<>(new Object[0][], 0, 0);
    }

    /** Number of the oldest that is still here; {@link #next} where none is. */
    public long first() {
        return first;
    }

    /** Number that the next one will have. */
    public long next() {
        return next;
    }

    /** How many are here. */
    public int size() {
        return (int) (next - first);
    }

    /**
     * One of them.
     *
     * @param number from {@link #first} to below {@link #next}
     */
    @SuppressWarnings("unchecked") // only a RecentLog of the same kind fills the chunks
    public T at(long number) {
        if (number < first || number >= next) {
            throw new IllegalArgumentException(
                    "thing number " + number + " of " + first + " to below " + next + " (one that is here)");
        }
        int at = (int) (number - first);
        return (T) chunks[at / RecentLog.CHUNK][at % RecentLog.CHUNK];
    }
}
