package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.Noise;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits of the verdicts: the project's own, each with the nearest figure on its other side. */
class JudgementTest {
    private static ChannelReport judged(
            String spec, double deviation, double median, double ratePerS, double dropouts01) {
        ChannelSpec channel = ChannelSpec.parse(spec);
        Sensor sensor = Sensor.of(channel, Air.USUAL, 5);
        Noise noise = new Noise(deviation, deviation, 1, median, median, 150, 2);
        double noiseMm = sensor.isLength() ? sensor.physical(deviation) : Double.NaN;
        Findings findings = new Findings(
                300,
                150,
                noise,
                noiseMm,
                new Pace(ratePerS, 0, 0),
                new DropoutRuns(dropouts01, dropouts01 == 0 ? 0 : 4, dropouts01 == 0 ? 0 : 1, 1, 2000 / ratePerS),
                new Repeats(1, 0, 0.25),
                new Sentinels(List.of(), List.of(), 0),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return Judgement.of(channel, sensor, findings);
    }

    @ParameterizedTest(name = "{0}: noise {1}, {2}/s, dropouts {3}: {4}")
    @CsvSource({
        "1:distance:mm,   3,     50,   0,      GOOD",
        "1:distance:mm,   3.001, 50,   0,      USABLE",
        "1:distance:mm,   8,     50,   0,      USABLE",
        "1:distance:mm,   8.001, 50,   0,      POOR",
        "1:distance:cm,   0.3,   50,   0,      GOOD",
        "1:distance:cm,   0.301, 50,   0,      USABLE",
        "1:distance:cm,   0.801, 50,   0,      POOR",
        "1:photoresistor, 4,     50,   0,      GOOD",
        "1:photoresistor, 4.001, 50,   0,      USABLE",
        "1:photoresistor, 12,    50,   0,      USABLE",
        "1:photoresistor, 12.01, 50,   0,      POOR",
        "1:distance:mm,   1,     50,   0.05,   GOOD",
        "1:distance:mm,   1,     50,   0.0501, USABLE",
        "1:distance:mm,   1,     50,   0.15,   USABLE",
        "1:distance:mm,   1,     50,   0.1501, POOR",
        "1:distance:mm,   1,     30,   0,      GOOD",
        "1:distance:mm,   1,     29.9, 0,      USABLE",
        "1:distance:mm,   9,     20,   0.06,   POOR",
        "1:distance:mm,   4,     20,   0.16,   POOR"
    })
    void theWorstFigureDecides(String spec, double noise, double ratePerS, double dropouts01, Verdict verdict) {
        assertEquals(verdict, judged(spec, noise, 300, ratePerS, dropouts01).verdict());
    }

    @ParameterizedTest(name = "{0} at {1}: {2}")
    @CsvSource({
        "1:photoresistor:counts10, 1023, POOR",
        "1:photoresistor:counts10, 1022, GOOD",
        "1:photoresistor:counts10, 0,    POOR",
        "1:photoresistor:counts10, 1,    GOOD",
        "1:photoresistor:counts12, 4095, POOR",
        "1:photoresistor:counts12, 1023, GOOD",
        "1:distance:mm,            1023, GOOD"
    })
    void lightAtAnEndOfItsScaleIsPoor(String spec, double median, Verdict verdict) {
        ChannelReport report = judged(spec, 0, median, 50, 0);
        assertEquals(verdict, report.verdict());
        assertEquals(verdict == Verdict.POOR, report.remedy().contains("fixed resistor"));
    }

    @Test
    void theReasonGivesTheFiguresAndTheRemedyWhatToDo() {
        ChannelReport report = judged("1:distance:cm", 0.456, 30, 18.2, 0.062);
        assertEquals(
                "noise 4.56 mm; 6.2 % of readings missing, one at a time; 18.2 readings a second: vibrato will be lost",
                report.reason());
        assertEquals("play nearer to the sensor, palm flat; roll the sleeve up, palm flat", report.remedy());
        assertEquals(
                "noise 5.00 counts10", judged("1:photoresistor", 5, 300, 50, 0).reason());
        assertEquals("", judged("1:distance:mm", 1, 300, 50, 0).remedy());
        assertEquals("usable", report.verdict().word());
    }

    @Test
    void theReportCarriesTheFiguresInTheChannelsUnitAndInMillimetres() {
        ChannelReport report = judged("left:distance:in", 0.1, 12, 50, 0.01);
        assertEquals("left", report.name());
        assertEquals(0.1, report.noise(), 1e-12);
        assertEquals(2.54, report.noiseMm(), 1e-12);
        assertEquals(12, report.centre(), 1e-12);
        assertEquals(2, report.outliers());
        assertEquals(0.25, report.repeats01(), 1e-12);
        assertTrue(Double.isNaN(judged("1:photoresistor", 1, 300, 50, 0).noiseMm()));
    }
}
