package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.ChannelSpec;
import handspan.music.tuning.Tuning;
import handspan.number.fit.MonotoneCurve;
import handspan.room.FitQuality;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Zone;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sums and coverage factors of JCGM 100:2008 (GUM), by hand. */
class PitchBudgetTest {
    private static final double CENTS_PER_MM = 6;

    private static HandSetup hand(String channel, Zone zone) {
        return new HandSetup(ChannelSpec.parse(channel), new Response.AsMeasured(), zone, 2, false);
    }

    private static HandSetup fitted(double widened, int holds, int parameters) {
        List<MonotoneCurve.Point> residuals = java.util.stream.IntStream.range(0, holds)
                .mapToObj(i -> new MonotoneCurve.Point(100 + 100 * i, 0))
                .toList();
        List<MonotoneCurve.Point> uncertainty =
                List.of(new MonotoneCurve.Point(100, 0.5), new MonotoneCurve.Point(500, 0.7));
        return new HandSetup(
                ChannelSpec.parse("1:echo:us"),
                new Response.AsMeasured(),
                new Zone(100, 500, 0.5, 0.7),
                2,
                false,
                new FitQuality("straight line", parameters, residuals, 0.1, 0.1, widened, uncertainty));
    }

    private static double cents(PitchBudget budget, String name) {
        return budget.terms().stream()
                .filter(term -> term.name().equals(name))
                .findFirst()
                .orElseThrow()
                .cents();
    }

    /** Equation (10): 6 cents/mm x sqrt((1 - w)^2 0.4^2 + w^2 0.3^2), at w = 0.5 this is 6 x 0.25. */
    @ParameterizedTest
    @CsvSource({"0, 2.4", "1, 1.8", "0.5, 1.5"})
    void theUncertaintyOfTheEndsIsPropagatedToEachPlace(double place, double cents) {
        PitchBudget budget = PitchBudget.at(hand("1:echo:us", new Zone(100, 500, 0.4, 0.3)), place, CENTS_PER_MM);
        assertEquals(cents, cents(budget, "zone ends"), 1e-9);
    }

    @Test
    void termsAddInSquaresAndTheLargestIsNamed() {
        PitchBudget budget = PitchBudget.at(hand("1:distance:mm", new Zone(100, 500, 0.4, 0.3)), 0.5, CENTS_PER_MM);
        double sum = budget.terms().stream()
                .mapToDouble(term -> term.cents() * term.cents())
                .sum();
        assertEquals(Math.sqrt(sum), budget.standardCents(), 1e-9);
        assertEquals("bend of the sensor", budget.largest().name());
        assertTrue(budget.words().contains("bend of the sensor (assumed)"), budget.words());
        // all but the ends are taken as known: a coverage factor of 1.960 (GUM, table G.1)
        assertEquals(1.960 * budget.standardCents(), budget.expandedCents(), 0.001 * budget.standardCents());
    }

    /** At an end the bend is nothing: the ends are where the curve was pinned. */
    @Test
    void theBendCountsBetweenTheEndsOnly() {
        HandSetup hand = hand("1:distance:mm", new Zone(100, 500, 0.4, 0.3));
        assertEquals(0, cents(PitchBudget.at(hand, 0, CENTS_PER_MM), "bend of the sensor"), 1e-9);
        assertEquals(0, cents(PitchBudget.at(hand, 1, CENTS_PER_MM), "bend of the sensor"), 1e-9);
        // a half sine of 5 mm over 600 mm departs from its chord between 100 and 500 mm by 2.5 mm; over the root of 3
        double mid = cents(PitchBudget.at(hand, 0.5, CENTS_PER_MM), "bend of the sensor");
        assertEquals(CENTS_PER_MM * 2.5 / Math.sqrt(3), mid, 0.05 * mid);
    }

    /** Ends that were held anew come on top of the fit: 0.4 and 0.8 mm at 6 cents a mm are 2.4 and 4.8 cents. */
    @Test
    void endsHeldAnewCountBesideTheFit() {
        HandSetup fitted = fitted(1, 5, 3);
        assertEquals(List.of("fit to the holds"), names(PitchBudget.at(fitted, 0, CENTS_PER_MM)));
        HandSetup anew = fitted.with(fitted.response(), new Zone(104, 497, 0.4, 0.3));
        PitchBudget budget = PitchBudget.at(anew, 0, CENTS_PER_MM);
        assertEquals(List.of("fit to the holds", "zone ends", "hand at the ends"), names(budget));
        assertEquals(2.4, cents(budget, "zone ends"), 1e-9);
        assertEquals(4.8, cents(budget, "hand at the ends"), 1e-9);
    }

