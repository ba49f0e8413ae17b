package handspan.live.session;

import java.util.Arrays;

/**
 * Keeps the latest of a run of things and hands them out as they stand, without a copy: chunks that are only ever
 * written behind what has been handed out. Adding and handing out take the same short time however many are kept. Owned
 * by the path thread; a {@link Recent} may go to others by way of a snapshot.
 *
 * @param <T> immutable things
 */
final class RecentLog<T> {
    /** Things in a chunk. */
    static final int CHUNK = 64;

    /** Chunks that are kept: between 448 and 512 things, two seconds of frames at 200 a second. */
    static final int CHUNKS = 8;

    private Object[][] chunks = new Object[0][];
    private long first;
    private long next;

    void add(T thing) {
        if (next - first == (long) chunks.length * CHUNK) {
            // handed-out logs keep the old list of chunks
            boolean full = chunks.length == CHUNKS;
            Object[][] more =
                    full ? Arrays.copyOfRange(chunks, 1, CHUNKS + 1) : Arrays.copyOf(chunks, chunks.length + 1);
            first += full ? CHUNK : 0;
            more[more.length - 1] = new Object[CHUNK];
            chunks = more;
        }
        int at = (int) (next - first);
        chunks[at / CHUNK][at % CHUNK] = thing;
        next++;
    }

    Recent<T> recent() {
        return new Recent<>(chunks, first, next);
    }
}
