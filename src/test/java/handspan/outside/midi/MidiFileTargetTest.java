package handspan.outside.midi;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.MidiEar;
import handspan.music.send.MidiForm;
import handspan.music.send.MidiForm.Loudness;
import handspan.music.send.SoundFrame;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are read back by the Java runtime's own reader of Standard MIDI Files. */
class MidiFileTargetTest {
    /** 960 ticks to the quarter, half a second to the quarter. */
    private static final double TICK_MS = 500.0 / 960;

    /** Half a tick, and microseconds for rounding. */
    private static final double TIME_MS = TICK_MS / 2 + 0.001;

    @TempDir
    Path folder;

    private Path file() {
        return folder.resolve("night/reed.mid");
    }

    private static Sequence read(Path file) throws IOException {
        try {
            return MidiSystem.getSequence(file.toFile());
        } catch (InvalidMidiDataException e) {
            throw new AssertionError("no MIDI file", e);
        }
    }

    /** Half a minute of playing with gaps, 200 frames a second; a second of silence at the end. */
    private static List<SoundFrame> playing() {
        Random random = new Random(7);
        List<SoundFrame> frames = new ArrayList<>();
        double key = 60;
        for (int i = 0; i < 6000; i++) {
            key = Math.max(40, Math.min(90, key + 0.1 * random.nextGaussian()));
            double gain = i % 1000 > 900 || i > 5800 ? 0 : 0.3 + 0.2 * Math.sin(i / 50.0);
            frames.add(Sounds.of(Sounds.hz(key), gain, 5 * Nanos.PER_SECOND + i * Sounds.FRAME));
        }
        return frames;
    }

    private void write(List<SoundFrame> frames, MidiForm form) throws IOException {
        MidiFileTarget target = MidiFileTarget.into(file(), "Reed", form);
        frames.forEach(frame -> target.send(frame, false));
        target.close();
        assertEquals("", target.status().trouble());
        assertEquals(frames.size(), target.status().sent());
    }

    private static void hear(MidiEar ear, MidiEvent event) {
        if (event.getMessage() instanceof ShortMessage message) {
            ear.send(message.getStatus(), message.getData1(), message.getLength() > 2 ? message.getData2() : 0);
        }
    }

    @Test
    void whatIsReadBackIsWhatWasPlayedAtItsTime() throws IOException {
        List<SoundFrame> frames = playing();
        write(frames, MidiForm.USUAL);
        Sequence sequence = read(file());
        assertEquals(Sequence.PPQ, sequence.getDivisionType());
        assertEquals(960, sequence.getResolution());
        assertEquals(1, sequence.getTracks().length);
        Track track = sequence.getTracks()[0];
        MidiEar ear = new MidiEar(1);
        int next = 0;
        int compared = 0;
        long zero = frames.get(0).timeNanos();
        for (SoundFrame frame : frames) {
            double ms = Nanos.toMs(frame.timeNanos() - zero);
            while (next < track.size() && track.get(next).getTick() * TICK_MS <= ms + TIME_MS) {
                hear(ear, track.get(next));
                next++;
            }
            if (frame.gain01() <= 0) {
                assertEquals(0, ear.notes(), "at " + ms + " ms");
            } else if (ear.notes() == 1 && Math.abs(Cents.between(frame.pitchHz(), ear.pitchHz())) < 0.0123) {
                compared++;
            }
        }
        // after a note's nine bytes a frame may have waited for the next
        assertTrue(compared > 0.97 * frames.stream().filter(SoundFrame::hand).count(), compared + " frames");
        assertEquals(6000 * 5 - 5, sequence.getMicrosecondLength() / 1000.0, TIME_MS);
    }

    @Test
    void theTrackHasANameAndATempo() throws IOException {
        write(playing(), MidiForm.USUAL);
        Track track = read(file()).getTracks()[0];
        MetaMessage name = (MetaMessage) track.get(0).getMessage();
        assertEquals(3, name.getType());
        assertEquals("Reed", new String(name.getData(), java.nio.charset.StandardCharsets.UTF_8));
        MetaMessage tempo = (MetaMessage) track.get(1).getMessage();
        assertEquals(0x51, tempo.getType());
        // 500,000 microseconds to the quarter: 07A120h
        assertArrayEquals(new byte[] {0x07, (byte) 0xA1, 0x20}, tempo.getData());
    }

    /**
     * Delta times of the specification (Standard MIDI Files 1.0, variable-length quantities): 7F, 81 00, FF 7F, 81 80
     * 00.
     */
    @Test
    void longPausesKeepTheirLength() throws IOException {
        long[] ticks = {0x7F, 0x80, 0x3FFF, 0x4000, 0x1F_FFFF, 0x20_0000};
        List<SoundFrame> frames = new ArrayList<>();
        long at = 0;
        frames.add(Sounds.of(440, 0, 0));
        for (long tick : ticks) {
            at += tick;
            frames.add(Sounds.of(440, frames.size() % 2 == 0 ? 0 : 0.5, Math.round(at * TICK_MS * 1e6)));
        }
        write(frames, MidiForm.USUAL);
        Track track = read(file()).getTracks()[0];
        List<Long> notes = new ArrayList<>();
        for (int i = 0; i < track.size(); i++) {
            if (track.get(i).getMessage() instanceof ShortMessage message
                    && (message.getCommand() == ShortMessage.NOTE_ON
                            || message.getCommand() == ShortMessage.NOTE_OFF)) {
                notes.add(track.get(i).getTick());
            }
        }
        List<Long> wanted = new ArrayList<>();
        long sum = 0;
        for (long tick : ticks) {
            sum += tick;
            wanted.add(sum);
        }
        assertEquals(wanted, notes);
    }

    @Test
    void aFileThatIsFullEndsItsNoteAndSaysSo() throws IOException {
        MidiFileTarget target = MidiFileTarget.into(file(), "Reed", MidiForm.USUAL, 2000);
        List<SoundFrame> frames = playing();
        frames.forEach(frame -> target.send(frame, false));
        assertTrue(
                target.status().trouble().contains("is full (2000 bytes)"),
                target.status().trouble());
        assertEquals(frames.size(), target.status().sent() + target.status().dropped());
        target.close();
        Track track = read(file()).getTracks()[0];
        MidiEar ear = new MidiEar(1, false);
        for (int i = 0; i < track.size(); i++) {
            hear(ear, track.get(i));
        }
        assertTrue(ear.notesBegun() > 0);
        assertEquals(0, ear.notes());
    }

    @Test
    void withoutAFrameItIsAnEmptyFile() throws IOException {
        MidiFileTarget target = MidiFileTarget.into(file(), "Reed", new MidiForm(3, 48, Loudness.PRESSURE));
        target.close();
        assertEquals(0, read(file()).getTickLength());
    }

    @Test
    void aPlaceWhereNoFileCanBeIsSaidBeforePlaying() throws IOException {
        Path noFolder = Files.createFile(folder.resolve("night"));
        IOException e = assertThrows(IOException.class, () -> MidiFileTarget.into(file(), "Reed", MidiForm.USUAL));
        assertTrue(String.valueOf(e.getMessage())
                .startsWith("MIDI file " + noFolder.resolve("reed.mid") + " can't be written"));
    }
}