    private static List<String> names(PitchBudget budget) {
        return budget.terms().stream().map(PitchBudget.Term::name).toList();
    }

    /** GUM, table G.2: t of 2 degrees of freedom at 95 % is 4.30, of 3 it is 3.18. */
    @ParameterizedTest
    @CsvSource({"2, 5, 3, 4.30", "2, 5, 2, 3.18", "1, 5, 3, 1.96"})
    void fewHoldsThatScatterMakeTheIntervalWider(double widened, int holds, int parameters, double factor) {
        PitchBudget budget = PitchBudget.at(fitted(widened, holds, parameters), 0, CENTS_PER_MM);
        assertEquals(3, budget.standardCents(), 1e-9, "0.5 mm at 6 cents a mm");
        assertEquals(factor * 3, budget.expandedCents(), 0.005 * 3);
    }

    /** Whole centimetres without noise hide 10 mm / sqrt(12) = 2.9 mm; noise of a step's size hides next to nothing. */
    @Test
    void aStepCountsWhereNoiseDoesNotCarryTheReadingsOverIt() {
        HandSetup coarse = new HandSetup(
                        ChannelSpec.parse("1:echo:cm"),
                        new Response.AsMeasured(),
                        new Zone(100, 500, 1, 1),
                        10 / Math.sqrt(12),
                        false)
                .inSteps(10);
        PitchBudget budget = PitchBudget.at(coarse, 0, CENTS_PER_MM);
        assertEquals(CENTS_PER_MM * 10 / Math.sqrt(12), cents(budget, "step of the sensor"), 1e-6);
        HandSetup noisy = new HandSetup(
                        ChannelSpec.parse("1:echo:cm"), new Response.AsMeasured(), new Zone(100, 500, 1, 1), 10, false)
                .inSteps(10);
        assertTrue(PitchBudget.at(noisy, 0, CENTS_PER_MM).terms().stream()
                .noneMatch(term -> term.name().equals("step of the sensor")));
    }

    /** The worse the known shape of an infrared curve, the less is promised between two ends, and nothing at them. */
    @Test
    void theInfraredCurveIsLeastSureBetweenTheEnds() {
        HandSetup hand = new HandSetup(
                ChannelSpec.parse("1:infrared:counts10"),
                new Response.Triangulation(0.091, 271, 22),
                new Zone(100, 400, 0.2, 0.8),
                3,
                true);
        String name = "curve of the infrared part";
        assertEquals(0, cents(PitchBudget.at(hand, 0, 8), name), 1e-6);
        assertEquals(0, cents(PitchBudget.at(hand, 1, 8), name), 1e-6);
        // by hand: with a = 0.091 + 0.0635 V the place that was at 250 mm lies at
        // 100 + 300 (1/(1.0873-a) - 1/(2.3123-a)) / (1/(0.7332-a) - 1/(2.3123-a)) = 244.6; with 0.091 - 0.0635 at 254.5
        double fromA = (5.4 + 4.5) / 2;
        double fromLaw = 0.008 * 272 * 272 / 271;
        assertEquals(8 * Math.hypot(fromA, fromLaw), cents(PitchBudget.at(hand, 0.5, 8), name), 4);
    }

    @Test
    void eachNoteOfTheScaleHasItsBudget() {
        HandSetup hand = hand("1:distance:mm", new Zone(100, 500, 0.4, 0.3));
        List<NoteBudget> notes = NoteBudget.of(hand, Tuning.usual());
        assertEquals(25, notes.size(), "two octaves of semitones and their upper end");
        assertEquals(57, notes.get(0).keyNumber(), "A3");
        assertEquals(100, notes.get(0).atMm(), 1e-9);
        assertEquals(300, notes.get(12).atMm(), 1e-9, "A4 half-way");
        assertEquals(69, NoteBudget.worst(notes).keyNumber(), "the bend is largest there");
    }
}
