package handspan.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.bench.Resources.Look;
import handspan.live.path.FrameTarget;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.Command;
import handspan.live.session.Engine;
import handspan.live.session.Event;
import handspan.live.session.Link;
import handspan.live.session.LinkOpener;
import handspan.live.session.LinkState;
import handspan.live.session.Replay;
import handspan.live.session.Session;
import handspan.music.send.SendTarget;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.wiring.Targets;
import java.io.ByteArrayOutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.channels.DatagramChannel;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whether anything grows, over far more than an evening. */
@Tag("bench")
class SoakBench {
    private static final double MOST_GROWTH_MB = 2;
    private static final long LINES = 10_000_000;
    private static final int LOOKS = 10;
    private static final long LINE_NANOS = 10 * Nanos.PER_MS;
    private static final int LOSS_EVERY = 10_000;
    private static final int COMMAND_EVERY = 33_333;
    private static final int LIVE_LINES = 1_000_000;
    private static final int CHUNK_LINES = 100;
    private static final int LINES_OF_A_MOMENT = 50;
    private static final int CONNECTIONS = 20;
    private static final long PATIENCE_NANOS = 120 * Nanos.PER_SECOND;

    private final RoomProfile room;

    SoakBench() throws Exception {
        room = new ProfileFolder(Path.of("profiles")).load("saltmill-hall");
    }

    private static final class Counting implements FrameTarget {
        private long frames;
        private long sounding;

        @Override
        public void send(SoundFrame frame, boolean withState) {
            frames++;
            sounding += frame.gain01() > 0 ? 1 : 0;
        }

        @Override
        public TargetStatus status() {
            return new TargetStatus("count", frames, 0, 0, "");
        }

        @Override
        public void close() {
            // nothing is held
        }
    }

