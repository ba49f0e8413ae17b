package handspan.outside.midi;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.music.send.MidiForm;
import handspan.music.send.MidiForm.Loudness;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A synthesizer that was written by others, the one in the Java runtime, makes sound of our file (its file reader does
 * that without a device), and what sounds is measured.
 */
class MidiHeardTest {
    /** How well the synthesizer's own samples are tuned; an organ, which neither decays nor wavers. */
    private static final double SAMPLES_CENTS = 2;

    private static final int ORGAN = 19;

    /** Half a step of seven bits at these levels is 0.3 dB; its resampling and reverberation add what is left. */
    private static final double LEVEL_DB = 0.5;

    private static final double NOTE_S = 1.5;

    @TempDir
    Path folder;

    private double[] samples = {};
    private double samplesPerS;

    /** Plays tones of 1.5 s, one after the other without a gap. */
    private void play(MidiForm form, double[] hz, double[] gain01) throws Exception {
        Path file = folder.resolve("tones.mid");
        MidiFileTarget target = MidiFileTarget.into(file, "Reed", form);
        long frames = Math.round(NOTE_S * Nanos.PER_SECOND / Sounds.FRAME);
        long now = 0;
        target.send(Sounds.of(440, 0, now), false);
        for (int i = 0; i < hz.length; i++) {
            for (long j = 0; j < frames; j++) {
                now += Sounds.FRAME;
                target.send(Sounds.of(hz[i], gain01[i], now), false);
            }
        }
        target.send(Sounds.of(440, 0, now + Sounds.FRAME), false);
        target.close();
        Sequence sequence = MidiSystem.getSequence(file.toFile());
        sequence.getTracks()[0].add(
                new MidiEvent(new ShortMessage(ShortMessage.PROGRAM_CHANGE, form.channel() - 1, ORGAN, 0), 0));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        MidiSystem.write(sequence, 0, bytes);
        listen(AudioSystem.getAudioInputStream(new ByteArrayInputStream(bytes.toByteArray())));
    }

    private void listen(AudioInputStream audio) throws Exception {
        int channels = audio.getFormat().getChannels();
        samplesPerS = audio.getFormat().getSampleRate();
        byte[] bytes = audio.readAllBytes();
        samples = new double[bytes.length / 2 / channels];
        for (int i = 0; i < samples.length; i++) {
            int at = i * channels * 2;
            samples[i] = (short) ((bytes[at] & 0xFF) | (bytes[at + 1] << 8));
        }
    }

    /** Real and imaginary part of the partial at a frequency, a fifth of a second from a time on, Hann window. */
    private double[] partial(double hz, double fromS) {
        int count = (int) (0.2 * samplesPerS);
        int from = (int) (fromS * samplesPerS);
        double real = 0;
        double imaginary = 0;
        for (int i = 0; i < count; i++) {
            double window = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / count);
            double phase = 2 * Math.PI * hz * (from + i) / samplesPerS;
            real += window * samples[from + i] * Math.cos(phase);
            imaginary -= window * samples[from + i] * Math.sin(phase);
        }
        return new double[] {real, imaginary};
    }

    /** By how much the phase at that frequency runs ahead in a twentieth of a second: right within 10 Hz. */
    private double heardHz(double nearHz, double fromS) {
        double[] here = partial(nearHz, fromS);
        double[] later = partial(nearHz, fromS + 0.05);
        double ahead = Math.atan2(later[1], later[0]) - Math.atan2(here[1], here[0]);
        return nearHz + Math.IEEEremainder(ahead, 2 * Math.PI) / (2 * Math.PI) / 0.05;
    }

    private double heardDb(double hz, double fromS) {
        double[] partial = partial(hz, fromS);
        return 20 * Math.log10(Math.hypot(partial[0], partial[1]));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 12, 48})
    void everyToneHasThePitchThatWasMeant(int range) throws Exception {
        // a key, a trim of 30 cents, another A4, up and down by more than the bend, a third that no key has
        double[] hz = {440, 440 * Cents.ratio(30), 442, 442 * Cents.ratio(470), 331.3, 331.3 * 5 / 4};
        play(new MidiForm(5, range, Loudness.EXPRESSION), hz, new double[] {0.3, 0.3, 0.3, 0.3, 0.3, 0.3});
        for (int i = 0; i < hz.length; i++) {
            double heard = heardHz(hz[i], i * NOTE_S + 0.7);
            assertEquals(0, Cents.between(hz[i], heard), SAMPLES_CENTS, "tone " + i + ": " + heard + " Hz");
        }
    }

    @Test
    void levelsStandToOneAnotherAsTheyShould() throws Exception {
        double[] gain = {0.5, 0.25, 0.1, 0.05};
        play(MidiForm.USUAL, new double[] {440, 440, 440, 440}, gain);
        double first = heardDb(440, 0.7);
        for (int i = 1; i < gain.length; i++) {
            double meant = 20 * Math.log10(gain[i] / gain[0]);
            assertEquals(meant, heardDb(440, i * NOTE_S + 0.7) - first, LEVEL_DB, "gain " + gain[i]);
        }
    }
}
