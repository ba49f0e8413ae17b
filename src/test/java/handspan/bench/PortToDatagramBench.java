package handspan.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.Pty;
import handspan.TestRooms;
import handspan.profile.ProfileFolder;
import handspan.room.Zone;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * From a line written into a pseudo-terminal to the datagram received, beside a relay that understands nothing. Writer
 * and receiver are this JVM, with one clock; the program and the relay are each a JVM of their own, fresh for each run.
 */
@Tag("bench")
@DisabledOnOs(OS.WINDOWS)
class PortToDatagramBench {
    private static final int RUNS = 7;
    private static final double LINES_PER_S = 1000;
    private static final double WARM_UP_S = 3;
    private static final double MEASURED_S = 5;
    private static final double MOST_TIMES = 1.5;
    private static final String BAUD = "115200";
    private static final int MOST_ATTEMPTS = 3;

    /** A hand that has gone makes frames of its own after 180 ms. */
    /** Share of frames that may be told to a line too late at first. */
    private static final double MISTOLD01 = 0.02;

    /** Frames to either side that tell how many lines had none. */
    private static final int AROUND = 50;

    private static final long LAST_FRAME_NANOS = 100_000_000;

    private static final Zone ZONE =
            TestRooms.twoDistances(LINES_PER_S).room().pitch().zone();

    @TempDir
    Path profiles;

    /** What one run gave. */
    private record Run(Quantiles micros, double cpu01) {}

    /** What is measured. */
    private enum Subject {
        RELAY,
        PROGRAM
    }

    private int repeated;

