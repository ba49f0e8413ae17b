package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.SensorKind;
import handspan.number.fit.MonotoneCurve;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Ruler holds: what is fitted, and what is named instead of being averaged in. Every refusal has its accepted twin. */
class RulerTest {
    private static final double[] FIVE = {100, 200, 300, 400, 500};
    private static final double[] NINE = {100, 150, 200, 250, 300, 350, 400, 450, 500};

    private static List<Hold> holds(double[] ruler, DoubleUnaryOperator sensor) {
        List<Hold> holds = new ArrayList<>();
        for (double mm : ruler) {
            holds.add(Hold.of(StepKind.RULER, HandRole.PITCH, sensor.applyAsDouble(mm), 0.2, 2, 100)
                    .at(mm));
        }
        return holds;
    }

    private static List<Hold> with(List<Hold> holds, double mm, double physical) {
        return holds.stream()
                .map(hold -> hold.mm().orElseThrow() == mm
                        ? Hold.of(StepKind.RULER, HandRole.PITCH, physical, 0.2, 2, 100)
                                .at(mm)
                        : hold)
                .toList();
    }

    private static Outcome fit(String channel, List<Hold> holds) {
        Instrument instrument = new Instrument("reed", 1, 115_200, null, ChannelSpec.parse(channel), null, 5);
        return Fit.fit("hall", "2026-01-01T00:00:00Z", instrument, Air.USUAL, 50, holds);
    }

    private static HandSetup pitch(String channel, List<Hold> holds) {
        Outcome outcome = fit(channel, holds);
        assertTrue(outcome.room().isPresent(), "" + outcome.reasons());
        return outcome.room().get().pitch();
    }

    private static void assertRefused(Outcome outcome, String part) {
        assertTrue(outcome.room().isEmpty(), "accepted");
        assertTrue(outcome.reasons().stream().anyMatch(reason -> reason.contains(part)), "" + outcome.reasons());
    }

    @Test
    void aStraightSensorIsFittedByAStraightLine() {
        HandSetup pitch = pitch("1:distance:mm", holds(FIVE, mm -> 1.02 * mm + 8));
        FitQuality fit = Objects.requireNonNull(pitch.fit());
        assertEquals("straight line", fit.method());
        assertEquals(250, pitch.response().mm(1.02 * 250 + 8), 1e-6);
        assertEquals(0, fit.rmsMm(), 1e-6);
        assertEquals(100, pitch.zone().nearMm());
        assertEquals(500, pitch.zone().farMm());
    }

    @Test
    void aBentSensorIsFittedByAParabola() {
        DoubleUnaryOperator sensor = mm -> mm + 5 * Math.sin(Math.PI * (mm - 100) / 400);
        HandSetup pitch = pitch("1:distance:mm", holds(FIVE, sensor));
        assertEquals("parabola", Objects.requireNonNull(pitch.fit()).method());
        for (double mm = 100; mm <= 500; mm += 25) {
            assertEquals(mm, pitch.response().mm(sensor.applyAsDouble(mm)), 0.7, "at " + mm);
        }
    }

    @Test
    void aSensorThatFollowsNoLawIsFittedByACurve() {
        DoubleUnaryOperator sensor = mm -> mm + 9 * Math.tanh((mm - 260) / 40) - 9 * Math.tanh((mm - 420) / 30);
        HandSetup pitch = pitch("1:distance:mm", holds(NINE, sensor));
        FitQuality fit = Objects.requireNonNull(pitch.fit());
        assertEquals("monotone curve", fit.method());
        assertTrue(fit.leftOutMm() > 0.1);
    }

    /**
     * Five holds, each off by as much as a hold is said to be, and a parabola: three parameters from five, so about
     * sqrt(3/5) of that remains.
     */
    @Test
    void theStatedUncertaintyIsThatOfTheFit() {
        Random random = new Random(5);
        double sum = 0;
        double stated = 0;
        double holdMm = RulerFit.holdMm(holds(FIVE, mm -> mm).get(0), SensorKind.DISTANCE, 1);
        int count = 0;
        for (int run = 0; run < 400; run++) {
            HandSetup pitch = pitch(
                    "1:distance:mm",
                    holds(FIVE, mm -> mm + 5 * Math.sin(Math.PI * (mm - 100) / 400) + holdMm * random.nextGaussian()));
            FitQuality fit = Objects.requireNonNull(pitch.fit());
            for (double mm = 100; mm <= 500; mm += 100) {
                double error = pitch.response().mm(mm + 5 * Math.sin(Math.PI * (mm - 100) / 400)) - mm;
                sum += error * error;
                stated += fit.uncertaintyMm(mm) * fit.uncertaintyMm(mm);
                count++;
            }
        }
        double ratio = Math.sqrt(sum / stated);
        assertTrue(ratio > 0.75 && ratio < 1.1, "error over stated uncertainty " + ratio + " of " + count);
    }

