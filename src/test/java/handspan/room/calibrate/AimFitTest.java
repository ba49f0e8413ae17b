package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.SensorKind;
import handspan.room.Aim;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import handspan.room.budget.PitchBudget;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class AimFitTest {
    private static final ChannelSpec PITCH = ChannelSpec.parse("1:distance:mm");
    private static final int TRIALS = 4000;

    /** What the hand wanders while a place is held, and what a ranger drifts: assumed elsewhere, taken off here. */
    private static final double PLACE_MM2 =
            Math.pow(PitchBudget.HAND_MM, 2) + Math.pow(PitchBudget.driftMm(SensorKind.DISTANCE), 2);

    /** Readings are 10 mm and 2 % too large: that must cancel but for the 2 %, which the response takes off. */
    private static Room room(List<Hold> holds) {
        Response response = new Response.Parabola(-10 / 1.02, 1 / 1.02, 0, 112, 520);
        HandSetup hand = new HandSetup(PITCH, response, new Zone(100, 500, 1, 1), 2, false);
        Instrument instrument = new Instrument("reed", 1, 115_200, null, PITCH, null, 5);
        return new Room("hall", "2026-01-01", instrument, Air.USUAL, 50, hand, null, holds);
    }

    private static Hold hold(StepKind kind, double mm, double uncertaintyMm) {
        return Hold.of(kind, HandRole.PITCH, 10 + 1.02 * mm, 1.02 * uncertaintyMm, 2, 40);
    }

    private static Hold reach(StepKind target, double mm, double uncertaintyMm) {
        return hold(StepKind.AIM, mm, uncertaintyMm).reaching(target);
    }

    private static List<Hold> withEnds() {
        return new ArrayList<>(List.of(hold(StepKind.NEAR, 100, 0.3), hold(StepKind.FAR, 500, 0.4)));
    }

    private static AimFit of(List<Hold> holds) {
        return AimFit.of(room(holds)).orElseThrow();
    }

    /** By hand: errors 6, -4, 8, 2, -10, 6 mm: their mean is 8/6 mm, the mean of their squares 256/6 mm^2. */
    @Test
    void theMeanSquareLessWhatTheReadingsAndTheHoldsExplain() {
        List<Hold> holds = withEnds();
        for (double error : new double[] {6, 8, -10}) {
            holds.add(reach(StepKind.NEAR, 100 + error, 0.5));
        }
        for (double error : new double[] {-4, 2, 6}) {
            holds.add(reach(StepKind.FAR, 500 + error, 0.5));
        }
        AimFit fit = of(holds);
        double square = 256.0 / 6 - 0.25 - (0.09 + 0.16) / 2 - PLACE_MM2;
        assertEquals(square, fit.squareMm2(), 1e-6);
        assertEquals(Math.sqrt(square), fit.aim().mm(), 1e-6);
        assertEquals(6, fit.aim().reaches());
        assertEquals(8.0 / 6, fit.meanMm(), 1e-6);
        assertEquals(256.0 / 6 / (Math.sqrt(square) * Math.sqrt(12)), fit.standardUncertaintyMm(), 1e-6);
        assertTrue(fit.words().contains("on average you reach 1.3 mm too far"), fit.words());
    }

    @Test
    void alwaysTooShortIsAnErrorAsWell() {
        List<Hold> holds = withEnds();
        for (int i = 0; i < 10; i++) {
            holds.add(reach(StepKind.FAR, 492, 0));
        }
        AimFit fit = of(holds);
        assertEquals(64 - PLACE_MM2 - 0.16, fit.squareMm2(), 1e-6);
        assertTrue(fit.words().contains("you reach 8.0 mm too near"), fit.words());
    }

    @Test
    void fourReachesTellNothingAndFiveDo() {
        List<Hold> holds = withEnds();
        for (int i = 0; i < 4; i++) {
            holds.add(reach(StepKind.FAR, 507, 0));
        }
        assertTrue(AimFit.of(room(holds)).isEmpty());
        holds.add(reach(StepKind.RULER, 507, 0).at(500));
        assertTrue(AimFit.of(room(holds)).isEmpty(), "a place that was never held counts for nothing");
        holds.add(reach(StepKind.NEAR, 107, 0));
        assertEquals(5, of(holds).aim().reaches());
    }

    @Test
    void eachMarkAndEachNoteIsAPlaceOfItsOwnAndItsLatestHoldCounts() {
        List<Hold> holds = new ArrayList<>(List.of(
                hold(StepKind.RULER, 250, 0).at(200),
                hold(StepKind.RULER, 200, 0).at(200),
                hold(StepKind.RULER, 300, 0).at(300),
                hold(StepKind.NOTE, 400, 0).on(69),
                hold(StepKind.NOTE, 450, 0).on(72)));
        holds.add(reach(StepKind.RULER, 205, 0).at(200));
        holds.add(reach(StepKind.RULER, 305, 0).at(300));
        holds.add(reach(StepKind.NOTE, 405, 0).on(69));
        holds.add(reach(StepKind.NOTE, 455, 0).on(72));
        holds.add(reach(StepKind.NOTE, 405, 0).on(69));
        assertEquals(5, of(holds).meanMm(), 1e-6);
    }

    /**
     * Evenings of ten reaches of a known aim, readings and holds with errors as they state. The mean of the squares is
     * that of the aim within four standard errors of a mean of 40,000 squares of normal values (relative variance 2).
     * The interval of 1.96 standard uncertainties holds the truth where chi square of 10 degrees of freedom lies within
     * 10 / 1.438^2 and 10 / 0.562^2, that is in 90.1 % (its density summed up; tables have 90 % above 4.865: NIST
     * e-Handbook of Statistical Methods, 1.3.6.7.4).
     */
    @Test
    void overManyEveningsTheSquaresAreRightAndTheIntervalHoldsAsTenReachesCan() {
        for (double aimMm : new double[] {3, 6, 10}) {
            Random random = new Random(5);
            double sum = 0;
            int held = 0;
            for (int trial = 0; trial < TRIALS; trial++) {
                List<Hold> holds = withWanderingEnds(random);
                for (int i = 0; i < 10; i++) {
                    double mm = (i % 2 == 0 ? 100 : 500) + Math.hypot(aimMm, 0.5) * random.nextGaussian();
                    holds.add(reach(i % 2 == 0 ? StepKind.NEAR : StepKind.FAR, mm, 0.5));
                }
                AimFit fit = of(holds);
                sum += fit.squareMm2();
                held += Math.abs(fit.aim().mm() - aimMm) <= 1.96 * fit.standardUncertaintyMm() ? 1 : 0;
            }
            double square = aimMm * aimMm + 0.25 + PLACE_MM2;
            assertEquals(aimMm * aimMm, sum / TRIALS, 4 * square * Math.sqrt(2.0 / (10 * TRIALS)) + PLACE_MM2 * 0.1);
            assertEquals(0.901, held / (double) TRIALS, 0.03, aimMm + " mm");
        }
    }

    private static List<Hold> withWanderingEnds(Random random) {
        double mm = Math.sqrt(PLACE_MM2);
        return new ArrayList<>(List.of(
                hold(StepKind.NEAR, 100 + mm * random.nextGaussian(), 0),
                hold(StepKind.FAR, 500 + mm * random.nextGaussian(), 0)));
    }

    @Test
    void aFitKeepsTheAimAndOneWithoutReachesAssumesIt() {
        List<Hold> holds = withEnds();
        Instrument instrument = new Instrument("reed", 1, 115_200, null, PITCH, null, 5);
        assertEquals(
                Aim.ASSUMED,
                Fit.fit("r", "2026-01-01", instrument, Air.USUAL, 50, holds)
                        .room()
                        .orElseThrow()
                        .aim());
        for (int i = 0; i < 10; i++) {
            holds.add(reach(StepKind.FAR, 500 + (i % 2 == 0 ? 5 : -5), 0));
        }
        Room made = Fit.fit("r", "2026-01-01", instrument, Air.USUAL, 50, holds)
                .room()
                .orElseThrow();
        // two ends are taken as measured, 2 % too long
        assertEquals(
                Math.sqrt(26.01 - PLACE_MM2 - Math.pow(0.4 * 1.02, 2)),
                made.aim().mm(),
                1e-6);
        Room again = Refit.of("r", "2026-02-02", made, withEnds()).room().orElseThrow();
        assertEquals(made.aim(), again.aim(), "a re-fit without reaches keeps it");
        Room reached =
                Refit.of("r", "2026-02-02", room(List.of()), holds).room().orElseThrow();
        assertEquals(10, reached.aim().reaches());
    }
}
