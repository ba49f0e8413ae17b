package handspan.outside.midi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.MidiEar;
import handspan.music.send.MidiForm;
import handspan.music.send.MidiForm.Loudness;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Byte layouts: MIDI 1.0 Detailed Specification, tables 1 (statuses) and 3 (controllers). */
class MidiVoiceTest {
    /** A bend is right to half a step of it; arithmetic adds nothing that shows. */
    private static final double ARITHMETIC_CENTS = 1e-6;

    private long now = Nanos.PER_SECOND;
    private MidiEar ear = new MidiEar(1);
    private MidiVoice voice = voice(MidiForm.USUAL);

    private MidiVoice voice(MidiForm form) {
        ear = new MidiEar(form.channel());
        return new MidiVoice(form, ear);
    }

    private static double boundCents(int rangeSemitones) {
        return 100.0 * rangeSemitones / 8192 / 2 + ARITHMETIC_CENTS;
    }

    private void play(double hz, double gain01) {
        now += 2 * Sounds.FRAME;
        voice.onFrame(Sounds.of(hz, gain01, now), now);
    }

    private void begin() {
        voice.begin(now);
        now += Nanos.PER_SECOND;
        ear.takeLog();
    }

    @Test
    void theBeginningTellsTheBendRangeAndLeavesNoParameterOpen() {
        voice = voice(new MidiForm(16, 48, Loudness.EXPRESSION));
        voice.begin(now);
        // 101 and 100 choose parameter 0 0, 6 and 38 are semitones and cents, 127 127 is none
        assertEquals(
                List.of("BF 7B 00", "BF 65 00", "BF 64 00", "BF 06 30", "BF 26 00", "BF 65 7F", "BF 64 7F", "BF 0B 00"),
                ear.takeLog());
        assertEquals(48, ear.rangeSemitones());
        assertFalse(ear.hasParameter());
    }

    @Test
    void aNoteHasLevelAndBendBeforeItBeginsAndEndsWithTheSound() {
        begin();
        // 440 Hz is key 69 = 45h, bend 2000h is 00 40; gain (90/127)^2 is expression 90 = 5Ah; velocity 64 = 40h
        play(440, Math.pow(90 / 127.0, 2));
        assertEquals(List.of("B0 0B 5A", "E0 00 40", "90 45 40"), ear.takeLog());
        play(440, Math.pow(90 / 127.0, 2));
        assertEquals(List.of(), ear.takeLog(), "nothing is said twice");
        // half a semitone up of two: 5000h is 00 50; a quarter semitone further the lower bits come first
        play(Sounds.hz(69.5), Math.pow(90 / 127.0, 2));
        assertEquals(List.of("E0 00 50"), ear.takeLog());
        play(440, 0);
        assertEquals(List.of("80 45 40", "B0 0B 00"), ear.takeLog());
        play(440, 0);
        assertEquals(List.of(), ear.takeLog());
        voice.end(now);
        assertEquals(List.of("B0 7B 00"), ear.takeLog());
    }

    @Test
    void theEndComesInTheMiddleOfANoteToo() {
        begin();
        play(440, 0.5);
        ear.takeLog();
        voice.end(now);
        assertEquals(List.of("80 45 40", "B0 0B 00", "B0 7B 00"), ear.takeLog());
    }

    @Test
    void pressureHasOneDataByte() {
        voice = voice(new MidiForm(2, 2, Loudness.PRESSURE));
        voice.begin(now);
        assertEquals("D1 00 00", ear.takeLog().get(7));
        now += Nanos.PER_SECOND;
        play(440, 1);
        assertEquals(List.of("D1 7F 00", "E1 00 40", "91 45 40"), ear.takeLog());
    }

