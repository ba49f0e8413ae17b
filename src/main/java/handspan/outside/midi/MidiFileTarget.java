package handspan.outside.midi;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.MidiForm;
import handspan.music.send.SoundFrame;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * A standard MIDI file of what is played, kept in memory (up to 9 MB an hour) and written at the end. It goes by the
 * frames' own times, so that it is the same however fast they come, and begins with the first frame. Once it holds
 * {@value #MOST_BYTES} bytes, its note ends and nothing more gets in. Any thread may call.
 */
public final class MidiFileTarget implements FrameTarget {
    /** Eleven hours at least. */
    private static final long MOST_BYTES = 100_000_000;

    private final Path file;
    private final String name;
    private final MidiForm form;
    private final long mostBytes;
    private final ReentrantLock lock = new ReentrantLock();
    private @Nullable MidiTrack track;
    private @Nullable MidiVoice voice;
    private long lastNanos;
    private long sent;
    private long dropped;
    private boolean full;
    private boolean closed;
    private String trouble = "";

    private MidiFileTarget(Path file, String name, MidiForm form, long mostBytes) {
        this.file = file;
        this.name = name;
        this.form = form;
        this.mostBytes = mostBytes;
    }

    /**
     * Begins a file: an empty one is written at once, so that a place where none can be is known before playing.
     *
     * @param file its folder is made where it is missing
     * @param name of the track
     * @param form channel, range and what carries the level
     * @throws IOException when it can't be written
     */
    public static MidiFileTarget into(Path file, String name, MidiForm form) throws IOException {
        return into(file, name, form, MOST_BYTES);
    }

    static MidiFileTarget into(Path file, String name, MidiForm form, long mostBytes) throws IOException {
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            write(new MidiTrack(name, 0), file);
        } catch (IOException e) {
            throw new IOException("MIDI file " + file + " can't be written (" + e + "): name another place", e);
        }
        return new MidiFileTarget(file, name, form, mostBytes);
    }

    private static void write(MidiTrack track, Path file) throws IOException {
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
            track.writeTo(out);
        }
    }

    @Override
    public void send(SoundFrame frame, boolean withState) {
        lock.lock();
        try {
            follow(frame);
        } finally {
            lock.unlock();
        }
    }

    private void follow(SoundFrame frame) {
        if (closed || full) {
            dropped++;
            return;
        }
        MidiTrack onto = track;
        MidiVoice singing = voice;
        lastNanos = frame.timeNanos();
        if (onto == null || singing == null) {
            onto = new MidiTrack(name, lastNanos);
            singing = new MidiVoice(form, onto);
            track = onto;
            voice = singing;
            singing.begin(lastNanos);
        }
        if (singing.nextNanos() < lastNanos) {
            long due = singing.nextNanos();
            onto.at(due);
            singing.onTick(due);
        }
        onto.at(lastNanos);
        singing.onFrame(frame, lastNanos);
        sent++;
        if (onto.length() > mostBytes) {
            full = true;
            singing.end(lastNanos);
            trouble = "MIDI file " + file + " is full (" + mostBytes + " bytes): what comes now is not in it";
        }
    }

    @Override
    public TargetStatus status() {
        lock.lock();
        try {
            return new TargetStatus("midi-file:" + file, sent, 0, dropped, trouble);
        } finally {
            lock.unlock();
        }
    }

    /** Writes the file; where that fails, {@link #status} says why. */
    @Override
    public void close() {
        lock.lock();
        try {
            finish();
        } finally {
            lock.unlock();
        }
    }

    private void finish() {
        MidiTrack onto = track;
        MidiVoice singing = voice;
        if (closed || onto == null || singing == null) {
            closed = true;
            return;
        }
        closed = true;
        onto.at(lastNanos);
        singing.end(lastNanos);
        try {
            write(onto, file);
        } catch (IOException e) {
            trouble = "MIDI file " + file + " can't be written (" + e + "): make room on the disk and play it again";
        }
    }
}
