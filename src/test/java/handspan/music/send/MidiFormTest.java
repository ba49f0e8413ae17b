package handspan.music.send;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import handspan.music.send.MidiForm.Loudness;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MidiFormTest {
    private static String refusal(int channel, int semitones) {
        return String.valueOf(assertThrows(
                        IllegalArgumentException.class, () -> new MidiForm(channel, semitones, Loudness.EXPRESSION))
                .getMessage());
    }

    /** MIDI 1.0 Detailed Specification: sixteen channels; registered parameter 0 is 2 semitones until it is set. */
    @Test
    void theUsualFormIsWhatReceiversStartWith() {
        assertEquals(new MidiForm(1, 2, Loudness.EXPRESSION), MidiForm.USUAL);
        assertEquals(16, new MidiForm(16, 2, Loudness.PRESSURE).channel());
    }

    @Test
    void thereAreSixteenChannels() {
        assertEquals("MIDI channel 0 (1..16)", refusal(0, 2));
        assertEquals("MIDI channel 17 (1..16)", refusal(17, 2));
    }

    /** 96 is the most that RP-053 (MIDI Polyphonic Expression, 2018) allows. */
    @Test
    void aBendGoesOverOneToNinetySixSemitones() {
        assertEquals(96, new MidiForm(1, 96, Loudness.EXPRESSION).bendSemitones());
        assertEquals("bend range 0 semitones (1..96): 2 or 48 are usual", refusal(1, 0));
        assertEquals("bend range 97 semitones (1..96): 2 or 48 are usual", refusal(1, 97));
    }

    @Test
    void whatCarriesTheLevelHasAWord() {
        assertEquals(
                List.of("expression", "fine-expression", "pressure"),
                Stream.of(Loudness.values()).map(Loudness::word).toList());
    }
}
