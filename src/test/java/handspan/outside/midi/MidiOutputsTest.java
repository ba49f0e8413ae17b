package handspan.outside.midi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import javax.sound.midi.MidiUnavailableException;
import org.junit.jupiter.api.Test;

class MidiOutputsTest {
    private static final List<String> NAMES = List.of("Through [hw:0,0]", "Moth A", "Moth A 2", "Reed");

    private static String refusal(String wanted, List<String> names) {
        return String.valueOf(assertThrows(MidiUnavailableException.class, () -> MidiOutputs.find(wanted, names))
                .getMessage());
    }

    @Test
    void aPartOfANameIsEnoughWhereNoOtherHasIt() throws MidiUnavailableException {
        assertEquals(0, MidiOutputs.find("hw:0,0", NAMES));
        assertEquals(3, MidiOutputs.find("reed", NAMES), "capitals or not");
        assertEquals(2, MidiOutputs.find("a 2", NAMES));
    }

    @Test
    void aWholeNameIsMeantBeforeAnotherThatHoldsIt() throws MidiUnavailableException {
        assertEquals(1, MidiOutputs.find("moth a", NAMES));
    }

    @Test
    void whatIsNotThereOrCouldBeTwoIsSaidWithWhatThereIs() {
        assertEquals(
                "no MIDI output has 'owl' in its name: plug it in, or name one of 'Through [hw:0,0]', 'Moth A',"
                        + " 'Moth A 2', 'Reed'",
                refusal("owl", NAMES));
        assertEquals("MIDI output 'moth' could be 'Moth A', 'Moth A 2': name more of it", refusal("moth", NAMES));
        assertEquals("no MIDI output has 'owl' in its name: plug it in; there is none now", refusal("owl", List.of()));
    }
}
