package handspan.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Pty;
import handspan.TestRooms;
import handspan.music.send.SendLine;
import handspan.music.send.SendValue;
import handspan.outside.osc.packet.ReceivedMessage;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.show.window.WindowProbe;
import handspan.show.window.WindowProbe.Fate;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * From a line written into a pseudo-terminal to the datagram received, with and without a window in the program's own
 * process: whatever its event thread suffers, sound must not wait for it.
 */
@Tag("bench")
@DisabledOnOs(OS.WINDOWS)
class WindowDelayBench {
    private static final int RUNS = 5;
    private static final double LINES_PER_S = 1000;
    private static final double WARM_UP_S = 2;
    private static final double MEASURED_S = 5;
    private static final long LONGEST_WAIT_MS = 5000;
    private static final int LATEST = 20;
    private static final String NUMBER = "/raw/1";

    @TempDir
    Path profiles;

    /** What one run gave. */
    private record Run(Quantiles micros, double cpu01) {}

    @Test
    void lineToDatagramWithAWindowOpen() throws Exception {
        RoomProfile room = TestRooms.twoDistances(LINES_PER_S);
        List<SendLine> lines = new ArrayList<>(room.send().lines());
        lines.add(SendLine.byDefault(SendValue.RAW, "1", "test"));
        new ProfileFolder(profiles).save(room.with(room.send().of(lines)));
        Map<Fate, List<Run>> runs = new EnumMap<>(Fate.class);
        Optional<VirtualScreen> screen = VirtualScreen.start();
        try {
            for (int i = 0; i < RUNS; i++) {
                for (Fate fate : Fate.values()) {
                    runs.computeIfAbsent(fate, none -> new ArrayList<>()).add(run(fate, screen));
                }
            }
        } finally {
            screen.ifPresent(VirtualScreen::close);
        }
        BenchTable table = new BenchTable(
                "9-window-delay",
                "(9) Line written into a pseudo-terminal to datagram received, 1000 lines/s, glide off, microseconds"
                        + " (medians of " + RUNS + " interleaved runs of 5 s, each after 2 s)",
                "the program's window",
                "p50",
                "p95",
                "p99",
                "longest",
                "longest of all",
                "processor");
        runs.forEach((fate, all) -> table.row(
                words(fate),
                BenchTable.figure(median(all, 0.5), 0),
                BenchTable.figure(median(all, 0.95), 0),
                BenchTable.figure(median(all, 0.99), 0),
                BenchTable.figure(median(all, 1), 0),
                BenchTable.figure(
                        all.stream()
                                .mapToDouble(run -> run.micros().most())
                                .max()
                                .orElseThrow(),
                        0),
                BenchTable.figure(
                                100
                                        * new Quantiles(all.stream()
                                                        .mapToDouble(Run::cpu01)
                                                        .toArray())
                                                .median(),
                                1)
                        + " %"));
        table.note(
                        screen.isPresent()
                                ? "a real window of 1280 x 800 on a virtual screen"
                                : "no virtual screen here: the window's content drawn into memory")
                .note("stuck: two seconds of every 2.2; two charts that move, thirty pictures a second")
                .publish();
    }

    private static String words(Fate fate) {
        return switch (fate) {
            case NONE -> "none";
            case OPEN -> "open";
            case BLOCKED -> "its event thread blocked";
            case SPINNING -> "its event thread reckoning";
            case MINIMISED -> "minimised";
        };
    }

    private static double median(List<Run> runs, double share01) {
        return new Quantiles(runs.stream()
                        .mapToDouble(run -> run.micros().at(share01))
                        .toArray())
                .median();
    }

    private Run run(Fate fate, Optional<VirtualScreen> screen) throws Exception {
        try (Pty board = new Pty();
                Datagrams datagrams = new Datagrams();
                Child child = Child.onScreen(
                        screen.map(VirtualScreen::name),
                        WindowProbe.class,
                        board.port(),
                        profiles.toString(),
                        "test",
                        "udp:127.0.0.1:" + datagrams.port(),
                        fate.name())) {
            for (int i = 0; i < 2000 && datagrams.all().isEmpty(); i++) {
                Thread.sleep(10);
            }
            assertTrue(!datagrams.all().isEmpty(), "nothing came: " + child.words());
            LineFeed feed = new LineFeed(board, LINES_PER_S, (int) ((WARM_UP_S + MEASURED_S) * LINES_PER_S) + 1);
            long startNanos = System.nanoTime();
            feed.print(() -> System.nanoTime() - startNanos < WARM_UP_S * 1e9);
            int warm = feed.count();
            long warmNanos = System.nanoTime();
            Duration before = child.processorTime();
            feed.print(() -> System.nanoTime() - warmNanos < MEASURED_S * 1e9);
            double cpu = child.processorTime().minus(before).toNanos() / (double) (System.nanoTime() - warmNanos);
            for (int i = 0; i < LONGEST_WAIT_MS / 10 && !knows(datagrams, feed.count() - 1); i++) {
                Thread.sleep(10);
            }
            return new Run(micros(feed, datagrams.all(), warm), cpu);
        }
    }

    /** Whether one of the latest datagrams tells of a line; the last of all may tell of no hand. */
    private static boolean knows(Datagrams datagrams, int line) {
        List<Datagrams.Datagram> all = datagrams.all();
        return all.subList(Math.max(0, all.size() - LATEST), all.size()).stream()
                .anyMatch(datagram -> line(datagram) >= line);
    }

    /**
     * How long each line waited for the first frame that knows it or a later one. The number that the board printed is
     * sent with each frame, and it tells the line.
     */
    private static Quantiles micros(LineFeed feed, List<Datagrams.Datagram> all, int warm) {
        double[] micros = new double[feed.count() - warm];
        int next = warm;
        for (Datagrams.Datagram datagram : all) {
            int known = line(datagram);
            while (next <= known && next < feed.count()) {
                micros[next - warm] = (datagram.timeNanos() - feed.writtenNanos(next)) / 1000.0;
                next++;
            }
        }
        assertEquals(feed.count(), next, "lines that no frame has told of");
        return new Quantiles(micros);
    }

    private static int line(Datagrams.Datagram datagram) {
        for (ReceivedMessage message : datagram.messages()) {
            if (message.address().endsWith(NUMBER)
                    && message.arguments().get(0) instanceof Float mm
                    && mm >= LineFeed.FIRST_MM) {
                return (int) Math.rint(LineFeed.lineOf(mm));
            }
        }
        return -1;
    }
}
