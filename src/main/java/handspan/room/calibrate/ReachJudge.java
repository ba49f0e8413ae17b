package handspan.room.calibrate;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.MonotoneCurve;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.StepKind;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Tells a reach that missed from one that went for another place: the hand stopped nearer to the place of another
 * target, and further off than a hand misses. Such a one says nothing about the aim and is asked for again. Pure.
 */
final class ReachJudge {
    /** A hand that misses by less has missed, whatever lies near: four times an aim of 10 mm (this project's own). */
    static final double MOST_MISS_MM = 40;

    private final List<Step> targets;
    private final ChannelSpec channel;
    private final Sensor sensor;

    /** A judge of the reaches of a plan. */
    ReachJudge(CalibrationPlan plan, ChannelSpec channel, Sensor sensor) {
        this.targets = plan.steps().stream()
                .filter(step -> step.kind() == StepKind.AIM)
                .map(Step::place)
                .distinct()
                .toList();
        this.channel = channel;
        this.sensor = sensor;
    }

    /**
     * The same verdict, or why the hand is elsewhere.
     *
     * @param verdict on its stillness
     * @param holds captured so far
     */
    HoldJudge.Verdict judge(Step step, HoldJudge.Verdict verdict, List<Hold> holds) {
        if (step.reach().isEmpty() || verdict.held().isEmpty()) {
            return verdict;
        }
        double physical = verdict.held().get().value().value();
        List<Place> places = targets.stream()
                .flatMap(target -> held(holds, target.kind(), target.mm(), target.key()).stream()
                        .map(hold -> new Place(target, hold)))
                .toList();
        if (places.size() < targets.size()) {
            return verdict;
        }
        Response response = response(places);
        Place wanted = places.stream()
                .filter(place -> place.step().equals(step.place()))
                .findFirst()
                .orElseThrow();
        if (offMm(wanted, physical, response) <= MOST_MISS_MM) {
            return verdict;
        }
        Step nearest = places.stream()
                .min(Comparator.comparingDouble(place -> Math.abs(
                        response.mm(physical) - response.mm(place.hold().physical()))))
                .map(Place::step)
                .orElseThrow();
        return nearest.equals(step.place())
                ? verdict
                : HoldJudge.notYet(
                        HoldJudge.Why.ELSEWHERE,
                        "the hand is nearer to " + nearest.placeWords() + ", which was not asked for: reach for "
                                + step.placeWords());
    }

    private record Place(Step step, Hold hold) {}

    /** By the ruler, where that tells more than the sensor; else as two ends would be taken. */
    private Response response(List<Place> places) {
        List<Hold> sorted = places.stream()
                .map(Place::hold)
                .sorted(Comparator.comparingDouble(Hold::physical))
                .toList();
        if (!sensor.isLength() && sorted.stream().allMatch(hold -> hold.mm().isPresent())) {
            try {
                return new Response.Curve(sorted.stream()
                        .map(hold -> new MonotoneCurve.Point(
                                hold.physical(), hold.mm().orElseThrow()))
                        .toList());
            } catch (IllegalArgumentException e) {
                // marks held out of order: the fit will name them
                return EndsFit.nominal(channel, sensor, sorted.get(0), sorted.get(sorted.size() - 1));
            }
        }
        return EndsFit.nominal(channel, sensor, sorted.get(0), sorted.get(sorted.size() - 1));
    }

    private static double offMm(Place place, double physical, Response response) {
        return Math.abs(response.mm(physical) - response.mm(place.hold().physical()));
    }

    /**
     * The latest hold of the pitch hand at a place.
     *
     * @param kind of step that held it
     * @param mm tells those by ruler apart
     * @param key tells those by ear apart
     */
    static Optional<Hold> held(List<Hold> holds, StepKind kind, OptionalDouble mm, OptionalInt key) {
        return holds.stream()
                .filter(hold -> hold.hand() == HandRole.PITCH && hold.kind() == kind)
                .filter(hold -> kind != StepKind.RULER || hold.mm().equals(mm))
                .filter(hold -> kind != StepKind.NOTE || hold.key().equals(key))
                .reduce((earlier, later) -> later);
    }
}
