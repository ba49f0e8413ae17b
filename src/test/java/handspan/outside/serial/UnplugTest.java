package handspan.outside.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.Pty;
import handspan.TestRooms;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.live.session.Engine;
import handspan.live.session.Session;
import handspan.music.send.PlayState;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Cables pulled and plugged in again, on real pseudo-terminals, under one name: a link that is pointed to the new one,
 * as a system does with the names of its devices. 50 lines a second.
 */
@Timeout(120)
@EnabledOnOs(OS.LINUX)
class UnplugTest {
    private static final long LONGEST_MS = 15_000;
    /** Fade begun at 50 lines a second, ms. */
    private static final long FADE_MS = 300;
    /** Playing again, from the first good line, ms. */
    private static final long AGAIN_MS = 1000;
    /** Share of a core that the reader of a missing port may use. */
    private static final double IDLE_CORE01 = 0.05;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

    /** What cycles took. */
    private static final class Tally {
        private final List<Long> fadeMs = new ArrayList<>();
        private final List<Long> againMs = new ArrayList<>();
        private long unpluggedNanos;
        private long cpuNanos;

        void add(Tally other) {
            fadeMs.addAll(other.fadeMs);
            againMs.addAll(other.againMs);
            unpluggedNanos += other.unpluggedNanos;
            cpuNanos += other.cpuNanos;
        }
    }

    /** A board that prints from when it is plugged in until it is pulled. */
    private static final class Board {
        private final Path name;
        private final Pty pty = new Pty();
        private final Thread printer;
        private volatile boolean on = true;

        Board(Path name, String first) throws IOException {
            this.name = name;
            Path fresh = name.resolveSibling(name.getFileName() + ".new");
            Files.createSymbolicLink(fresh, Path.of(pty.port()));
            Files.move(fresh, name, StandardCopyOption.ATOMIC_MOVE);
            printer = new Thread(() -> print(first), "test board");
            printer.start();
        }

        private void print(String first) {
            pty.write(first);
            try {
                for (int i = 0; on; i++) {
                    pty.write((298 + i % 5) + ",300\r\n");
                    Thread.sleep(20);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        /**
         * Pulls it; its name goes with it, for the system gives the number of its terminal to the next one.
         *
         * @return when, ns
         */
        long pull() throws InterruptedException, IOException {
            Files.deleteIfExists(name);
            long nanos = System.nanoTime();
            pty.close();
            on = false;
            printer.join();
            return nanos;
        }
    }

    private static long awaitMs(String what, long sinceNanos, BooleanSupplier condition) throws InterruptedException {
        while (!condition.getAsBoolean()) {
            assertTrue(System.nanoTime() - sinceNanos < LONGEST_MS * Nanos.PER_MS, what + " did not come about");
            Thread.sleep(2);
        }
        return (System.nanoTime() - sinceNanos) / Nanos.PER_MS;
    }

    private Tally cycles(Path name, int count, long seed) throws Exception {
        Random random = new Random(seed);
        Tally tally = new Tally();
        FrameList frames = new FrameList();
        Board board = new Board(name, "");
        Engine engine = new Engine(
                new Engine.Plugs(TestRooms.SHAPE, List.of(frames), LineTap.NONE, event -> {}), System.nanoTime());
        try (Session session =
                Session.start(engine, new SerialOpener(name.toString(), 115_200, null), System::nanoTime)) {
            RoomProfile profile = TestRooms.twoDistances(50);
            session.submit(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL.muted(false)));
            awaitMs("playing", System.nanoTime(), () -> isPlaying(frames));
            Thread reader = reader(name);
            for (int i = 0; i < count; i++) {
                long pulledNanos = board.pull();
                tally.fadeMs.add(awaitMs("the loss", pulledNanos, () -> isLost(frames)));
                long cpuNanos = threads.getThreadCpuTime(reader.getId());
                Thread.sleep(400 + random.nextInt(600));
                tally.cpuNanos += threads.getThreadCpuTime(reader.getId()) - cpuNanos;
                tally.unpluggedNanos += System.nanoTime() - pulledNanos;
                long readings = session.snapshot().readings();
                long lines = session.snapshot().lines();
                board = new Board(name, random.nextBoolean() ? "" : "9,30\r\nstarting ...\r\n");
                awaitMs("a line", System.nanoTime(), () -> session.snapshot().lines() > lines);
                tally.againMs.add(awaitMs("playing again", System.nanoTime(), () -> isPlaying(frames)));
                assertTrue(session.snapshot().readings() > readings);
                Thread.sleep(random.nextInt(300));
            }
        } finally {
            board.pull();
        }
        return tally;
    }

    private static boolean isPlaying(FrameList frames) {
        return frames.status().sent() > 0
                && frames.last().state() == PlayState.PLAYING
                && frames.last().hand();
    }

    private static boolean isLost(FrameList frames) {
        return frames.last().state() == PlayState.LOST && !frames.last().hand();
    }

    private static Thread reader(Path name) {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().equals("reader " + name))
                .findFirst()
                .orElseThrow();
    }

    private static long sessionThreads() {
        return Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> thread.getName().startsWith("reader ")
                        || thread.getName().startsWith("path ")
                        || thread.getName().equals("test board"))
                .count();
    }

    /** Open ends of pseudo-terminals. */
    private static long openTerminals() throws IOException {
        long count;
        try (Stream<Path> descriptors = Files.list(Path.of("/proc/self/fd"))) {
            count = descriptors.filter(UnplugTest::isTerminal).count();
        }
        return count;
    }

    private static boolean isTerminal(Path descriptor) {
        try {
            String target = Files.readSymbolicLink(descriptor).toString();
            return target.startsWith("/dev/pts/") || target.contains("ptmx");
        } catch (IOException e) {
            // that of the listing itself, closed by now
            return false;
        }
    }

    private Tally run(Path folder, int instruments, int cycles) throws Exception {
        long threadsBefore = sessionThreads();
        long terminalsBefore = openTerminals();
        Tally all = new Tally();
        ExecutorService pool = Executors.newFixedThreadPool(instruments);
        try {
            List<Future<Tally>> runs = new ArrayList<>();
            for (int i = 0; i < instruments; i++) {
                Path name = folder.resolve("ttyTEST" + i);
                long seed = i;
                runs.add(pool.submit(() -> cycles(name, cycles, seed)));
            }
            for (Future<Tally> run : runs) {
                all.add(run.get());
            }
        } finally {
            pool.shutdown();
        }
        assertEquals(threadsBefore, sessionThreads(), "threads");
        assertEquals(terminalsBefore, openTerminals(), "descriptors");
        return all;
    }

    private static void judge(Tally tally, int cycles) {
        String figures = "fade begun after " + tally.fadeMs + " ms, playing after " + tally.againMs + " ms, reader at "
                + 100.0 * tally.cpuNanos / tally.unpluggedNanos + " % of a core";
        assertEquals(cycles, tally.againMs.size());
        assertTrue(tally.fadeMs.stream().allMatch(ms -> ms <= FADE_MS), figures);
        assertTrue(tally.againMs.stream().allMatch(ms -> ms <= AGAIN_MS), figures);
        assertTrue(tally.cpuNanos < IDLE_CORE01 * tally.unpluggedNanos, figures);
    }

    @Test
    void threeCyclesLeaveNothingBehind(@TempDir Path folder) throws Exception {
        judge(run(folder, 1, 3), 3);
    }

    @Test
    @Tag("deep")
    void aHundredCyclesOnTenInstrumentsAtOnceLeaveNothingBehind(@TempDir Path folder) throws Exception {
        judge(run(folder, 10, 10), 100);
    }
}
