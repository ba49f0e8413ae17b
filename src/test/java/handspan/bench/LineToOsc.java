package handspan.bench;

import static java.util.Objects.requireNonNull;

import handspan.TestRooms;
import handspan.instrument.line.LineShape;
import handspan.live.path.FrameTarget;
import handspan.live.path.Intake;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.live.path.PlayPath;
import handspan.live.path.TargetStatus;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.outside.osc.OscEncoder;
import handspan.outside.simulate.PlayerHand;
import handspan.outside.simulate.SimulatedBoard;
import handspan.outside.simulate.SimulatedInstrument;
import handspan.outside.simulate.SimulatedInstruments;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** One line of a board, as bytes, through the whole instrument to the bytes of its Open Sound Control bundle. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class LineToOsc {
    private static final int LINES = 4096;
    private static final double LEAST_SHARE = 0.98;

    /** What plays: {@code two-distances}, or the room that comes along with one kind of snapping. */
    @Param({"two-distances", "hall free", "hall onset", "hall steps"})
    public String room = "";

    private final byte[][] lines = new byte[LINES][];
    private Intake intake = new Intake(null, LineTap.NONE, reading -> {}, learned -> {});
    private int at;
    private long nowNanos;
    private long intervalNanos;
    private long fed;
    private long encoded;
    private ByteBuffer latest = ByteBuffer.allocate(0);

    /** Plays in: prints the lines beforehand and goes through all of them once. */
    @Setup
    public void begin() throws ProfileException {
        boolean hall = room.startsWith("hall");
        print(hall ? "hall" : "still");
        RoomProfile profile =
                hall ? new ProfileFolder(Path.of("profiles")).load("saltmill-hall") : TestRooms.twoDistances(50);
        Tuning tuning = profile.tunings().get(0);
        if (hall) {
            tuning = tuning.withSnap(Snap.parse(room.substring("hall ".length())));
        }
        LineShape shape = requireNonNull(profile.room().instrument().shape());
        intervalNanos = Math.round(Nanos.PER_SECOND / profile.room().ratePerS());
        nowNanos = Nanos.PER_SECOND;
        PlayPath path = new PlayPath(
                profile,
                tuning,
                shape,
                PathSettings.USUAL.gliding(false).muted(false),
                List.of(new Encoding(new OscEncoder(profile.send().lines()))),
                nowNanos);
        intake = new Intake(shape, LineTap.NONE, path::onReading, learned -> {});
        intake.onConnected();
        for (int i = 0; i < LINES; i++) {
            lineToBundle();
        }
        fed = 0;
        encoded = 0;
    }

    private void print(String name) {
        SimulatedInstrument instrument = SimulatedInstruments.create(name, 1);
        instrument.player().playPassage(instrument.player().improvise(LINES), 0);
        SimulatedBoard board = instrument.board();
        while (board.nextLineNanos() < Nanos.PER_SECOND
                || !instrument.player().hand(PlayerHand.PITCH).presentAt(board.nextLineNanos())) {
            board.nextLine();
        }
        for (int i = 0; i < LINES; i++) {
            lines[i] = board.nextLine();
        }
    }

    /** One line. */
    @Benchmark
    public ByteBuffer lineToBundle() {
        byte[] line = lines[at];
        at = (at + 1) & (LINES - 1);
        nowNanos += intervalNanos;
        fed++;
        intake.onBytes(line, line.length, nowNanos);
        return latest;
    }

    /** A figure of lines that made no bundle would be too good. */
    @TearDown
    public void end() {
        if (fed == 0 || encoded < LEAST_SHARE * fed || encoded > fed) {
            throw new IllegalStateException(encoded + " bundles of " + fed + " lines");
        }
    }

    /** Makes the bundle and sends it nowhere. */
    private final class Encoding implements FrameTarget {
        private final OscEncoder encoder;

        Encoding(OscEncoder encoder) {
            this.encoder = encoder;
        }

        @Override
        public void send(SoundFrame frame, boolean withState) {
            encoded++;
            encoder.begin(frame, withState);
            latest = requireNonNull(encoder.next());
        }

        @Override
        public TargetStatus status() {
            return new TargetStatus("bytes", encoded, 0, 0, "");
        }

        @Override
        public void close() {}
    }
}
