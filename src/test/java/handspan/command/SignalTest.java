package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.Program;
import handspan.Pty;
import handspan.Waits;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The program, told to end while it plays, as a receiver hears it. All start together, so that their starts overlap.
 * Exit codes are 128 + number of the signal, as shells have it (POSIX: SIGHUP 1, SIGINT 2, SIGTERM 15).
 */
@DisabledOnOs(OS.WINDOWS)
class SignalTest {
    /** A fade of 60 ms at 200 frames a second, with as many again for a machine that is busy. */
    private static final int MOST_FADING_FRAMES = 24;

    /** Five bundles at 0, 25 .. 100 ms; a receiver that wakes up late sees a part of that. */
    private static final double LEAST_SPREAD_MS = 50;

    /** An end that waits for a fade that is never over takes 2.5 s and more. */
    private static final double PROMPT_MS = 2_000;

    private static final double AUDIBLE01 = 0.001;

    private enum Case {
        TERM,
        INT,
        HUP,
        TWICE,
        MUTED,
        WAITING,
        LOST
    }

    /** One run of the program and what it sends. */
    private record Run(Program program, Datagrams heard) {
        static Run of(Path folder, String source, String... more) throws IOException {
            Datagrams heard = new Datagrams();
            List<String> words = new ArrayList<>(
                    List.of("play", source, "--room", "saltmill-hall", "--profiles", "profiles", "--json", "--send"));
            words.add("udp:127.0.0.1:" + heard.port());
            words.addAll(List.of(more));
            return new Run(Program.start(folder, words.toArray(new String[0])), heard);
        }

        void awaitSound() {
            Waits.until(
                    () -> {
                        List<Datagram> all = heard.all();
                        return !all.isEmpty() && all.get(all.size() - 1).gain01() > AUDIBLE01;
                    },
                    program::words);
        }

        void awaitWords(String words) {
            Waits.until(() -> program.out().contains(words), program::words);
        }

        /** Ends it by signals, one straight after the other. */
        List<Datagram> ended(int exitCode, String... signals) throws IOException, InterruptedException {
            long startNanos = System.nanoTime();
            for (String signal : signals) {
                program.signal(signal);
            }
            assertEquals(exitCode, program.await(), program.words());
            double tookMs = (System.nanoTime() - startNanos) / 1e6;
            assertTrue(tookMs < PROMPT_MS, "took " + tookMs + " ms");
            return heard.all();
        }

        void close() throws IOException {
            program.close();
            heard.close();
        }
    }

    @TempDir
    static Path folder;

    private static final Map<Case, Run> RUNS = new EnumMap<>(Case.class);
    private static Pty mute;
    private static Pty board;

    @BeforeAll
    static void allStart() throws IOException {
        mute = new Pty();
        board = new Pty();
        for (Case some : Case.values()) {
            RUNS.put(
                    some,
                    switch (some) {
                        case MUTED -> Run.of(folder, "sim:hall");
                        case WAITING -> Run.of(folder, mute.port(), "--go");
                        case LOST -> Run.of(folder, board.port(), "--go");
                        default -> Run.of(folder, "sim:hall", "--go");
                    });
        }
    }

    @AfterAll
    static void allEnd() throws IOException {
        for (Run run : RUNS.values()) {
            run.close();
        }
        mute.close();
        board.close();
    }

    private static Run run(Case some) {
        return Objects.requireNonNull(RUNS.get(some));
    }

    @Test
    void terminatedItFadesFirst() throws Exception {
        Run run = run(Case.TERM);
        run.awaitSound();
        assertFadedOut(run.ended(143, "TERM"));
    }

    @Test
    void interruptedItFadesFirst() throws Exception {
        Run run = run(Case.INT);
        run.awaitSound();
        assertFadedOut(run.ended(130, "INT"));
    }

    @Test
    void hungUpItFadesFirst() throws Exception {
        Run run = run(Case.HUP);
        run.awaitSound();
        assertFadedOut(run.ended(129, "HUP"));
    }

    @Test
    void impatienceDoesNotShortenTheFade() throws Exception {
        Run run = run(Case.TWICE);
        run.awaitSound();
        assertFadedOut(run.ended(143, "TERM", "TERM"));
    }

    @Test
    void mutedItEndsAtOnceAndHasNeverSounded() throws Exception {
        Run run = run(Case.MUTED);
        run.awaitWords("\"state\":\"muted\"");
        assertSilent(run.ended(143, "TERM"));
    }

    @Test
    void waitingForABoardItEndsAtOnce() throws Exception {
        Run run = run(Case.WAITING);
        run.awaitWords("\"state\":\"away\"");
        assertSilent(run.ended(143, "TERM"));
    }

    @Test
    void withItsCablePulledItEndsAtOnce() throws Exception {
        Run run = run(Case.LOST);
        Waits.until(
                () -> {
                    board.write("250,700\n");
                    sleep(10);
                    List<Datagram> all = run.heard().all();
                    return !all.isEmpty() && all.get(all.size() - 1).gain01() > AUDIBLE01;
                },
                run.program()::words);
        board.close();
        run.awaitWords("\"state\":\"lost\"");
        List<Datagram> all = run.ended(143, "TERM");
        assertRepeated(silentEnd(all), all);
    }

    private static void sleep(long ms) {
        try {
            TimeUnit.MILLISECONDS.sleep(ms);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static boolean isSilent(Datagram datagram) {
        return datagram.gain01() == 0 && !datagram.hasHand();
    }

    private static void assertSilent(List<Datagram> all) {
        assertTrue(all.size() >= 5, all.size() + " bundles");
        assertTrue(all.stream().allMatch(SignalTest::isSilent));
    }

    /** From the bundle that says "muted" on, level only falls, is soon at 0, and that is said five times. */
    private static void assertFadedOut(List<Datagram> all) {
        int from = IntStream.range(0, all.size())
                .filter(i -> all.get(i).messages().stream()
                        .anyMatch(message -> message.address().endsWith("/state")
                                && message.arguments().get(0).equals("muted")))
                .findFirst()
                .orElseThrow();
        List<Double> levels =
                all.subList(from, all.size()).stream().map(Datagram::gain01).toList();
        List<Double> falling = new ArrayList<>(levels);
        falling.sort(Collections.reverseOrder());
        assertEquals(falling, levels, "level never rises");
        assertTrue(all.get(from - 1).gain01() > AUDIBLE01, "it had sounded");
        int silent = silentEnd(all);
        assertTrue(silent - from <= MOST_FADING_FRAMES, (silent - from) + " frames to silence");
        assertRepeated(silent, all);
    }

    /** Where the silence begins that lasts to the end. */
    private static int silentEnd(List<Datagram> all) {
        int at = all.size();
        while (at > 0 && isSilent(all.get(at - 1))) {
            at--;
        }
        return at;
    }

    private static void assertRepeated(int from, List<Datagram> all) {
        assertTrue(all.size() - from >= 5, (all.size() - from) + " silent bundles at the end");
        double spreadMs = (all.get(all.size() - 1).timeNanos() - all.get(from).timeNanos()) / 1e6;
        assertTrue(spreadMs >= LEAST_SPREAD_MS, "told within " + spreadMs + " ms");
    }
}
