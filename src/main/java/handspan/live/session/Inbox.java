package handspan.live.session;

import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/** The bounded queue between those who bring news and the path thread. */
final class Inbox {
    private static final int CAPACITY = 4096;

    /** What can be brought. */
    sealed interface News {
        /** Bytes of the link, with their arrival. */
        final class Bytes implements News {
            private final byte[] chunk;
            private final long timeNanos;

            Bytes(byte[] chunk, long timeNanos) {
                this.chunk = chunk;
                this.timeNanos = timeNanos;
            }

            byte[] chunk() {
                return chunk;
            }

            long timeNanos() {
                return timeNanos;
            }
        }

        /** The link was opened; with what is to be known of how. */
        record Up(String note, long timeNanos) implements News {}

        /** The link ended or could not be opened. */
        record Down(String reason, long timeNanos) implements News {}

        /** Lines stop for now, on purpose. */
        record Break(String words, long timeNanos) implements News {}

        /** A recording or simulation is over. */
        record Over(long timeNanos) implements News {}

        /** Somebody wants something. */
        record Order(Command command) implements News {}

        /** The path thread shall end. */
        record End() implements News {}
    }

    private final BlockingQueue<News> queue = new ArrayBlockingQueue<>(CAPACITY);
    private final AtomicLong overruns = new AtomicLong();

    /** Puts news in; bytes that find no room are dropped and counted, so that neither side ever waits. */
    boolean offer(News news) {
        boolean taken = queue.offer(news);
        if (!taken) {
            overruns.incrementAndGet();
        }
        return taken;
    }

    /** Waits for news, no longer than until a deadline. */
    @Nullable
    News poll(long waitNanos) throws InterruptedException {
        return queue.poll(waitNanos, TimeUnit.NANOSECONDS);
    }

    long overruns() {
        return overruns.get();
    }
}
