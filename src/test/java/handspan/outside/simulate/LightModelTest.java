package handspan.outside.simulate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightModelTest {
    private static final LightCell WORKED = new LightCell(50_000, 0.7, 10_000, LightCell.Side.TO_GROUND);
    private static final LightCell RISING = new LightCell(14_000, 0.65, 10_000, LightCell.Side.TO_SUPPLY);
    private static final double PUBLISHED_SHARE = 0.005;

    @ParameterizedTest
    @CsvSource({
        "0.1, 1255943.22, 1015",
        "1, 250593.617, 984",
        "50, 16206.566, 633",
        "100, 9976.31157, 511",
        "1000, 1990.53585, 170",
        "10000, 397.164117, 39"
    })
    void countsFollowTheWorkedDividerTable(double lux, double ohm, double counts) {
        // closed form for R10 = 50 kilohm, gamma 0.7, cell to ground, 10 kilohm to 5 V, N = round(1023 V/Vcc)
        assertEquals(ohm, WORKED.ohm(lux), ohm * 1e-8);
        assertEquals(counts, Math.rint(WORKED.counts(lux)));
    }

    @ParameterizedTest
    @CsvSource({"0.1, 1250000, 1016", "1, 250000, 985"})
    void countsAgreeWithAPublishedTable(double lux, double ohm, double counts) {
        // published worked table of a photoresistor part (circuit simulator documentation); it scales by 1024
        assertEquals(ohm, WORKED.ohm(lux), ohm * PUBLISHED_SHARE);
        assertEquals(counts, WORKED.counts(lux), 2);
    }

    @Test
    void theSideOfTheCellDecidesWhetherCountsRiseWithLight() {
        LightCell falling = new LightCell(14_000, 0.65, 10_000, LightCell.Side.TO_GROUND);
        assertTrue(RISING.counts(100) > RISING.counts(10));
        assertTrue(falling.counts(100) < falling.counts(10));
        // the two ends of one divider add up to the supply
        assertEquals(1023, RISING.counts(33) + falling.counts(33), 1e-9);
    }

    @Test
    void aHandAtTheShadeDistanceTakesHalfOfTheLightThatItCanTake() {
        // by hand: 150 (0.02 + 0.98 / 2) = 76.5 lux at 60 mm, 150 lux without a hand
        LightRoom room = LightRoom.steady(150);
        assertEquals(76.5, room.lux(TimeOfFlightModelTest.stillAt(60), Nanos.PER_SECOND), 1e-9);
        assertEquals(150, room.lux(new SimulatedHand(HandSettings.STILL, 1), Nanos.PER_SECOND), 1e-9);
    }

    @Test
    void openCoveredAndMiddleAreFarApart() {
        LightModel model = new LightModel(RISING, LightRoom.steady(150), 0.7, 1);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        double open = model.read(absent, Nanos.PER_SECOND, 0);
        double middle = model.read(TimeOfFlightModelTest.stillAt(80), 3 * Nanos.PER_SECOND, 0);
        double covered = model.read(TimeOfFlightModelTest.stillAt(8), 5 * Nanos.PER_SECOND, 0);
        assertTrue(open > middle + 20 && middle > covered + 100, open + " " + middle + " " + covered);
    }

    @Test
    void anUncoveredCellReaches63PercentIn20Milliseconds() {
        // data sheet of a 5 mm cell (part GL5528): rise time 20 ms; a first-order part is then at 1 - 1/e
        assertEquals(0.632, shareOfStep(8, 1400, 0.0205), 0.02);
    }

    @Test
    void aCoveredCellKeeps37PercentAfter30Milliseconds() {
        // the same data sheet: fall time 30 ms
        assertEquals(0.632, shareOfStep(1400, 8, 0.0305), 0.02);
    }

    @ParameterizedTest
    @CsvSource({"120, 50, 20", "104, 50, 4", "102, 20, 2", "100.4, 50, 0.4"})
    void flickerShowsAtTheAliasOfTheLineRate(double rippleHz, double linesPerS, double aliasHz) {
        // sampling theorem: a line at f shows at |f - k fs| for the k that brings it below fs/2
        LightRoom room = LightRoom.steady(150).withRipple(rippleHz, 0.05);
        LightModel model = new LightModel(RISING, room, 0.7, 2);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        double[] counts = new double[(int) (40 * linesPerS)];
        for (int i = 0; i < counts.length; i++) {
            counts[i] = model.read(absent, Nanos.ofSeconds(1 + i / linesPerS), 0);
        }
        double strongest = 0;
        double strongestHz = 0;
        for (double hz = 0.2; hz < linesPerS / 2; hz += 0.2) {
            double amplitude = Series.amplitude(counts, linesPerS, hz);
            strongestHz = amplitude > strongest ? hz : strongestHz;
            strongest = Math.max(strongest, amplitude);
        }
        assertEquals(aliasHz, strongestHz, 0.01);
        // slope of the divider by hand: dN = N (1 - N/1023) gamma dE/E
        double open = RISING.counts(150);
        assertEquals(open * (1 - open / 1023) * 0.65 * 0.05, strongest, 0.3);
    }

    @Test
    void slowDriftMovesTheOpenLevel() {
        LightModel model = new LightModel(RISING, LightRoom.steady(15).withDrift01(0.1), 0, 2);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        double bright = model.read(absent, Nanos.ofSeconds(LightRoom.DRIFT_SECONDS / 4), 0);
        double dim = model.read(absent, Nanos.ofSeconds(LightRoom.DRIFT_SECONDS * 3 / 4), 0);
        assertEquals(Math.rint(RISING.counts(16.5)), bright, 1);
        assertEquals(Math.rint(RISING.counts(13.5)), dim, 1);
    }

    @ParameterizedTest
    @CsvSource({"100, 0.5, 0.1993", "120, 0.5, 0.1663", "100, 0.25, 0.2993"})
    void aDimmedLampRipplesAsItsDutyAndTheCellsLagSay(double hz, double lit01, double peakToPeak) {
        // by hand, tau = 25 ms: (1 - exp(-D T/tau)) (1 - exp(-(1-D) T/tau)) / (1 - exp(-T/tau)) / D
        LightRoom room = LightRoom.steady(150).withDimmer(new Dimmer(hz, lit01));
        double[] factor = new double[20_000];
        for (int i = 0; i < factor.length; i++) {
            factor[i] = room.flicker(Nanos.ofSeconds(i / (hz * 1000)));
        }
        double most = Arrays.stream(factor).max().orElseThrow();
        double least = Arrays.stream(factor).min().orElseThrow();
        assertEquals(peakToPeak, most - least, 5e-4);
        assertEquals(1, Series.mean(factor), 1e-3);
    }

    @Test
    void aDimmedLampIsASquareWaveThroughAFirstOrderLag() {
        LightRoom room = LightRoom.steady(150).withDimmer(new Dimmer(120, 0.3));
        double followed = 0.3;
        double stepS = 1e-6;
        for (int i = 0; i < 400_000; i++) {
            double share = i * stepS * 120 % 1;
            followed += ((share < 0.3 ? 1 : 0) - followed) * stepS / 0.025;
            if (i > 300_000 && i % 997 == 0) {
                assertEquals(followed / 0.3, room.flicker(Nanos.ofSeconds((i + 1) * stepS)), 1e-3);
            }
        }
    }

    @Test
    void theLightFailsAndASpotlightComes() {
        LightRoom room = LightRoom.steady(150).spotlightAt(Nanos.ofSeconds(45)).blackoutAt(Nanos.ofSeconds(30));
        LightModel model = new LightModel(RISING, room, 0, 2);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        assertEquals(Math.rint(RISING.counts(150)), model.read(absent, Nanos.ofSeconds(29.99), 0));
        // 0.3 lux: 1023 * 10 / (10 + 14 (0.03)^-0.65) by hand
        assertEquals(70, model.read(absent, Nanos.ofSeconds(31), 0), 1);
        assertEquals(70, model.read(absent, Nanos.ofSeconds(44.99), 0), 1);
        // 1500 lux: 1023 * 10 / (10 + 14 (150)^-0.65) by hand
        assertEquals(970, model.read(absent, Nanos.ofSeconds(46), 0), 1);
    }

    @Test
    void aDriftCanBeginAtAnyTimeWithItsSteepestPart() {
        long start = Nanos.ofSeconds(777);
        LightRoom room = LightRoom.steady(150).withDrift01(0.25, start);
        SimulatedHand absent = new SimulatedHand(HandSettings.STILL, 1);
        assertEquals(150, room.lux(absent, start), 1e-9);
        // by hand: 150 (1 + 0.25 sin(2 pi 60/2400)) = 150 * 1.03911
        assertEquals(155.866, room.lux(absent, start + Nanos.ofSeconds(60)), 1e-3);
        assertEquals(187.5, room.lux(absent, start + Nanos.ofSeconds(600)), 1e-9);
    }

    /** Share of a step of light that the counts show some time after a hand has jumped. */
    private static double shareOfStep(double fromMm, double toMm, double seconds) {
        SimulatedHand hand = TimeOfFlightModelTest.stillAt(fromMm);
        hand.goTo(toMm, Nanos.ofSeconds(2), 0.001);
        LightModel model = new LightModel(RISING, LightRoom.steady(60), 0, 1);
        double start = lux(model.read(hand, Nanos.ofSeconds(1.9), 0));
        double now = lux(model.read(hand, Nanos.ofSeconds(2 + seconds), 0));
        double end = lux(model.read(hand, Nanos.ofSeconds(4), 0));
        return (now - start) / (end - start);
    }

    /** Divider and cell turned round: R = Rf (1023 - N)/N, E = 10 (R/R10)^(-1/gamma). */
    private static double lux(double counts) {
        double ohm = 10_000 * (1023 - counts) / counts;
        return 10 * Math.pow(ohm / 14_000, -1 / 0.65);
    }
}
