package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.LineShape.Matching;
import handspan.instrument.line.LineShape.Nature;
import handspan.instrument.line.LineShape.Slot;
import handspan.instrument.line.Reading;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChannelProposerTest {
    private static ChannelGuess guess(LineShape shape, int slot, String numbers) {
        ChannelProposer proposer = new ChannelProposer(shape);
        int size = shape.slots().size();
        for (String number : numbers.split(" ", -1)) {
            double[] values = new double[size];
            if (!number.isEmpty()) {
                values[slot] = Double.parseDouble(number);
            }
            proposer.onReading(new Reading(0, values, number.isEmpty() ? 0 : 1L << slot));
        }
        return proposer.guesses().get(slot);
    }

    /** Label, unit, numbers, the proposal and whether it is sure: of the first number of a labelled line. */
    @ParameterizedTest(name = "{0}: {2} {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "Distance        | cm    | 23 41        | Distance:distance:cm        | true",
                "Range           | mm    | 234 410      | Range:distance:mm           | true",
                "hand            | in    | 7.5 8        | hand:distance:in            | true",
                "hand            | inch  | 7.5 8        | hand:distance:in            | true",
                "hand            | CM    | 7.5 8        | hand:distance:cm            | true",
                "echo            | ''    | 1450 1500    | echo:echo:us                | true",
                "Echo Time       | us    | 1450 1500    | Echo Time:echo:us           | true",
                "us              | ''    | 1450 1500    | us:echo:us                  | true",
                "t               | \u00b5s    | 1450 1500    | t:echo:us                   | true",
                "Sonar           | cm    | 23.5 24      | Sonar:echo:cm               | true",
                "Echo            | cm    | 23.5 24      | Echo:echo:cm                | true",
                "Echo            | mm    | 235 240      | Echo:distance:mm            | true",
                "IR              | ''    | 82 470       | IR:infrared:counts10        | true",
                "ir1             | ''    | 82 2470      | ir1:infrared:counts12       | true",
                "Infrared        | V     | 0.41 2.30    | Infrared:infrared:V         | true",
                "ir              | cm    | 12 41        | ir:distance:cm              | true",
                "ir              | ''    | 0.41 2.30    | ir:photoresistor:V          | false",
                "light           | ''    | 12 900       | light:photoresistor:counts10| true",
                "LDR             | ''    | 12 2900      | LDR:photoresistor:counts12  | true",
                "light           | ''    | 12 1023      | light:photoresistor:counts10| true",
                "light           | ''    | 12 1024      | light:photoresistor:counts12| true",
                "light           | V     | 2.34 3.10    | light:photoresistor:V       | true",
                "left            | ''    | 234 410      | left:distance:mm            | false",
                "D               | ''    | 23.5 24.0    | D:distance:cm               | false",
                "dist            | ''    | 23 99        | dist:distance:cm            | false",
                "dist            | ''    | 23 100       | dist:distance:mm            | false",
                "my range        | ''    | 234 310      | my range:distance:mm        | false",
                "front           | ''    | 300 8190     | front:distance:mm           | true",
                "front           | ''    | 8191 8191    | front:distance:mm           | true",
                "front           | ''    | 300 65535    | front:distance:mm           | true",
                "front           | ''    | -20 300      | front:unscaled:none         | false",
                "front           | ''    | 300 4000     | front:photoresistor:counts12| false",
                "front           | ''    | 300 9000     | front:unscaled:none         | false",
                "front           | ''    | ''           | front:unscaled:none         | false"
            })
    void labelUnitAndNumbersSayWhatAChannelIs(
            String label, String unit, String numbers, String proposal, boolean sure) {
        LineShape shape = new LineShape(' ', false, Matching.BY_LABEL, 1, List.of(new Slot(label, unit, 0)));
        ChannelGuess guess = guess(shape, 0, numbers);
        assertEquals(proposal.strip(), guess.spec().text(), guess.evidence());
        assertEquals(sure, guess.sure(), guess.evidence());
    }

    /** Of the second number of a line without labels. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "12 900,      2:photoresistor:counts10, false",
        "12 3000,     2:photoresistor:counts12, false",
        "12.5 30,     2:unscaled:none,          false",
        "-3 30,       2:unscaled:none,          false",
        "2.34 3.10,   2:photoresistor:V,        false",
        "0.1 5.5,     2:photoresistor:V,        false",
        "0.1 5.51,    2:unscaled:none,          false",
        "300 8190,    2:distance:mm,            true"
    })
    void aSecondNumberWithoutLabelIsLightWhereItFitsAConverter(String numbers, String proposal, boolean sure) {
        ChannelGuess guess = guess(LineShape.numbers(',', 2), 1, numbers);
        assertEquals(proposal, guess.spec().text());
        assertEquals(sure, guess.sure());
    }

    /** Fifteen numbers that rise each time are no hand; fourteen may be. */
    @Test
    void aNumberThatRisesWithEveryLineIsACounterAndTheNextOneTheHand() {
        String fourteen = "1 2 3 4 5 6 7 8 9 10 11 12 13 14";
        LineShape two = LineShape.numbers(',', 2);
        assertEquals("1:distance:mm", guess(two, 0, fourteen).spec().text());
        assertEquals("1:unscaled:none", guess(two, 0, fourteen + " 15").spec().text());
        assertEquals(
                "1:distance:mm", guess(two, 0, fourteen + " 14 15 16").spec().text());
        ChannelProposer proposer = new ChannelProposer(two);
        for (int i = 0; i < 15; i++) {
            proposer.onReading(new Reading(i, new double[] {81_234 + 20 * i, 300 - i % 4}, 0b11));
        }
        assertEquals("1:unscaled:none", proposer.guesses().get(0).spec().text());
        assertEquals("2:distance:mm", proposer.guesses().get(1).spec().text());
    }

    /** A zero that never changes may be a hand away; one that is called a limit or a state is none. */
    @Test
    void limitsAndStatesThatNeverChangeAreNoHands() {
        List<Slot> slots = List.of(
                new Slot("light", "", 0), new Slot("Min", "", 1), new Slot("MAX", "", 2), new Slot("echo", "", 3));
        ChannelProposer proposer = new ChannelProposer(new LineShape(',', false, Matching.BY_LABEL, 4, slots));
        for (int i = 0; i < 20; i++) {
            proposer.onReading(new Reading(i, new double[] {300 + i % 7, 0, 1023, 0}, 0b1111));
        }
        assertEquals(List.of(Nature.LIVE, Nature.CONSTANT, Nature.CONSTANT, Nature.LIVE), proposer.natures());
        assertEquals(
                "whole numbers of a converter; always 1023; never changes: leave it out",
                proposer.guesses().get(2).evidence());
        proposer.onReading(new Reading(20, new double[] {300, 1, 1023, 0}, 0b1111));
        assertEquals(Nature.LIVE, proposer.natures().get(1));
    }

    @Test
    void theEvidenceNamesTheSpanWithADecimalPoint() {
        assertEquals(
                "the first number of a line, often a distance; from 23.40 to 41.25",
                guess(LineShape.numbers(',', 1), 0, "23.4 41.25").evidence());
        assertEquals(
                "no number seen yet", guess(LineShape.numbers(',', 1), 0, "").evidence());
        assertEquals(
                "from -20 to -10",
                guess(LineShape.numbers(',', 1), 0, "-20 -10").evidence());
        assertTrue(guess(LineShape.numbers(',', 1), 0, "8190").evidence().contains("8190"));
    }

    @Test
    void labelsAreReadAlikeInEveryLanguage() {
        Locale usual = Locale.getDefault();
        try {
            // where capital I has a small letter of its own
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            LineShape shape = new LineShape(' ', false, Matching.BY_LABEL, 1, List.of(new Slot("LIGHT IN", "", 0)));
            assertEquals(
                    "photoresistor", guess(shape, 0, "12 900").spec().kind().word());
            LineShape inches = new LineShape(' ', false, Matching.BY_LABEL, 1, List.of(new Slot("x", "IN", 0)));
            assertEquals("in", guess(inches, 0, "7 8").spec().unit().word());
        } finally {
            Locale.setDefault(usual);
        }
    }

    /** What each number does; a sensor without a hand says the same again and again and is no constant. */
    @Test
    void timesCountersAndConstantsAreToldFromHands() {
        LineShape shape = LineShape.numbers(',', 7);
        ChannelProposer proposer = new ChannelProposer(shape);
        for (int i = 0; i < 60; i++) {
            double[] values = {81_234 + 20 * i, 12 + i, 512, 8190, 0, 23.5 + i % 3, -1};
            proposer.onReading(new Reading(i, values, 0x7f));
        }
        assertEquals(
                List.of(
                        Nature.TIME,
                        Nature.COUNTER,
                        Nature.CONSTANT,
                        Nature.LIVE,
                        Nature.LIVE,
                        Nature.LIVE,
                        Nature.LIVE),
                proposer.natures());
        assertTrue(proposer.guesses().get(2).evidence().endsWith("never changes: leave it out"));
        // it moves after all
        proposer.onReading(new Reading(61, new double[] {0, 0, 500, 0, 0, 0, 0}, 0x7f));
        assertEquals(Nature.LIVE, proposer.natures().get(2));
    }
}
