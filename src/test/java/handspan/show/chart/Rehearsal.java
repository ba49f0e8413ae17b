package handspan.show.chart;

import handspan.TestRooms;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.live.session.Engine;
import handspan.live.session.Replay;
import handspan.live.session.Snapshot;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** A real engine, played by hands of the test's own: lines at 50 a second, a look at the snapshot 30 times a second. */
public final class Rehearsal {
    private static final long LINE_NANOS = 20 * Nanos.PER_MS;
    private static final long LOOK_NANOS = Nanos.PER_SECOND / 30;

    private final Engine engine;
    private final RoomProfile room;
    private long now = Nanos.PER_SECOND;
    private long lookNanos = now;

    /** Two distances, nothing playing yet. */
    public Rehearsal(Tuning tuning) {
        room = TestRooms.twoDistances(50, tuning, 2);
        engine = new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(), (line, length, time) -> {}, event -> {}), now);
        engine.onLinkUp(now);
    }

    /** The room: 100..500 mm for pitch, 100..300 mm for level. */
    public RoomProfile room() {
        return room;
    }

    /**
     * A hand that is held at a distance, and trembles by a twentieth of a mm so that its sensor is seen to be alive.
     */
    public static DoubleUnaryOperator held(double mm) {
        return timeS -> mm + 0.05 * (Math.round(timeS * 50) % 2 == 0 ? 1 : -1);
    }

    /** Begins to play. */
    public Rehearsal play(boolean muted) {
        tell(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(muted)));
        return this;
    }

    /** Begins to calibrate by two ends. */
    public Rehearsal calibrate() {
        Instrument instrument = room.room().instrument();
        CalibrationPlan plan = CalibrationPlan.of(instrument, OptionalDouble.empty(), OptionalDouble.empty());
        tell(new Command.Calibrate(instrument, instrument.sensors(Air.USUAL), plan, HoldRules.USUAL));
        return this;
    }

    /** Gives a command. */
    public void tell(Command command) {
        engine.onCommand(command, now);
    }

    /**
     * Plays on.
     *
     * @param seconds how long
     * @param pitchMm of the pitch hand by the time since the start, s; NaN where it is away
     * @param levelMm likewise
     * @param charts are shown every look
     */
    public void play(double seconds, DoubleUnaryOperator pitchMm, DoubleUnaryOperator levelMm, LiveChart... charts) {
        for (long end = now + Math.round(seconds * Nanos.PER_SECOND); now < end; ) {
            line(figure(pitchMm.applyAsDouble(nowS())) + "," + figure(levelMm.applyAsDouble(nowS())), charts);
        }
    }

    /** One line as it is. */
    public void line(String line, LiveChart... charts) {
        now += LINE_NANOS;
        Replay.tickUntil(engine, now);
        byte[] bytes = (line + "\n").getBytes(StandardCharsets.ISO_8859_1);
        engine.onBytes(bytes, bytes.length, now);
        if (now >= lookNanos) {
            lookNanos += LOOK_NANOS;
            look(charts);
        }
    }

    /** Shows the charts how all stands. */
    public void look(LiveChart... charts) {
        Snapshot snapshot = engine.snapshot();
        for (LiveChart chart : charts) {
            chart.onSnapshot(snapshot);
        }
    }

    /** Since the start, s. */
    public double nowS() {
        return Nanos.toSeconds(now - Nanos.PER_SECOND);
    }

    /** How all stands. */
    public Snapshot snapshot() {
        return engine.snapshot();
    }

    private static String figure(double mm) {
        return Double.isNaN(mm) ? "8190" : String.format(Locale.ROOT, "%.2f", mm);
    }
}