    private Command.Play play() {
        return new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false));
    }

    @Test
    void tenMillionReadings() {
        Counting frames = new Counting();
        long[] told = new long[2];
        long now = Nanos.PER_SECOND;
        Engine engine = new Engine(
                new Engine.Plugs(room.room().instrument().shape(), List.of(frames), LineTap.NONE, event -> {
                    told[0] += event.what() instanceof Event.BoardChanged ? 1 : 0;
                    told[1] += event.what() instanceof Event.Hint ? 1 : 0;
                }),
                now);
        SoakBoard board = new SoakBoard(1);
        Resources resources = new Resources();
        engine.onLinkUp(now);
        engine.onCommand(play(), now);
        for (long i = 1; i <= LINES; i++) {
            now += LINE_NANOS;
            Replay.tickUntil(engine, now);
            byte[] line = board.line(i);
            engine.onBytes(line, line.length, now);
            if (i % LOSS_EVERY == 0) {
                engine.onLinkDown("pulled", now);
                now += Nanos.PER_SECOND;
                Replay.tickUntil(engine, now);
                engine.onLinkUp(now);
            }
            if (i % COMMAND_EVERY == 0) {
                command(engine, i / COMMAND_EVERY, now);
            }
            engine.takeReopen();
            if (i % (LINES / LOOKS) == 0) {
                engine.snapshot();
                resources.look(i / 1_000_000 + " million lines");
            }
        }
        BenchTable table = table(
                "5-soak-engine",
                "(5) soak: 10 million lines at 100/s of simulated time, a loss every 10,000, another shape of lines every"
                        + " 100,000, 1 line in 50 garbage",
                resources);
        long readings = engine.snapshot().readings();
        table.note("readings " + readings + ", frames " + frames.frames + ", of which sounding " + frames.sounding
                + ", boards changed " + told[0] + ", hints " + told[1]);
        table.publish();
        assertTrue(readings > LINES / 10 * 9, readings + " readings");
        assertTrue(frames.sounding > LINES / 10, frames.sounding + " frames that sound");
        assertTrue(told[0] > 100, told[0] + " changes of the board");
        assertTrue(told[1] > 50, told[1] + " hints");
        assertFlat(resources);
    }

    private void command(Engine engine, long number, long now) {
        switch ((int) (number % 5)) {
            case 0 -> engine.onCommand(new Command.Mute(true), now);
            case 1 -> engine.onCommand(new Command.Mute(false), now);
            case 2 -> engine.onCommand(new Command.Tune(room.tunings().get(0).shifted((int) (number % 12), 0)), now);
            case 3 -> engine.onCommand(new Command.RetakeLight(), now);
            default -> engine.onCommand(play(), now);
        }
    }

    /** A link that gives its lines as quickly as they are taken, and ends. Its hand is as slow as one is. */
    private static final class QuickLink implements Link {
        private final SoakBoard board;
        private long left = LIVE_LINES / CONNECTIONS;
        private volatile boolean closed;

        QuickLink(SoakBoard board) {
            this.board = board;
        }

        @Override
        public int read(byte[] buffer) {
            if (closed || left <= 0) {
                return -1;
            }
            // a moment for the other thread: what finds its queue full is lost
            LockSupport.parkNanos(Nanos.PER_MS / 2);
            ByteArrayOutputStream lines = new ByteArrayOutputStream();
            for (int i = 0; i < CHUNK_LINES; i++) {
                lines.writeBytes(board.line(SoakBoard.SONG + left-- / LINES_OF_A_MOMENT));
            }
            byte[] bytes = lines.toByteArray();
            System.arraycopy(bytes, 0, buffer, 0, Math.min(bytes.length, buffer.length));
            return Math.min(bytes.length, buffer.length);
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    @Test
    void aMillionLinesLiveOverTwentyConnections() throws Exception {
        SoakBoard board = new SoakBoard(2);
        LinkOpener opener = new LinkOpener() {
            @Override
            public Link open() {
                return new QuickLink(board);
            }

            @Override
            public String name() {
                return "quick";
            }
        };
        Resources resources = new Resources();
        try (DatagramChannel port = DatagramChannel.open()) {
            port.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
            int number = ((InetSocketAddress) port.getLocalAddress()).getPort();
            SendTarget target = SendTarget.parse("udp:127.0.0.1:" + number);
            long[] losses = new long[1];
            try (Targets targets = Targets.open(room.send().to(List.of(target)))) {
                Engine engine = new Engine(
                        new Engine.Plugs(room.room().instrument().shape(), targets.all(), LineTap.NONE, event -> {
                            if (event.what() instanceof Event.Linked linked && linked.state() == LinkState.LOST) {
                                losses[0]++;
                            }
                        }),
                        System.nanoTime());
                long lines;
                long overruns;
                try (Session session = Session.start(engine, opener, System::nanoTime)) {
                    session.submit(play());
                    for (int i = 1; i <= CONNECTIONS; i++) {
                        await(session, (long) i * LIVE_LINES / CONNECTIONS);
                        resources.look("connection " + i);
                    }
                    lines = session.snapshot().lines();
                    overruns = session.overruns();
                }
                BenchTable table = table(
                        "6-soak-session",
                        "(6) soak: a million lines through a live session into UDP, a new connection every 50,000 of them",
                        resources);
                table.note("lines " + lines + ", losses " + losses[0] + ", chunks that found the queue full " + overruns
                        + ", datagrams sent " + targets.status().get(0).sent());
                table.publish();
                assertTrue(losses[0] >= CONNECTIONS - 1, losses[0] + " losses");
                assertTrue(targets.status().get(0).sent() > 100, "datagrams");
            }
        }
        assertFlat(resources);
    }

    private static void await(Session session, long lines) throws InterruptedException {
        long start = System.nanoTime();
        while (session.snapshot().lines() < lines) {
            assertTrue(
                    System.nanoTime() - start < PATIENCE_NANOS,
                    session.snapshot().lines() + " lines");
            TimeUnit.MILLISECONDS.sleep(2);
        }
    }

    private static BenchTable table(String name, String title, Resources resources) {
        BenchTable table = new BenchTable(name, title, "", "heap after GC, MB", "threads", "descriptors");
        for (Look look : resources.looks()) {
            table.row(
                    look.when(),
                    BenchTable.figure(look.heapMb(), 2),
                    Integer.toString(look.threads()),
                    Long.toString(look.descriptors()));
        }
        return table.figure(
                "heap of the last third at most 2 MB above the first",
                BenchTable.figure(resources.heapGrowthMb(), 2) + " MB",
                resources.heapGrowthMb() < MOST_GROWTH_MB);
    }

    private static void assertFlat(Resources resources) {
        assertTrue(resources.heapGrowthMb() < MOST_GROWTH_MB, resources.heapGrowthMb() + " MB");
        assertTrue(resources.isConstant(Look::threads), "threads " + resources.looks());
        assertTrue(resources.isConstant(Look::descriptors), "descriptors " + resources.looks());
    }
}
