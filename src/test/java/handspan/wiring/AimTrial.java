package handspan.wiring;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import handspan.outside.simulate.PlayerHand;
import handspan.outside.simulate.SimulatedHand;
import handspan.outside.simulate.SimulatedPlayer;
import handspan.outside.simulate.Stage;
import handspan.room.Room;
import handspan.room.calibrate.AimFit;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.Fit;
import handspan.room.calibrate.HoldRules;
import handspan.room.calibrate.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * One simulated evening of a player whose aim is known, calibrated with ten reaches by the board's lines alone.
 *
 * @param room that it made
 * @param fit what it told of the aim
 * @param reachedMm2 mean square of where the hand truly was at the end of each reach, against where it was asked to be
 * @param seconds that the reaches took
 * @param events all that happened
 */
record AimTrial(Room room, AimFit fit, double reachedMm2, double seconds, List<Event> events) {
    private static final long LONGEST = 300 * Nanos.PER_SECOND;

    /** Two ends, and half-way; or five places by ruler. */
    enum Way {
        ENDS,
        RULER
    }

    static AimTrial run(String name, Way way, double aimMm, long seed, @Nullable Recording tap) throws Exception {
        SourceOptions options = new SourceOptions(115_200, OptionalDouble.empty(), seed, false);
        try (Rig rig = Rigs.open(Source.parse("sim:" + name), options, null, List.of(), tap)) {
            Instrument instrument = InstrumentFinder.ofSimulation(name)
                    .withShape(Heard.on(rig).orElseThrow().shape());
            SimulatedPlayer player = rig.simulation().orElseThrow().instrument().player();
            player.aimWithin(aimMm);
            rig.submit(new Command.Calibrate(
                    instrument, instrument.sensors(Air.USUAL), plan(instrument, way), HoldRules.USUAL));
            List<Event> events = new ArrayList<>();
            Snapshot last = rig.follow(snapshot -> {
                long seen = events.isEmpty() ? 0 : events.get(events.size() - 1).number();
                snapshot.events().stream()
                        .filter(event -> event.number() > seen)
                        .forEach(events::add);
                return !snapshot.done() && snapshot.timeNanos() < LONGEST;
            });
            ActivityView.Calibrating done = (ActivityView.Calibrating) last.activity();
            if (!done.done()) {
                throw new AssertionError(name + " " + seed + ": " + done.prompt() + ": " + done.reason());
            }
            Room room = Fit.fit("r", "2026-01-01T00:00:00Z", instrument, Air.USUAL, done.ratePerS(), done.holds())
                    .room()
                    .orElseThrow();
            return of(room, events, player);
        }
    }

    private static CalibrationPlan plan(Instrument instrument, Way way) {
        return (way == Way.RULER
                        ? CalibrationPlan.byRuler(instrument, List.of(100.0, 200.0, 300.0, 400.0, 500.0))
                        : CalibrationPlan.of(instrument, OptionalDouble.empty(), OptionalDouble.empty()))
                .withReaches();
    }

    private static AimTrial of(Room room, List<Event> events, SimulatedPlayer player) {
        SimulatedHand hand = player.hand(PlayerHand.PITCH);
        double squares = 0;
        int reaches = 0;
        long firstNanos = 0;
        for (Event event : events) {
            if (event.what() instanceof Event.Asked asked && asked.step().id().startsWith("aim-1-")) {
                firstNanos = event.timeNanos();
            }
            if (event.what() instanceof Event.Captured captured
                    && captured.step().reach().isPresent()) {
                double askedMm = askedMm(captured.step(), player.stage(PlayerHand.PITCH));
                squares += Math.pow(hand.trueMm(captured.toNanos()) - askedMm, 2);
                reaches++;
            }
        }
        double seconds = Nanos.toSeconds(events.get(events.size() - 1).timeNanos() - firstNanos);
        return new AimTrial(room, AimFit.of(room).orElseThrow(), squares / reaches, seconds, events);
    }

    private static double askedMm(Step step, Stage stage) {
        return switch (step.reach().orElseThrow().target()) {
            case NEAR -> stage.nearMm();
            case MID -> stage.midMm();
            case FAR -> stage.farMm();
            default -> step.mm().orElseThrow();
        };
    }

    /** Ids of the steps that were captured, in their order. */
    List<String> captured() {
        return events.stream()
                .filter(event -> event.what() instanceof Event.Captured)
                .map(event -> ((Event.Captured) event.what()).step().id())
                .toList();
    }

    /** Reasons that were given. */
    List<String> refused() {
        return events.stream()
                .filter(event -> event.what() instanceof Event.NotYet)
                .map(event -> ((Event.NotYet) event.what()).reason())
                .toList();
    }

    /** Whether a step was taken back by a sign that nobody gave. */
    boolean undone() {
        return events.stream().anyMatch(event -> event.what() instanceof Event.Undone);
    }
}
