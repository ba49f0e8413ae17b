package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SurveyTest {
    private static final double EXACT = 1e-9;

    /** Scatter of a laser ranger measured over an hour, mm; 55.6 readings a second. */
    private static final double RANGER_MM = 2.15;

    private static final double RANGER_PER_S = 55.6;

    /** A sample deviation of 3000 readings scatters by 1.3 %; the rejection takes up to 3 % more. */
    private static final double NOISE_WITHIN = 0.05;

    @Test
    void aFixedObjectIsHeldOverItsWholeLength() {
        Scene scene = new Scene("1:distance:mm", RANGER_PER_S, 1).hold(250, RANGER_MM, 60);
        ChannelReport report = scene.report();
        assertEquals(3336, report.count());
        assertEquals(3336, report.heldCount());
        assertEquals(RANGER_MM, report.noise(), NOISE_WITHIN * RANGER_MM);
        assertEquals(report.noise(), report.noiseMm(), EXACT);
        assertEquals(1, report.step(), EXACT);
        assertEquals(250, report.centre(), 1);
        assertEquals(0, report.dropouts01(), EXACT);
        assertEquals(RANGER_PER_S, report.ratePerS(), 0.01);
        assertEquals(Verdict.GOOD, report.verdict());
        assertEquals(60, scene.survey.seconds(), 0.1);
        assertEquals(3336, scene.survey.count());
        assertEquals(0, scene.survey.rateJitterMs(), 0.01);
    }

    @ParameterizedTest(name = "{0}, noise {1}, step {2}")
    @CsvSource({
        "1:distance:mm,            1.0,  1,   20",
        "1:distance:mm,            2.15, 3,   50",
        "1:distance:cm,            0.4,  0.1, 18",
        "1:echo:us,                14,   1,   18",
        "1:photoresistor:counts10, 3.2,  1,   100"
    })
    void noiseStepAndRateAreThoseOfTheScene(String spec, double noise, double step, double ratePerS) {
        double centre = spec.contains("cm") ? 30 : spec.contains("us") ? 1800 : 300;
        ChannelReport report =
                new Scene(spec, ratePerS, step).hold(centre, noise, 60).report();
        double expected = Math.sqrt(noise * noise + step * step / 12);
        assertEquals(expected, report.noise(), NOISE_WITHIN * expected);
        assertEquals(step, report.step(), EXACT);
        assertEquals(ratePerS, report.ratePerS(), 0.01 * ratePerS);
    }

    /** Half of 344.0 m/s, the speed of sound at 20 C and 50 % (table, Engineering ToolBox): 0.172 mm a microsecond. */
    @Test
    void noiseOfAnEchoIsAlsoGivenInMillimetres() {
        ChannelReport report = new Scene("1:echo:us", 20, 1).hold(1800, 14, 30).report();
        assertEquals(0.172 * report.noise(), report.noiseMm(), 1e-3 * report.noiseMm());
    }

    /** 20 s at 50 a second: the share of a hundred scatters by 1 %. */
    @ParameterizedTest
    @CsvSource({"0.02, GOOD", "0.10, USABLE", "0.30, POOR"})
    void missingReadingsAreCountedWithinTheHold(double share, Verdict verdict) {
        ChannelReport report =
                new Scene("1:distance:mm", 50, 1).losing(share).hold(300, 1, 20).report();
        assertEquals(share, report.dropouts01(), 0.035);
        assertEquals(verdict, report.verdict());
        assertEquals(1, report.noise(), 0.1);
    }

    @Test
    void wildReadingsAreOutliersAndNoNoise() {
        Scene scene = new Scene("1:distance:mm", 50, 1);
        for (int i = 0; i < 20; i++) {
            scene.hold(300, 1.5, 1).print(460);
        }
        assertEquals(20, scene.report().outliers(), 5);
        assertEquals(1.5, scene.report().noise(), 0.15);
    }

    @Test
    void aBoardFasterThanItsSensorRepeatsItself() {
        Scene scene = new Scene("1:distance:mm", 90, 0.01);
        Random random = new Random(83);
        for (int i = 0; i < 600; i++) {
            double value = 300 + random.nextGaussian();
            scene.print(value).print(value).print(value);
        }
        assertEquals(2 / 3.0, scene.report().repeats01(), 0.01);
    }

    @Test
    void lightAtTheEndOfItsScaleAsksForAnotherResistor() {
        ChannelReport report =
                new Scene("1:photoresistor:counts10", 50, 1).hold(1023, 0, 10).report();
        assertEquals(Verdict.POOR, report.verdict());
        assertEquals("change the fixed resistor of the divider", report.remedy());
    }

    @Test
    void everyChannelIsJudgedByItsOwnNumbers() {
        List<ChannelSpec> specs = List.of(
                ChannelSpec.parse("2:photoresistor:counts10"),
                ChannelSpec.parse("1:distance:mm"),
                ChannelSpec.parse("7:unscaled"));
        List<Sensor> sensors =
                specs.stream().map(spec -> Sensor.of(spec, Air.USUAL, 5)).toList();
        Survey survey = new Survey(LineShape.numbers(',', 2), specs, sensors);
        Random random = new Random(84);
        for (int i = 0; i < 1000; i++) {
            double[] values = {Math.rint(300 + random.nextGaussian()), Math.rint(512 + 6 * random.nextGaussian())};
            // the second number is missing in every fifth line
            long timeNanos = i * 20_000_000L + (i % 2 == 0 ? 0 : 3_000_000L);
            survey.onReading(new Reading(timeNanos, values, i % 5 == 0 ? 0b01 : 0b11));
        }
        List<ChannelReport> reports = survey.reports();
        assertEquals(6, reports.get(0).noise(), 0.6);
        assertEquals(0.2, reports.get(0).dropouts01(), 0.01);
        assertEquals(300, reports.get(1).centre(), 1);
        assertEquals(0, reports.get(1).dropouts01(), EXACT);
        assertEquals(0, reports.get(2).heldCount(), "a channel that the line does not have");
        assertEquals(50, survey.ratePerS(), 0.01);
        // 23 and 17 ms in turn
        assertEquals(3, survey.rateJitterMs(), 0.01);
    }
}
