package handspan.outside.take;

import handspan.live.path.LineTap;
import handspan.live.session.Event;
import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/**
 * Records a session into a take: lines and calibration marks, through a bounded queue and a thread of its own, so that
 * a slow or full disk never delays the path. When writing fails, the file is closed, recording ends, playing goes on,
 * and {@link #trouble} says why. What was written until then can be read.
 */
public final class RecordingTap implements LineTap, AutoCloseable {
    private static final int CAPACITY = 65_536;
    private static final long FLUSH_MS = 500;

    /** Something to be written. */
    private interface Job {
        void write(TakeWriter writer) throws IOException;
    }

    private final TakeWriter writer;
    private final BlockingQueue<Job> queue = new ArrayBlockingQueue<>(CAPACITY);
    private final AtomicLong seen = new AtomicLong();
    private final Thread thread;
    private volatile boolean closing;
    private volatile long written;
    private volatile String trouble = "";
    private boolean dated;
    private long zeroNanos;

    /**
     * Starts recording.
     *
     * @param writer owned by this tap from now on
     */
    public RecordingTap(TakeWriter writer) {
        this.writer = writer;
        this.thread = new Thread(this::run, "take writer");
        thread.setDaemon(true);
        thread.start();
    }

    @Override
    public void onLine(byte[] line, int length, long timeNanos) {
        byte[] copy = Arrays.copyOf(line, length);
        long micros = micros(timeNanos);
        seen.incrementAndGet();
        put(writer -> writer.line(copy, copy.length, micros));
    }

    /** Writes calibration events as marks; others are passed over. Called by the path thread. */
    public void onEvent(Event event) {
        if (event.what() instanceof Event.Asked asked) {
            long micros = micros(event.timeNanos());
            put(writer -> writer.step(asked.step().id(), micros));
        } else if (event.what() instanceof Event.Captured got) {
            long from = micros(got.fromNanos());
            long to = micros(got.toNanos());
            put(writer -> writer.captured(got.step().id(), from, to));
        }
    }

    private long micros(long timeNanos) {
        if (!dated) {
            dated = true;
            zeroNanos = timeNanos;
        }
        return Math.max(0, timeNanos - zeroNanos) / 1000;
    }

    /** What finds no room is missing in the file, and so among {@link #lost}. */
    private boolean put(Job job) {
        return trouble.isEmpty() && queue.offer(job);
    }

    private void run() {
        try (writer) {
            while (!closing || !queue.isEmpty()) {
                @Nullable Job job = queue.poll(FLUSH_MS, TimeUnit.MILLISECONDS);
                if (job == null) {
                    writer.flush();
                } else {
                    job.write(writer);
                }
                written = writer.written();
            }
            writer.flush();
        } catch (IOException | RuntimeException e) {
            written = writer.written();
            trouble = "recording stopped: " + reason(e);
            queue.clear();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        written = writer.written();
    }

    /** The system's words, which begin like a sentence. */
    private static String reason(Exception e) {
        String words = e.getMessage();
        return words == null || words.isEmpty()
                ? e.getClass().getSimpleName()
                : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    /** Lines in the file so far, but for those of the last half second. */
    public long written() {
        return written;
    }

    /** Lines that came and are not in the file; all that are under way among them until it is closed. */
    public long lost() {
        return seen.get() - written;
    }

    /** Why recording stopped; empty while it goes on. */
    public String trouble() {
        return trouble;
    }

    /** Writes what is queued, then closes the file. */
    @Override
    public void close() {
        closing = true;
        try {
            thread.join(5000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
