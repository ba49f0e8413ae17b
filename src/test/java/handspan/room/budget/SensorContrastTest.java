package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.survey.ChannelReport;
import handspan.instrument.survey.DropoutRuns;
import handspan.instrument.survey.Findings;
import handspan.instrument.survey.Pace;
import handspan.instrument.survey.Repeats;
import handspan.instrument.survey.Sentinels;
import handspan.instrument.survey.Verdict;
import handspan.number.fit.Noise;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two builds of one instrument. 150 held readings each: a standard deviation is known to 1/sqrt(298) = 5.8 %. */
class SensorContrastTest {
    private static ChannelReport report(String spec, double noise, int held, double ratePerS, double missing01) {
        Findings findings = new Findings(
                300,
                held,
                new Noise(noise, noise, 1, 250, 250, held, 0),
                noise,
                new Pace(ratePerS, 0, 0),
                new DropoutRuns(missing01, 0, 0, 1, 2000 / ratePerS),
                new Repeats(1, 0, 0.25),
                new Sentinels(List.of(), List.of(), 0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new ChannelReport(ChannelSpec.parse(spec), findings, Verdict.GOOD, "", "");
    }

    private static SensorContrast noises(double first, double second) {
        return new SensorContrast(
                report("1:distance:mm", first, 150, 50, 0), report("1:distance:mm", second, 150, 50, 0));
    }

    /** The ratio is known to 8.2 %, twice that are 16.4 % of a logarithm: a factor of 1.178. */
    @ParameterizedTest
    @CsvSource({"1, 1.17, SAME", "1.17, 1, SAME", "1, 1.19, FIRST", "1.19, 1, SECOND", "2, 4, FIRST"})
    void noiseDiffersWhereItsRatioIsBeyondItsUncertainty(double first, double second, SensorContrast.Verdict verdict) {
        assertEquals(verdict, noises(first, second).verdict());
    }

    @Test
    void wordsNameTheQuieterWithBothFigures() {
        String words = noises(2.1, 1.2).words("A", "B");
        assertTrue(words.startsWith("B is quieter: 1.20 mm at 250 mm against 2.10 mm at 250 mm"), words);
        assertTrue(words.contains("as quick, 50.0 readings a second"), words);
        assertTrue(words.endsWith("as complete, 0.0 % missing"), words);
    }

    @Test
    void theQuickerAndTheMoreCompleteAreNamed() {
        String words = new SensorContrast(
                        report("1:distance:mm", 2, 150, 30, 0.08), report("1:distance:mm", 2, 150, 50, 0.01))
                .words("A", "B");
        assertTrue(words.contains("B is quicker: 50.0 readings a second against 30.0"), words);
        assertTrue(words.contains("B is more complete: 1.0 % missing against 8.0 %"), words);
    }

    @Test
    void withoutAStillStretchItCannotBeTold() {
        ChannelReport held = report("1:distance:mm", 2, 150, 50, 0);
        ChannelReport moving = report("1:distance:mm", Double.NaN, 0, 50, Double.NaN);
        String words = new SensorContrast(held, moving).words("A", "B");
        assertTrue(words.startsWith("noise can't be told: no hand was held still in B"), words);
        assertTrue(words.contains("missing readings can't be told"), words);
        assertTrue(new SensorContrast(moving, moving).words("A", "B").contains("in A and B"));
    }

    @Test
    void unitsThatDifferAreNotCompared() {
        String words = new SensorContrast(
                        report("1:distance:mm", 2, 150, 50, 0), report("1:distance:cm", 2, 150, 50, 0))
                .words("A", "B");
        assertTrue(words.startsWith("noise can't be compared: mm against cm"), words);
    }
}
