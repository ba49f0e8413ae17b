package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.number.units.Nanos;
import handspan.room.Hold;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The steps that measure an aim, and how they are captured. */
class ReachTest {
    private static final ChannelSpec PITCH = ChannelSpec.parse("1:distance:mm");
    private static final Instrument REED = new Instrument("reed", 1, 115_200, null, PITCH, null, 5);
    private static final CalibrationPlan ENDS = CalibrationPlan.of(REED, OptionalDouble.empty(), OptionalDouble.empty())
            .withReaches();

    private Calibration calibration = calibration(ENDS);
    private final Random random = new Random(3);
    private final List<CalibrationEvent> events = new ArrayList<>();
    private long now = Nanos.PER_SECOND;

    private static Calibration calibration(CalibrationPlan plan) {
        return new Calibration(
                plan, LineShape.numbers(',', 1), PITCH, Sensor.of(PITCH, Air.USUAL, 5), null, null, HoldRules.USUAL);
    }

    private void hold(double mm, double seconds) {
        for (int i = 0; i < 50 * seconds; i++) {
            now += 20 * Nanos.PER_MS;
            double noisy = Math.rint(mm + 2 * random.nextGaussian());
            calibration.onReading(new Reading(now, new double[] {noisy}, 1));
            events.addAll(calibration.takeEvents());
        }
    }

    private void holdThePlaces() {
        hold(8190, 3);
        hold(100, 3.5);
        hold(500, 3.5);
        hold(300, 3.5);
        assertEquals("aim-1-near", calibration.step().id());
    }

    private List<String> told() {
        List<String> told = new ArrayList<>();
        for (CalibrationEvent event : events) {
            if (event instanceof CalibrationEvent.NotYet not) {
                told.add("not " + not.step().id() + ": " + not.reason());
            } else if (event instanceof CalibrationEvent.Asked asked) {
                told.add("ask " + asked.step().id());
            } else if (event instanceof CalibrationEvent.Captured captured) {
                told.add("got " + captured.step().id());
            } else if (event instanceof CalibrationEvent.Undone undone) {
                told.add("undo " + undone.step().id());
            }
        }
        events.clear();
        return told;
    }

    private static List<Step> reaches(CalibrationPlan plan) {
        return plan.steps().stream().filter(step -> step.kind() == StepKind.AIM).toList();
    }

    @Test
    void twoEndsGetAPlaceHalfWayAndTenReachesAmongTheThree() {
        assertEquals(
                List.of("rest", "near", "far", "pitch-mid"),
                ENDS.steps().subList(0, 4).stream().map(Step::id).toList());
        assertEquals(10, reaches(ENDS).size());
        assertEquals(3, reaches(ENDS).stream().map(Step::place).distinct().count());
    }

    @Test
    void noPlaceComesTwiceInARowAndAllComeAboutAsOften() {
        List<CalibrationPlan> plans = List.of(
                ENDS,
                CalibrationPlan.byRuler(REED, List.of(100.0, 200.0, 300.0)).withReaches(),
                CalibrationPlan.byRuler(REED, List.of(100.0, 200.0, 300.0, 400.0, 500.0))
                        .withReaches(),
                CalibrationPlan.byEar(REED, List.of(57, 60, 62, 64, 67, 69, 72, 74, 76))
                        .withReaches());
        for (CalibrationPlan plan : plans) {
            List<Step> steps = plan.steps();
            int first = steps.size() - 10;
            assertTrue(IntStream.range(first, steps.size())
                    .noneMatch(i -> steps.get(i).place().equals(steps.get(i - 1).place())));
            var often = reaches(plan).stream()
                    .map(Step::place)
                    .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
            long places = often.size();
            assertTrue(places >= 3 && places <= 5, often + "");
            assertTrue(often.values().stream().allMatch(n -> n == 10 / places || n == 10 / places + 1), often + "");
        }
        List<String> notes = reaches(plans.get(3)).stream()
                .map(step -> step.place().id())
                .distinct()
                .sorted()
                .toList();
        assertEquals(List.of("note-A3", "note-C5", "note-D4", "note-E5", "note-G4"), notes, "spread, with both ends");
    }

    @Test
    void theNameOfAStepLeadsBackToIt() {
        List<Step> all = new ArrayList<>(ENDS.steps());
        all.addAll(CalibrationPlan.byRuler(REED, List.of(100.0, 250.5, 300.0))
                .withReaches()
                .steps());
        all.addAll(
                CalibrationPlan.byEar(REED, List.of(57, 61, 69)).withReaches().steps());
        for (Step step : all) {
            assertEquals(step, Step.byId(step.id()).orElseThrow(), step.id());
        }
        for (String none :
                List.of("aim", "aim-", "aim-1", "aim-0-near", "aim-1-rest", "aim-x-near", "aim-1-aim-2-far")) {
            assertTrue(Step.byId(none).isEmpty(), none);
        }
    }

    /** 0.8 s of stopping after 0.7 s of setting out. */
    @Test
    void aShortStopIsAReachAndItIsTakenAsItWas() {
        holdThePlaces();
        told();
        hold(112, 1.7);
        assertEquals(List.of("got aim-1-near", "ask aim-2-far"), told());
        Hold reach = calibration.holds().get(3);
        assertEquals(112, reach.physical(), 1.5);
        assertEquals(StepKind.NEAR, reach.target().orElseThrow());
    }

    @Test
    void aReachForTheWrongPlaceIsSaidAndAskedForAgain() {
        holdThePlaces();
        told();
        hold(480, 1.7);
        assertEquals(
                List.of(
                        "not aim-1-near: the hand is nearer to the far end, which was not asked for: reach for the near"
                                + " end",
                        "ask aim-1-near"),
                told());
        hold(96, 1.7);
        assertEquals(List.of("got aim-1-near", "ask aim-2-far"), told());
        assertEquals(96, calibration.holds().get(3).physical(), 1.5);
    }

    /** Marks lie 50 mm apart: 30 mm off is nearer to the next, and still no more than a bad miss. */
    @Test
    void amongMarksThatLieCloseABadMissCounts() {
        calibration = calibration(
                CalibrationPlan.byRuler(REED, List.of(100.0, 150.0, 200.0)).withReaches());
        hold(8190, 3);
        hold(100, 5.5);
        hold(150, 5.5);
        hold(200, 5.5);
        Step first = calibration.step();
        assertEquals(StepKind.AIM, first.kind());
        told();
        double mark = first.mm().orElseThrow();
        hold(mark == 100 ? 130 : mark - 30, 1.7);
        assertEquals("got " + first.id(), told().get(0));
        assertEquals(30, Math.abs(calibration.holds().get(3).physical() - mark), 1.5);
    }

    @Test
    void withoutAMoveNothingIsReached() {
        holdThePlaces();
        told();
        hold(300, 5);
        assertEquals("aim-1-near", calibration.step().id());
        List<String> told = told();
        assertTrue(told.stream().allMatch(one -> one.contains("no move seen")) && !told.isEmpty(), "" + told);
    }

    @Test
    void aReachCanBeTakenAgain() {
        holdThePlaces();
        hold(112, 1.7);
        told();
        calibration.undo();
        hold(95, 1.7);
        assertEquals(List.of("undo aim-1-near", "ask aim-1-near", "got aim-1-near", "ask aim-2-far"), told());
        assertEquals(95, calibration.holds().get(3).physical(), 1.5);
    }
}