    /**
     * A straight sensor's inverse, mm = (x - 8) / 1.02: its parameters lie within what they are said to be good for.
     */
    @Test
    void whatWasFittedIsToldWithItsUncertainty() {
        Random random = new Random(11);
        HandSetup pitch = pitch("1:distance:mm", holds(NINE, mm -> 1.02 * mm + 8 + 0.8 * random.nextGaussian()));
        List<FitQuality.Coefficient> fitted =
                Objects.requireNonNull(pitch.fit()).coefficients();
        assertEquals("c0 mm", fitted.get(0).name());
        double[] truth = {-8 / 1.02, 1 / 1.02};
        for (int i = 0; i < truth.length; i++) {
            double off = Math.abs(fitted.get(i).value() - truth[i]);
            assertTrue(off < 2.5 * fitted.get(i).standardUncertainty(), fitted.toString());
            assertTrue(fitted.get(i).standardUncertainty() > 0);
        }
    }

    @Test
    void aHoldFarFromTheLineIsNamed() {
        List<Hold> holds = holds(NINE, mm -> mm);
        assertRefused(fit("1:distance:mm", with(holds, 250, 220)), "the hold at 250 mm reads 220");
        assertTrue(fit("1:distance:mm", with(holds, 250, 238)).room().isPresent(), "12 mm contradict nothing");
    }

    @Test
    void aHoldThatRunsTheWrongWayIsNamed() {
        List<Hold> holds = holds(NINE, mm -> mm);
        assertRefused(fit("1:distance:mm", with(holds, 350, 260)), "the hold at 350 mm reads 260");
    }

    /** Readings that rise to a peak at 350 mm and fall beyond: one number, two distances. */
    @Test
    void aFoldIsNamedWithTheDistanceWhereItBegins() {
        List<Hold> holds = holds(NINE, mm -> mm <= 350 ? 0.7 * mm : 245 - 0.4 * (mm - 350));
        assertRefused(fit("1:distance:mm", holds), "turn back beyond 350 mm");
        List<Hold> upTo = holds.subList(0, 6);
        assertTrue(fit("1:distance:mm", upTo).room().isPresent());
    }

    /**
     * Two real laser rangers against a ruler from 0 to 450 mm in steps of 50 mm (public calibration table of the
     * project opatiny/micromouse, CERN-OHL-P v2, ten pairs of readings): the left one folds back after 350 mm, the
     * front one has single holds that can't be.
     */
    @Test
    void realHoldsThatContradictEachOtherAreNamed() {
        double[] ruler = {0, 50, 100, 150, 200, 250, 300, 350, 400, 450};
        double[] left = {0, 55, 109, 147, 182, 203, 231, 232, 217, 184};
        double[] front = {21, 65, 122, 165, 168, 269, 310, 260, 407, 444};
        assertRefused(
                fit("1:distance:mm", table(ruler, left)),
                "turn back beyond 350 mm (232 at 350 mm, then 217 at 400 mm)");
        assertRefused(fit("1:distance:mm", table(ruler, front)), "the hold at 350 mm reads 260");
        assertRefused(fit("1:distance:mm", table(ruler, front)), "the hold at 200 mm reads 168");
        // the twin: the same table without the two
        assertTrue(fit("1:distance:mm", table(new double[] {50, 100, 150, 250, 300, 400, 450}, new double[] {
                    65, 122, 165, 269, 310, 407, 444
                }))
                .room()
                .isPresent());
    }

    private static List<Hold> table(double[] ruler, double[] readings) {
        List<Hold> holds = new ArrayList<>();
        for (int i = 0; i < ruler.length; i++) {
            holds.add(Hold.of(StepKind.RULER, HandRole.PITCH, readings[i], 0, 0, 1)
                    .at(ruler[i]));
        }
        return holds;
    }

    @Test
    void twoRulerHoldsAreTooFew() {
        assertRefused(fit("1:distance:mm", holds(new double[] {100, 500}, mm -> mm)), "only 2 ruler holds");
        assertTrue(fit("1:distance:mm", holds(new double[] {100, 300, 500}, mm -> mm))
                .room()
                .isPresent());
    }

    @Test
    void lightAsPitchIsFittedByACurve() {
        HandSetup pitch =
                pitch("1:photoresistor:counts10", holds(NINE, mm -> Math.log(mm * mm / (mm * mm + 3600)) * 0.7));
        assertEquals("monotone curve", Objects.requireNonNull(pitch.fit()).method());
        assertEquals(300, pitch.response().mm(Math.log(90_000.0 / 93_600) * 0.7), 1e-6);
        Outcome five = fit("1:photoresistor:counts10", holds(FIVE, mm -> Math.log(mm * mm / (mm * mm + 3600)) * 0.7));
        assertRefused(five, "only 5 ruler holds (at least 6)");
    }

    @Test
    void theWorstHoldIsKnown() {
        HandSetup pitch = pitch("1:distance:mm", with(holds(NINE, mm -> mm), 300, 309));
        MonotoneCurve.Point worst = Objects.requireNonNull(pitch.fit()).worst();
        assertEquals(300, worst.x());
        assertTrue(Math.abs(worst.y()) > 5);
    }
}
