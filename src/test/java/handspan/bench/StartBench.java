package handspan.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.Pty;
import handspan.TestRooms;
import handspan.profile.ProfileFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** From the start of the packaged program to its first message, and to the first that sounds. */
@Tag("bench")
@DisabledOnOs(OS.WINDOWS)
class StartBench {
    private static final Path IMAGE = Path.of("target", "dist", "handspan");
    private static final int RUNS = 7;
    private static final double MOST_MS = 1000;
    private static final long PATIENCE_MS = 10_000;
    private static final double BOARD_LINES_PER_S = 100;

    /** What one start gave, ms. */
    private record Start(double firstMs, double soundMs) {}

    /** Starts a program that sends to a port. */
    private interface Starter {
        Child start(String target) throws Exception;
    }

    @Test
    void startToFirstMessage(@TempDir Path profiles) throws Exception {
        BenchTable table = new BenchTable(
                "5-start",
                "(5) Start of 'java -jar handspan.jar play ... --go' to its first message, ms (7 runs each)",
                "source",
                "first message",
                "least..most",
                "first with a hand",
                "least..most");
        double simulated = row(
                table, "sim:hall, a board that boots at the same time", target -> Child.program(playSimulated(target)));
        String unpacked = rowsOfTheImage(table);
        new ProfileFolder(profiles).save(TestRooms.twoDistances(BOARD_LINES_PER_S));
        double onPort;
        try (Pty board = new Pty()) {
            AtomicBoolean on = new AtomicBoolean(true);
            Thread printer = new Thread(() -> print(board, on), "board");
            printer.start();
            onPort = row(
                    table,
                    "pseudo-terminal, a board that runs already, 100 lines/s",
                    target -> Child.program(
                            "play",
                            board.port(),
                            "--room",
                            "test",
                            "--profiles",
                            profiles.toString(),
                            "--go",
                            "--send",
                            target));
            on.set(false);
            printer.join();
        }
        double most = Math.max(simulated, onPort);
        table.figure("under 1 s to the first message", BenchTable.figure(most, 0) + " ms", most < MOST_MS)
                .note(unpacked)
                .note("five readings are dropped after each connect while sensors settle, two must agree;"
                        + " the simulated board is silent for 200 ms, then prints 50 lines/s")
                .publish();
    }

    private static String[] playSimulated(String target) {
        return ("play sim:hall --room saltmill-hall --profiles profiles --go --send " + target).split(" ");
    }

    /** The application with its own runtime, first without and then with its archive of loaded classes. */
    private static String rowsOfTheImage(BenchTable table) throws Exception {
        if (!Files.isRegularFile(IMAGE.resolve("bin/handspan"))) {
            return "no application with its own runtime in " + IMAGE + ": mvn -Pdist package makes one";
        }
        Path home = Files.createTempDirectory("handspan-image");
        try {
            run("cp", "-r", IMAGE + "/.", home.toString());
            Files.deleteIfExists(home.resolve("lib/app/handspan.jsa"));
            Path launcher = home.resolve("bin/handspan");
            row(table, "the same, own runtime, no archive", target -> Child.image(launcher, playSimulated(target)));
            run(home.resolve("bin/handspan-quickstart").toString());
            row(table, "the same, with its archive", target -> Child.image(launcher, playSimulated(target)));
        } finally {
            run("rm", "-rf", home.toString());
        }
        return "own runtime: " + IMAGE + ", its archive made by handspan-quickstart";
    }

    private static void run(String... command) throws Exception {
        assertEquals(0, new ProcessBuilder(command).inheritIO().start().waitFor(), String.join(" ", command));
    }

    private static double row(BenchTable table, String name, Starter starter) throws Exception {
        double[] first = new double[RUNS];
        double[] sound = new double[RUNS];
        for (int i = 0; i < RUNS; i++) {
            Start start = measure(starter);
            first[i] = start.firstMs();
            sound[i] = start.soundMs();
        }
        Quantiles firsts = new Quantiles(first);
        Quantiles sounds = new Quantiles(sound);
        table.row(name, median(firsts), range(firsts), median(sounds), range(sounds));
        return firsts.median();
    }

    private static String median(Quantiles ms) {
        return BenchTable.figure(ms.median(), 0);
    }

    private static String range(Quantiles ms) {
        return BenchTable.figure(ms.at(0), 0) + ".." + BenchTable.figure(ms.most(), 0);
    }

    private static Start measure(Starter starter) throws Exception {
        try (Datagrams datagrams = new Datagrams()) {
            String target = "udp:127.0.0.1:" + datagrams.port();
            long startNanos = System.nanoTime();
            try (Child child = starter.start(target)) {
                Optional<Datagram> sounding = Optional.empty();
                while (sounding.isEmpty() && System.nanoTime() - startNanos < PATIENCE_MS * 1_000_000) {
                    Thread.sleep(20);
                    sounding =
                            datagrams.all().stream().filter(Datagram::hasHand).findFirst();
                }
                assertTrue(sounding.isPresent(), "no hand in 10 s: " + child.words());
                List<Datagram> all = datagrams.all();
                return new Start(ms(all.get(0), startNanos), ms(sounding.orElseThrow(), startNanos));
            }
        }
    }

    private static double ms(Datagram datagram, long startNanos) {
        return (datagram.timeNanos() - startNanos) / 1e6;
    }

    /** A hand that moves slowly to and fro. */
    private static void print(Pty board, AtomicBoolean on) {
        for (int i = 0; on.get(); i++) {
            board.write(String.format(Locale.ROOT, "%.1f,200\n", 300 + 100 * Math.sin(i / 100.0)));
            try {
                Thread.sleep(Math.round(1000 / BOARD_LINES_PER_S));
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }
}