    @Test
    void portToDatagram() throws Exception {
        new ProfileFolder(profiles).save(TestRooms.twoDistances(LINES_PER_S));
        BenchTable table = new BenchTable(
                "3-port-to-datagram",
                "(3) Line written into a pseudo-terminal to datagram received, 1000 lines/s, glide off, microseconds"
                        + " (medians of 7 interleaved runs of 5 s, each after 3 s)",
                "",
                "p50",
                "p50 least..most",
                "p99",
                "p99.9",
                "processor");
        List<Run> relay = new ArrayList<>();
        List<Run> program = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            relay.add(run(Subject.RELAY));
            program.add(run(Subject.PROGRAM));
        }
        row(table, "minimal relay", relay);
        row(table, "handspan play --no-glide", program);
        double times = median(program, 0.5) / median(relay, 0.5);
        double[] pairs = new double[RUNS];
        for (int i = 0; i < RUNS; i++) {
            pairs[i] = program.get(i).micros().median() / relay.get(i).micros().median();
        }
        Quantiles each = new Quantiles(pairs);
        table.figure(
                        "p50 within 1.5 times the relay's",
                        BenchTable.figure(times, 2) + " times (run by run " + BenchTable.figure(each.at(0), 2) + ".."
                                + BenchTable.figure(each.most(), 2) + ")",
                        times <= MOST_TIMES)
                .note(
                        "the relay reads bytes from the same serial library, cuts at line ends and sends each line as it is")
                .note(repeated + " of " + 2 * RUNS + " runs were repeated because datagrams did not match lines")
                .publish();
    }

    private static void row(BenchTable table, String name, List<Run> runs) {
        Quantiles medians = new Quantiles(
                runs.stream().mapToDouble(run -> run.micros().median()).toArray());
        table.row(
                name,
                BenchTable.figure(median(runs, 0.5), 0),
                BenchTable.figure(medians.at(0), 0) + ".." + BenchTable.figure(medians.most(), 0),
                BenchTable.figure(median(runs, 0.99), 0),
                BenchTable.figure(median(runs, 0.999), 0),
                BenchTable.figure(
                                100
                                        * new Quantiles(runs.stream()
                                                        .mapToDouble(Run::cpu01)
                                                        .toArray())
                                                .median(),
                                1)
                        + " %");
    }

    private static double median(List<Run> runs, double share01) {
        return new Quantiles(runs.stream()
                        .mapToDouble(run -> run.micros().at(share01))
                        .toArray())
                .median();
    }

    private Run run(Subject subject) throws Exception {
        for (int attempt = 1; ; attempt++) {
            try {
                return tryRun(subject);
            } catch (IllegalStateException e) {
                if (attempt == MOST_ATTEMPTS) {
                    throw e;
                }
                repeated++;
            }
        }
    }

    private Run tryRun(Subject subject) throws Exception {
        try (Pty board = new Pty();
                Datagrams datagrams = new Datagrams();
                Child child = start(subject, board, datagrams)) {
            awaitFirst(datagrams, child);
            LineFeed feed = new LineFeed(board, LINES_PER_S, (int) ((WARM_UP_S + MEASURED_S) * LINES_PER_S) + 1);
            long startNanos = System.nanoTime();
            feed.print(() -> System.nanoTime() - startNanos < WARM_UP_S * 1e9);
            int warm = feed.count();
            long warmNanos = System.nanoTime();
            Duration before = child.processorTime();
            feed.print(() -> System.nanoTime() - warmNanos < MEASURED_S * 1e9);
            double cpu = child.processorTime().minus(before).toNanos() / (double) (System.nanoTime() - warmNanos);
            Thread.sleep(LAST_FRAME_NANOS / 1_000_000);
            List<Datagram> all = datagrams.all();
            return new Run(subject == Subject.RELAY ? ofRelay(feed, all, warm) : ofProgram(feed, all, warm), cpu);
        }
    }

    private Child start(Subject subject, Pty board, Datagrams datagrams) throws Exception {
        String port = Integer.toString(datagrams.port());
        return subject == Subject.RELAY
                ? Child.of(Relay.class, board.port(), BAUD, port)
                : Child.program(
                        "play",
                        board.port(),
                        "--room",
                        "test",
                        "--profiles",
                        profiles.toString(),
                        "--go",
                        "--no-glide",
                        "--send",
                        "udp:127.0.0.1:" + port);
    }

    /** Both say something as soon as their port is open. */
    private static void awaitFirst(Datagrams datagrams, Child child) throws Exception {
        for (int i = 0; i < 1000 && datagrams.all().isEmpty(); i++) {
            Thread.sleep(10);
        }
        assertTrue(!datagrams.all().isEmpty(), "nothing came: " + child.words());
    }

    /** The relay's datagrams are the lines. */
    private static Quantiles ofRelay(LineFeed feed, List<Datagram> all, int warm) {
        List<Datagram> lines = all.subList(1, all.size());
        return micros(feed, lines, warm, i -> {
            String text = new String(lines.get(i).bytes(), StandardCharsets.US_ASCII);
            return (int) Math.rint(LineFeed.lineOf(Double.parseDouble(text.substring(0, text.indexOf(',')))));
        });
    }

    /**
     * The program's frames are one for each line, but that of lines which came at one moment only the newest sounds.
     * The place in a frame tells the number of its line, give or take what smoothing does to it: the median over the
     * frames around it tells how many lines have had none so far.
     */
    private static Quantiles ofProgram(LineFeed feed, List<Datagram> all, int warm) {
        long lastNanos = feed.writtenNanos(feed.count() - 1) + LAST_FRAME_NANOS;
        List<Datagram> frames = all.stream()
                .filter(datagram -> datagram.timeNanos() < lastNanos && datagram.hasHand())
                .toList();
        double[] ahead = new double[frames.size()];
        for (int i = 0; i < ahead.length; i++) {
            ahead[i] = LineFeed.lineOf(ZONE.mm((Float) frames.get(i).argument("/place"))) - i;
        }
        int[] line = new int[ahead.length];
        double unsure = 0;
        for (int i = 0; i < line.length; i++) {
            double median = new Quantiles(
                            Arrays.copyOfRange(ahead, Math.max(0, i - AROUND), Math.min(ahead.length, i + AROUND + 1)))
                    .median();
            line[i] = i + (int) Math.rint(median);
            unsure += Math.abs(median - Math.rint(median)) > 0.4 ? 1 : 0;
            if (i > 0 && line[i] <= line[i - 1]) {
                line[i] = line[i - 1] + 1;
            }
        }
        if (unsure > 0.02 * line.length) {
            throw new IllegalStateException(unsure + " frames of " + line.length + " can't be told to a line");
        }
        return micros(feed, frames, warm, i -> line[i]);
    }

    private static Quantiles micros(LineFeed feed, List<Datagram> datagrams, int warm, IntUnaryOperator lineOf) {
        List<Double> micros = new ArrayList<>();
        int early = 0;
        for (int i = 0; i < datagrams.size(); i++) {
            int line = lineOf.applyAsInt(i);
            // around a line that had no frame a few are told to the one after theirs, which was not written yet
            while (line > 0 && line < feed.count() && datagrams.get(i).timeNanos() <= feed.writtenNanos(line)) {
                line--;
                early++;
            }
            if (line >= warm && line < feed.count()) {
                micros.add((datagrams.get(i).timeNanos() - feed.writtenNanos(line)) / 1000.0);
            }
        }
        if (micros.size() < 0.95 * (feed.count() - warm)) {
            throw new IllegalStateException(micros.size() + " datagrams of " + (feed.count() - warm) + " lines");
        }
        if (early > MISTOLD01 * datagrams.size()) {
            throw new IllegalStateException(early + " datagrams before their lines: told to the wrong ones");
        }
        return new Quantiles(micros.stream().mapToDouble(Double::doubleValue).toArray());
    }
}
