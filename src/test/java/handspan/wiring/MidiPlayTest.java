package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.MidiEar;
import handspan.Waits;
import handspan.live.path.FrameTarget;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.Command;
import handspan.music.send.MidiForm;
import handspan.music.send.MidiForm.Loudness;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.send.SoundFrame;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import handspan.outside.midi.MidiVoice;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From the sensors of a simulated instrument to what a MIDI receiver makes of it. */
class MidiPlayTest {
    private static final double SECONDS = 20;
    private static final double ARITHMETIC_CENTS = 1e-6;

    /** Half a step of seven bits at the quietest value that is judged. */
    private static final double LEVEL_DB = 2.1;

    private static final double FLOOR_DB = -60;

    private final RoomProfile hall;

    @TempDir
    Path folder;

    MidiPlayTest() throws ProfileException {
        hall = new ProfileFolder(Path.of("profiles")).load("saltmill-hall");
    }

    /** A receiver that is compared with each frame as soon as it has been told of it. */
    private static final class Heard implements FrameTarget {
        private final MidiEar ear;
        private final MidiVoice voice;
        private final double boundCents;
        private boolean begun;
        private long firstNanos;
        private long lastNanos;
        private int sounding;
        private int late;
        private double worstCents;
        private double worstDb;

        Heard(MidiForm form) {
            // one that passes over "all notes off": notes must end by themselves
            ear = new MidiEar(form.channel(), false);
            voice = new MidiVoice(form, ear);
            boundCents = 100.0 * form.bendSemitones() / 8192 / 2 + ARITHMETIC_CENTS;
        }

        @Override
        public void send(SoundFrame frame, boolean withState) {
            long now = frame.timeNanos();
            if (!begun) {
                begun = true;
                firstNanos = now - Nanos.PER_SECOND;
                voice.begin(firstNanos);
            }
            if (voice.nextNanos() < now) {
                voice.onTick(voice.nextNanos());
            }
            voice.onFrame(frame, now);
            lastNanos = now;
            if (frame.gain01() <= 0) {
                assertEquals(0, ear.notes(), "notes in silence");
            } else if (voice.nextNanos() < Long.MAX_VALUE) {
                late++;
            } else {
                compare(frame);
            }
        }

        private void compare(SoundFrame frame) {
            sounding++;
            assertEquals(1, ear.notes());
            double offCents = Math.abs(Cents.between(frame.pitchHz(), ear.pitchHz()));
            assertTrue(offCents <= boundCents, () -> offCents + " cents");
            worstCents = Math.max(worstCents, offCents);
            double db = 20 * Math.log10(frame.gain01());
            if (db >= FLOOR_DB) {
                worstDb = Math.max(worstDb, Math.abs(ear.coarseDb() - db));
            }
        }

        double seconds() {
            return Nanos.toSeconds(lastNanos - firstNanos);
        }

        @Override
        public TargetStatus status() {
            return new TargetStatus("ear", sounding, 0, 0, "");
        }

        @Override
        public void close() {}
    }

    private void play(List<FrameTarget> targets, double seconds) throws Exception {
        try (Rig rig = Rigs.open(
                Source.parse("sim:hall"),
                SourceOptions.USUAL.fast(),
                hall.room().instrument().shape(),
                targets,
                null)) {
            rig.submit(new Command.Play(hall, hall.tunings().get(0), PathSettings.USUAL.muted(false)));
            rig.follow(snapshot -> Nanos.toSeconds(snapshot.timeNanos()) < 1 + seconds);
        }
    }

    @ParameterizedTest
    @CsvSource({"2, 1, 4", "48, 16, 1"})
    void theReceiverSoundsAsTheFramesSay(int range, int channel, int fewestNotes) throws Exception {
        Heard heard = new Heard(new MidiForm(channel, range, Loudness.EXPRESSION));
        play(List.of(heard), SECONDS);
        assertTrue(heard.sounding > SECONDS * 100, heard.sounding + " frames");
        assertTrue(heard.late < heard.sounding / 50, heard.late + " frames waited for the cable");
        assertTrue(heard.worstCents > 0);
        assertTrue(heard.worstDb <= LEVEL_DB, heard.worstDb + " dB");
        assertEquals(0, heard.ear.notes(), "after the end");
        assertEquals(0, heard.ear.expression());
        assertTrue(heard.ear.notesBegun() >= fewestNotes, heard.ear.notesBegun() + " notes");
        // 3125 bytes a second are a cable
        double share = heard.ear.bytes() / heard.seconds() / 3125;
        assertTrue(share < 0.5, share + " of a cable");
    }

    @Test
    void theFileOfATakeIsTheSameEachTime() throws Exception {
        byte[][] files = new byte[2][];
        for (int i = 0; i < files.length; i++) {
            Path file = folder.resolve(i + ".mid");
            try (MidiFile midi = MidiFile.into(file, "reed", MidiForm.USUAL)) {
                play(List.of(midi.target()), 5);
            }
            files[i] = Files.readAllBytes(file);
        }
        assertTrue(files[0].length > 2000, files[0].length + " bytes");
        assertArrayEquals(files[0], files[1]);
    }

    @Test
    void aDeviceThatIsNotThereIsSaidAndPlayingGoesOn() throws Exception {
        SendPlan plan = SendPlan.byDefault("Moth", List.of(SendTarget.parse("midi:no such device")));
        try (Targets targets = Targets.open(plan)) {
            Waits.until(() -> targets.status().get(0).trouble().startsWith("no MIDI output has 'no such device'"));
            play(targets.all(), 2);
            TargetStatus status = targets.status().get(0);
            assertEquals("midi:no such device", status.target());
            assertEquals(0, status.sent());
            assertTrue(status.dropped() > 0);
        }
    }
}
