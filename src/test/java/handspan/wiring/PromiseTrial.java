package handspan.wiring;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.outside.simulate.HandSettings;
import handspan.outside.simulate.PlayerHand;
import handspan.outside.simulate.SimulatedBoard;
import handspan.outside.simulate.SimulatedHand;
import handspan.outside.simulate.SimulatedInstrument;
import handspan.outside.simulate.Stage;
import handspan.room.Room;
import handspan.room.budget.PitchBudget;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.Fit;
import handspan.room.calibrate.HoldRules;
import handspan.room.calibrate.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One simulated evening: a specimen drawn from a seed is calibrated by its player, then a hand that does not wander is
 * put at five true places, and the pitch that the room's map makes of the sensor's mean reading is held against the
 * pitch meant there. The simulator's laws are not those of the fit, so that truth is not tested against itself.
 */
final class PromiseTrial {
    static final double[] PLACES = {0, 0.25, 0.5, 0.75, 1};

    /** So many readings at a place that noise does not count; what drift does not average out does. */
    private static final int READINGS = 400;

    /** The set is played half an hour after the sound check. */
    private static final long HALF_AN_HOUR = 1800 * Nanos.PER_SECOND;

    /** One place of one evening: the pitch's error and its standard and expanded uncertainty as stated, cents. */
    record Point(double place01, double errorCents, double statedCents, double expandedCents) {
        boolean held() {
            return Math.abs(errorCents) <= expandedCents;
        }
    }

    private PromiseTrial() {}

    /** Root mean square error of an evening's places, cents. */
    static double rmsCents(List<Point> points) {
        return Math.sqrt(points.stream()
                .mapToDouble(point -> point.errorCents() * point.errorCents())
                .average()
                .orElseThrow());
    }

    /** How the evening's holds are asked for. */
    enum Way {
        TWO_ENDS,
        RULER
    }

    static List<Point> run(String name, Way way, long seed) throws Exception {
        return run(name, way, seed, HALF_AN_HOUR);
    }

    /** The same, played a stated time after the sound check. */
    static List<Point> run(String name, Way way, long seed, long pauseNanos) throws Exception {
        Evening evening = evening(name, way, seed);
        return points(evening.room(), evening.simulated(), evening.endNanos() + pauseNanos);
    }

    /** The room of one specimen tried with another. */
    static List<Point> withForeignRoom(String name, Way way, long seed, long foreignSeed) throws Exception {
        Evening evening = evening(name, way, seed);
        return points(evening(name, way, foreignSeed).room(), evening.simulated(), evening.endNanos());
    }

    private record Evening(Room room, SimulatedInstrument simulated, long endNanos) {}

    private static Evening evening(String name, Way way, long seed) throws Exception {
        Source source = Source.parse("sim:" + name);
        SourceOptions options = new SourceOptions(115_200, OptionalDouble.empty(), seed, false);
        Instrument told = InstrumentFinder.ofSimulation(name);
        try (Rig rig = Rigs.open(source, options, null, List.of(), null)) {
            Instrument instrument = told.withShape(Heard.on(rig).orElseThrow().shape());
            SimulatedInstrument simulated = rig.simulation().orElseThrow().instrument();
            Stage stage = simulated.player().stage(PlayerHand.PITCH);
            CalibrationPlan plan = way == Way.RULER
                    ? CalibrationPlan.byRuler(instrument, ruler(stage))
                    : CalibrationPlan.of(instrument, OptionalDouble.empty(), OptionalDouble.empty());
            rig.submit(new Command.Calibrate(instrument, instrument.sensors(Air.USUAL), plan, HoldRules.USUAL));
            Snapshot last = rig.follow(snapshot -> !snapshot.done() && snapshot.timeNanos() < 240 * Nanos.PER_SECOND);
            ActivityView.Calibrating done = (ActivityView.Calibrating) last.activity();
            Outcome outcome =
                    Fit.fit("truth", "2026-01-01T00:00:00Z", instrument, Air.USUAL, done.ratePerS(), done.holds());
            Room room = outcome.room().orElseThrow(() -> new AssertionError(name + " " + seed + outcome.reasons()));
            return new Evening(room, simulated, last.timeNanos());
        }
    }

    private static List<Double> ruler(Stage stage) {
        List<Double> places = new ArrayList<>();
        for (double place : PLACES) {
            places.add(stage.nearMm() + place * (stage.farMm() - stage.nearMm()));
        }
        return places;
    }

    private static List<Point> points(Room room, SimulatedInstrument simulated, long fromNanos) {
        Stage stage = simulated.player().stage(PlayerHand.PITCH);
        Tuning tuning = Tuning.usual();
        double centsPerMm = tuning.centsPerMm(room.pitch().zone().lengthMm());
        Sensor sensor = room.sensor(room.pitch());
        SimulatedBoard.Channel channel = simulated.board().channels().get(0);
        List<Point> points = new ArrayList<>();
        long now = fromNanos;
        for (double place : PLACES) {
            double mm = stage.nearMm() + place * (stage.farMm() - stage.nearMm());
            SimulatedHand still = new SimulatedHand(HandSettings.STILL, 1);
            now = still.goTo(mm, now, 0.5) + Nanos.PER_SECOND;
            double sum = 0;
            int count = 0;
            for (int i = 0; i < READINGS; i++) {
                now += Math.round(Nanos.PER_SECOND / room.ratePerS());
                double raw = channel.model().read(still, now, 0);
                if (sensor.hasReading(raw)) {
                    sum += room.pitch().zone().place(room.pitch().response().mm(sensor.physical(raw)));
                    count++;
                }
            }
            double error = 1200 * 2 * (sum / count - place);
            PitchBudget budget = PitchBudget.at(room.pitch(), place, centsPerMm);
            points.add(new Point(place, error, budget.standardCents(), budget.expandedCents()));
        }
        return points;
    }
}