    @Test
    void fineExpressionIsSaidInTwoHalvesTheUpperFirst() {
        voice = voice(new MidiForm(1, 2, Loudness.FINE_EXPRESSION));
        begin();
        play(440, Math.pow(10_000 / 16_383.0, 2));
        // 10000 = 2710h = 78 * 128 + 16
        assertEquals(List.of("B0 0B 4E", "B0 2B 10", "E0 00 40", "90 45 40"), ear.takeLog());
        play(440, Math.pow(10_001 / 16_383.0, 2));
        assertEquals(List.of("B0 2B 11"), ear.takeLog(), "the upper half stays");
    }

    /**
     * MIDI Tuning Standard (MIDI 1.0 Detailed Specification): the words' keys and fractions with their exact
     * frequencies; 440 * 2^((key + fraction / 16384 - 69) / 12).
     */
    @ParameterizedTest
    @CsvSource({
        "00, 00, 00, 8.175799",
        "00, 00, 01, 8.175828",
        "01, 00, 00, 8.661957",
        "0C, 00, 00, 16.351598",
        "3C, 00, 00, 261.625565",
        "3D, 00, 00, 277.182631",
        "44, 7F, 7F, 439.998449",
        "45, 00, 00, 440.000000",
        "45, 00, 01, 440.001551"
    })
    void keyAndBendAreThePitchOfATuningWord(String key, String high, String low, double hz) {
        begin();
        play(hz, 0.5);
        int fraction = Integer.parseInt(high, 16) << 7 | Integer.parseInt(low, 16);
        double word = Integer.parseInt(key, 16) + fraction / 16_384.0;
        // the frequencies are printed to a millionth of a hertz
        double printedCents = Cents.between(hz, hz + 0.5e-6);
        assertEquals(100 * word, 100 * ear.pitch(), boundCents(2) + printedCents);
        assertEquals(0, Cents.between(hz, ear.pitchHz()), boundCents(2) + printedCents);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 12, 24, 48, 96})
    void aSlideOverAllKeysIsFollowedToHalfABendStep(int range) {
        voice = voice(new MidiForm(1, range, Loudness.EXPRESSION));
        begin();
        double worst = 0;
        for (double key = 0; key <= 127; key += 0.0137) {
            play(Sounds.hz(key), 0.5);
            worst = Math.max(worst, Math.abs(Cents.between(Sounds.hz(key), ear.pitchHz())));
            assertEquals(1, ear.notes());
        }
        assertTrue(worst <= boundCents(range), worst + " cents");
        assertTrue(ear.mostNotes() <= 2, "but for the moment in which one takes over from the other");
        // a note begins half-way to its neighbour at worst and lasts for the range at least
        assertTrue(ear.notesBegun() <= 2 + 127 / (range - 0.5), ear.notesBegun() + " notes");
    }

    @Test
    void theNextNoteBeginsBentRightAndBeforeTheOldOneEnds() {
        begin();
        play(440, 0.5);
        play(Sounds.hz(70.9), 0.5);
        ear.takeLog();
        // 71.2 is 2.2 from 69: key 71 = 47h with 0.2 up, 8192 + round(819.2) = 9011 = 2333h, low 33h, high 46h
        play(Sounds.hz(71.2), 0.5);
        assertEquals(List.of("E0 33 46", "90 47 40", "80 45 40"), ear.takeLog());
    }

    @Test
    void aHandThatWobblesAtTheEdgeOfTheRangeBeginsOneNoteOnly() {
        begin();
        play(440, 0.5);
        for (int i = 0; i < 1000; i++) {
            play(Sounds.hz(71 + (i % 2 == 0 ? 0.3 : -0.3)), 0.5);
        }
        assertEquals(2, ear.notesBegun());
    }

    @Test
    void anotherReferencePitchIsInTheBend() {
        begin();
        play(442, 0.5);
        assertEquals(69, ear.key());
        assertEquals(0, Cents.between(442, ear.pitchHz()), boundCents(2));
    }

    @Test
    void whatNoKeyCanPlayIsPlayedAsNearAsItCan() {
        begin();
        play(20_000, 0.5);
        assertEquals(127, ear.key());
        assertEquals(2 * 8191 / 8192.0, ear.bendSemitones(), 1e-12);
        play(3, 0.5);
        assertEquals(0, ear.key());
        assertEquals(-2, ear.bendSemitones(), 1e-12);
        play(0, 0.5);
        assertEquals(0, ear.notes(), "no pitch yet: no note");
    }

    /** 40 lg(value / 127): General MIDI Level 2 (RP-024), expression; from memory. */
    @Test
    void theReceiversLevelIsTheFramesToHalfAStep() {
        double worstAbove26 = 0;
        double worst = 0;
        for (double db = -60; db <= 0; db += 0.01) {
            double gain = Math.pow(10, db / 20);
            double off = Math.abs(40 * Math.log10(MidiLevel.value(gain, MidiLevel.COARSE) / 127.0) - db);
            worst = Math.max(worst, off);
            worstAbove26 = Math.max(worstAbove26, db >= -26 ? off : 0);
            assertEquals(db, 40 * Math.log10(MidiLevel.value(gain, MidiLevel.FINE) / 16_383.0), 0.02);
        }
        assertTrue(worst <= 2.1, worst + " dB");
        assertTrue(worstAbove26 <= 0.32, worstAbove26 + " dB");
    }

    @ParameterizedTest
    @EnumSource(Loudness.class)
    void aCableIsHalfFreeHoweverFastFramesCome(Loudness loudness) {
        voice = voice(new MidiForm(1, 2, loudness));
        voice.begin(now);
        long start = now;
        int frames = 500 * 10;
        for (int i = 0; i < frames; i++) {
            now = start + 2 * Nanos.PER_MS * i;
            if (voice.nextNanos() < now) {
                voice.onTick(voice.nextNanos());
            }
            // pitch and level change with every frame, notes end and begin all the time
            double gain = i % 7 == 0 ? 0 : 0.1 + 0.8 * (i % 31) / 31;
            voice.onFrame(Sounds.of(Sounds.hz(60 + i % 23 * 1.01), gain, now), now);
        }
        // 31,250 bits a second, ten a byte: 3125 bytes a second; 10 s and what is under way
        double share = ear.bytes() / (3125.0 * 10);
        assertTrue(share <= 0.501, share + " of a cable");
        assertTrue(share >= 0.45, share + " of a cable: less would be left out for nothing");
    }

    @Test
    void twoHundredFramesASecondAreAllSaid() {
        begin();
        play(440, 0.1);
        now += Sounds.FRAME;
        for (int i = 0; i < 200; i++) {
            now += Sounds.FRAME;
            voice.onFrame(Sounds.of(Sounds.hz(69 + 0.01 * (i % 50)), 0.2 + 0.003 * i, now), now);
            assertEquals(0, Cents.between(Sounds.hz(69 + 0.01 * (i % 50)), ear.pitchHz()), boundCents(2), "frame " + i);
        }
    }

    @Test
    void theNewestFrameWaitsForTheCableAndComesThen() {
        begin();
        play(440, 0.5);
        voice.onFrame(Sounds.of(441, 0.5, now), now);
        voice.onFrame(Sounds.of(442, 0.5, now), now);
        assertEquals(440, ear.pitchHz(), 1e-9);
        // nine bytes of 320 microseconds, and as long a pause
        assertEquals(now + 2 * 9 * 320_000, voice.nextNanos());
        voice.onTick(voice.nextNanos());
        assertEquals(0, Cents.between(442, ear.pitchHz()), boundCents(2));
        assertEquals(Long.MAX_VALUE, voice.nextNanos());
    }

    @Test
    void theEndOfANoteWaitsForNothing() {
        begin();
        play(440, 0.5);
        voice.onFrame(Sounds.of(441, 0.5, now), now);
        voice.onFrame(Sounds.of(441, 0, now), now);
        assertEquals(0, ear.notes());
        assertEquals(0, ear.expression());
        assertEquals(Long.MAX_VALUE, voice.nextNanos(), "and what waited is over");
    }
}
