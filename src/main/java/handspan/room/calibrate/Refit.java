package handspan.room.calibrate;

import handspan.instrument.sensor.SensorKind;
import handspan.number.fit.MonotoneCurve;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A saved room with its ends and its light taken again; how the sensors respond is kept, and the aim where no reaches
 * were made. Pure.
 */
public final class Refit {
    private Refit() {}

    /** The steps of a quick re-fit: near and far of the pitch hand, then the open light; or the light alone. */
    public static CalibrationPlan plan(Room room, boolean lightOnly) {
        List<Step> steps = new ArrayList<>();
        if (!lightOnly) {
            steps.add(Step.of(StepKind.NEAR, HandRole.PITCH));
            steps.add(Step.of(StepKind.FAR, HandRole.PITCH));
        }
        if (hasLight(room)) {
            steps.add(Step.of(StepKind.OPEN, HandRole.LEVEL));
        }
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("room '" + room.name() + "' has no light to take again");
        }
        return new CalibrationPlan(steps);
    }

    /** The same without the far end: enough to see a shift of all places. */
    public static CalibrationPlan nearOnly(Room room) {
        return new CalibrationPlan(plan(room, false).steps().stream()
                .filter(step -> step.kind() != StepKind.FAR)
                .toList());
    }

    private static boolean hasLight(Room room) {
        HandSetup level = room.level();
        return level != null && level.channel().kind() == SensorKind.PHOTORESISTOR;
    }

    /**
     * Fits again.
     *
     * @param name of the new room; may be the old one's
     * @param calibratedAt ISO 8601 text
     * @param before the room whose responses are kept
     * @param holds fresh ones
     */
    public static Outcome of(String name, String calibratedAt, Room before, List<Hold> holds) {
        Optional<Hold> near = last(holds, StepKind.NEAR);
        Optional<Hold> far = last(holds, StepKind.FAR);
        HandSetup pitch = before.pitch();
        if (near.isPresent() && far.isPresent()) {
            double from = pitch.response().mm(near.get().physical());
            double to = pitch.response().mm(far.get().physical());
            Optional<String> refusal =
                    HandFit.zoneRefusal(HandRole.PITCH, pitch.channel().kind(), from, to);
            if (refusal.isPresent()) {
                return Outcome.no(List.of(refusal.get()));
            }
            Zone zone = new Zone(
                    from,
                    to,
                    near.get().standardUncertainty()
                            * HandFit.slope(pitch.response(), near.get().physical()),
                    far.get().standardUncertainty()
                            * HandFit.slope(pitch.response(), far.get().physical()));
            pitch = pitch.with(pitch.response(), zone);
        }
        HandSetup level = last(holds, StepKind.OPEN)
                .map(open -> brightened(before.level(), open))
                .orElse(before.level());
        Room room = new Room(
                name,
                calibratedAt,
                before.instrument(),
                before.air(),
                before.ratePerS(),
                pitch,
                level,
                holds,
                before.aim());
        return Outcome.of(AimFit.of(room).map(AimFit::aim).map(room::with).orElse(room));
    }

    /** Another brightness shifts the log of the resistance by one amount for all places of the hand. */
    private static @Nullable HandSetup brightened(@Nullable HandSetup level, Hold open) {
        if (level == null || !(level.response() instanceof Response.Curve curve)) {
            return level;
        }
        double shift = open.physical() - curve.physical(level.zone().farMm());
        List<MonotoneCurve.Point> points = curve.points().stream()
                .map(point -> new MonotoneCurve.Point(point.x() + shift, point.y()))
                .toList();
        return level.with(new Response.Curve(points), level.zone());
    }

    private static Optional<Hold> last(List<Hold> holds, StepKind kind) {
        return holds.stream()
                .filter(hold -> hold.kind() == kind && (hold.hand() == HandRole.PITCH || kind == StepKind.OPEN))
                .reduce((a, b) -> b);
    }
}
