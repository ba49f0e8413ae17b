package handspan.outside.tone;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.SoundFrame;
import handspan.number.units.Figures;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;

/**
 * Writes what was sent as sound, by the frames' own times, in a thread of its own. The queue holds more than a minute
 * of frames; those that find no room there are counted. When writing fails, the file is closed, playing goes on, and
 * {@link #status} says why; what was written until then can be heard.
 */
public final class WavTarget implements FrameTarget {
    /** 80 s at 200 frames a second. */
    private static final int CAPACITY = 16_384;

    private static final long LOOK_MS = 500;
    private static final long FLUSH_SAMPLES = Pcm.SAMPLES_PER_S / 2;
    private static final long LAST_SAMPLES_MS = 10_000;

    private final WavFile file;
    private final String name;
    private final boolean waits;
    private final ToneTrack track;
    private final BlockingQueue<SoundFrame> queue = new ArrayBlockingQueue<>(CAPACITY);
    private final AtomicLong taken = new AtomicLong();
    private final AtomicLong dropped = new AtomicLong();
    private final Thread thread;
    private volatile boolean closing;
    private volatile String trouble = "";
    private volatile long written;
    private long flushed;

    WavTarget(WavFile file, String name, boolean waits) {
        this.file = file;
        this.name = name;
        this.waits = waits;
        this.track = new ToneTrack(file::add);
        this.thread = new Thread(this::run, "wav writer");
        thread.setDaemon(true);
        thread.start();
    }

    /**
     * Begins a file, which is made or emptied; its folder is made where it is missing.
     *
     * @param waits whether a frame that finds the queue full waits for room: only for frames that do not come by the
     *     clock
     */
    public static WavTarget into(Path file, boolean waits) throws IOException {
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            return new WavTarget(WavFile.into(file), file.toString(), waits);
        } catch (FileSystemException e) {
            // its own message is the name of the file alone
            String why = e.getReason() == null ? e.getClass().getSimpleName() : e.getReason();
            throw new IOException("WAV file " + file + " can't be written (" + why + "): name another place", e);
        }
    }

    @Override
    public void send(SoundFrame frame, boolean withState) {
        if (!trouble.isEmpty() || closing || !put(frame)) {
            dropped.incrementAndGet();
        } else {
            taken.incrementAndGet();
        }
    }

    private boolean put(SoundFrame frame) {
        boolean in = queue.offer(frame);
        try {
            while (!in && waits && trouble.isEmpty() && !closing) {
                in = queue.offer(frame, LOOK_MS, TimeUnit.MILLISECONDS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return in;
    }

    private void run() {
        try (file) {
            while (!closing || !queue.isEmpty()) {
                @Nullable SoundFrame frame = queue.poll(LOOK_MS, TimeUnit.MILLISECONDS);
                if (frame != null) {
                    track.add(frame.timeNanos(), frame.pitchHz(), frame.gain01());
                }
                if (frame == null || track.made() - flushed >= FLUSH_SAMPLES) {
                    flush();
                }
            }
            track.end();
            flush();
        } catch (IOException | RuntimeException e) {
            stop(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void flush() throws IOException {
        file.flush();
        flushed = track.made();
        written = file.written();
    }

    private void stop(Exception e) {
        written = file.written();
        trouble = "the WAV file stopped: " + reason(e) + ": " + Figures.text(seconds(), 2) + " s are in " + name
                + "; playing goes on";
        int lost = queue.size();
        queue.clear();
        dropped.addAndGet(lost);
        taken.addAndGet(-lost);
    }

    /** The system's words, which begin like a sentence. */
    private static String reason(Exception e) {
        String words = e.getMessage();
        return words == null || words.isEmpty()
                ? e.getClass().getSimpleName()
                : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    /** Where it is written, as it was named. */
    public String name() {
        return name;
    }

    /** How much sound is in the file, s; all of it once it is closed. */
    public double seconds() {
        return written / (double) Pcm.SAMPLES_PER_S;
    }

    @Override
    public TargetStatus status() {
        return new TargetStatus("wav:" + name, taken.get(), 0, dropped.get(), trouble);
    }

    /** Writes what is queued and fades what still sounds, then closes the file. */
    @Override
    public void close() {
        closing = true;
        try {
            thread.join(LAST_SAMPLES_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
