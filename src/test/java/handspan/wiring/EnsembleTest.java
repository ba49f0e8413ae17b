package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.Pty;
import handspan.TestRooms;
import handspan.Waits;
import handspan.live.path.FrameTarget;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.LinkException;
import handspan.live.session.LinkState;
import handspan.live.session.Snapshot;
import handspan.music.send.NetworkTarget;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Instruments on pseudo-terminals, 50 lines a second, each to a receiver on this machine. */
@Timeout(90)
@DisabledOnOs(OS.WINDOWS)
class EnsembleTest {
    /** A receiver with the watchdog that is asked of it waits for 1.5 s; frames are due every 5 ms. */
    private static final double MOST_GAP_MS = 500;

    private static final long SETTLED_NANOS = 700_000_000L;
    private static final long WATCHED_NANOS = 1_500_000_000L;

    @TempDir
    Path folder;

    private final List<AutoCloseable> open = new ArrayList<>();

    @AfterEach
    void allIsClosed() throws Exception {
        for (AutoCloseable each : open) {
            each.close();
        }
    }

    /** A board that prints a line every 20 ms until it is pulled. */
    private final class Board implements AutoCloseable {
        private final Pty pty = new Pty();
        private final Thread printer;
        private volatile IntFunction<String> lines;
        private volatile boolean on = true;

        Board(IntFunction<String> first) throws IOException {
            lines = first;
            printer = new Thread(this::print, "test board");
            printer.start();
            open.add(this);
        }

        private void print() {
            try {
                for (int i = 0; on; i++) {
                    pty.write(lines.apply(i));
                    Thread.sleep(20);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }

        @Override
        public void close() throws InterruptedException {
            on = false;
            pty.close();
            printer.join();
        }
    }

    private Datagrams ears() throws IOException {
        Datagrams ears = new Datagrams();
        open.add(ears);
        return ears;
    }

    private static Seat seat(int number, String name, Datagrams ears, double noiseMm, Tuning tuning)
            throws IOException {
        RoomProfile room = TestRooms.twoDistances(50, tuning, noiseMm);
        RoomProfile sending = room.with(room.send()
                .renamed("Test reed", name)
                .to(List.of(new NetworkTarget(NetworkTarget.Protocol.UDP, "127.0.0.1", ears.port()))));
        return new Seat(number, name, sending, sending.tunings(), tuning, PathSettings.USUAL.muted(false));
    }

    private static WaysOut ways(Seat seat) throws IOException {
        return new WaysOut(Targets.open(seat.profile().send()), Listening.open(null, false, true), null);
    }

    private SessionLog log() {
        return new SessionLog(folder, "play");
    }

    private Member member(Seat seat, String port) throws IOException {
        Source source = Source.parse(port);
        return new Member(
                seat,
                source,
                ways(seat),
                null,
                () -> OpenSource.open(source, SourceOptions.USUAL, TestRooms.SHAPE, log()));
    }

    private Member member(int number, String name, Datagrams ears, Board board) throws IOException {
        return member(seat(number, name, ears, 0, Tuning.usual()), board.pty.port());
    }

    /** What a steady instrument sends while others are in trouble: from when it has settled, for a while. */
    private static Set<String> settled(Datagrams ears) {
        Waits.until(() -> ears.all().stream().anyMatch(Datagram::hasHand));
        long fromNanos = ears.all().stream()
                        .filter(Datagram::hasHand)
                        .findFirst()
                        .orElseThrow()
                        .timeNanos()
                + SETTLED_NANOS;
        return between(ears, fromNanos, fromNanos + WATCHED_NANOS);
    }

    private static Set<String> between(Datagrams ears, long fromNanos, long toNanos) {
        Waits.until(() -> last(ears).timeNanos() >= toNanos);
        Set<String> different = new TreeSet<>();
        long before = fromNanos;
        for (Datagram datagram : ears.all()) {
            if (datagram.timeNanos() >= fromNanos && datagram.timeNanos() < toNanos) {
                different.add(HexFormat.of().formatHex(datagram.bytes()));
                double gapMs = (datagram.timeNanos() - before) / 1e6;
                assertTrue(gapMs < MOST_GAP_MS, "a gap of " + gapMs + " ms");
                before = datagram.timeNanos();
            }
        }
        return different;
    }

    private static Datagram last(Datagrams ears) {
        List<Datagram> all = ears.all();
        return all.get(all.size() - 1);
    }

    private static boolean plays(Datagrams ears) {
        return !ears.all().isEmpty() && last(ears).hasHand();
    }

    private static boolean seen(Member member, Predicate<Snapshot> what) {
        return member.snapshot().filter(what).isPresent();
    }

    private static String steady(int line) {
        return "300,200\r\n";
    }

    /** Two of noise, so that a sensor that stops can be told from a still hand. */
    private static String alive(int line) {
        return (298 + line * 7 % 5) + ",200\r\n";
    }

    private static Ensemble started(List<Member> members, boolean byTheClock) {
        Ensemble ensemble = Ensemble.of(members, byTheClock);
        ensemble.start();
        return ensemble;
    }

    private Set<String> alone() throws Exception {
        Datagrams ears = ears();
        try (Board board = new Board(EnsembleTest::steady);
                Ensemble ensemble = started(List.of(member(1, "Wren", ears, board)), true)) {
            assertEquals(1, ensemble.members().size());
            return settled(ears);
        }
    }

    @Test
    void whateverBecomesOfTheOthersOneSendsTheSameBytesAsWhenAlone() throws Exception {
        Set<String> alone = alone();
        // with and without the line that tells the state once a second
        assertEquals(2, alone.size(), alone::toString);
        Datagrams ears = ears();
        Datagrams others = ears();
        Board pulled = new Board(EnsembleTest::alive);
        Board garbled = new Board(EnsembleTest::alive);
        Board frozen = new Board(EnsembleTest::alive);
        Board silent = new Board(EnsembleTest::alive);
        AtomicBoolean fails = new AtomicBoolean();
        List<Member> members = List.of(
                member(1, "Wren", ears, new Board(EnsembleTest::steady)),
                member(2, "pulled", others, pulled),
                member(3, "garbled", others, garbled),
                member(seat(4, "frozen", others, 2, Tuning.usual()), frozen.pty.port()),
                member(5, "silent", others, silent),
                failing(seat(6, "failing", others, 0, Tuning.usual()), new Board(EnsembleTest::alive), fails),
                member(seat(7, "refused", others, 40, Tuning.usual().withSnap(Snap.STEPS)), "/dev/ttyHANDSPAN8"),
                member(seat(8, "missing", others, 0, Tuning.usual()), "/dev/ttyHANDSPAN9"));
        try (Ensemble ensemble = started(members, true)) {
            Waits.until(() -> plays(ears) && members.subList(1, 6).stream().allMatch(EnsembleTest::isPlaying));
            long fromNanos = Math.max(System.nanoTime(), ears.all().get(0).timeNanos() + SETTLED_NANOS);
            pulled.close();
            garbled.lines = line -> "\u0000\u00ff\u0013garbage" + "\u00fe".repeat(40) + "\r\n";
            frozen.lines = line -> "301,200\r\n";
            silent.lines = line -> "";
            fails.set(true);
            Waits.until(() -> seen(members.get(1), seen -> seen.link() == LinkState.LOST));
            Waits.until(() -> seen(members.get(2), seen -> seen.rejections().size() > 1 && !isPlaying(members.get(2))));
            Waits.until(() -> !sensorTrouble(members.get(3)).isEmpty());
            Waits.until(() -> seen(members.get(4), seen -> seen.link() != LinkState.UP));
            Waits.until(() -> seen(members.get(5), EnsembleTest::hasFailed));
            assertTrue(
                    members.get(6).trouble().contains("steps"), members.get(6).trouble());
            assertTrue(members.get(6).isOver());
            assertTrue(
                    members.get(7).trouble().contains("is not there"),
                    members.get(7).trouble());
            assertFalse(members.get(7).isOver());
            long toNanos = Math.max(System.nanoTime(), fromNanos + WATCHED_NANOS);
            assertEquals(alone, between(ears, fromNanos, toNanos));
            assertFalse(ensemble.members().get(0).isStuck(System.nanoTime()));
        }
        Datagram end = last(ears);
        assertEquals(0, end.gain01());
        assertFalse(end.hasHand());
    }

    private static boolean isPlaying(Member member) {
        return seen(
                member,
                seen -> seen.activity() instanceof ActivityView.Playing playing
                        && playing.frame().filter(SoundFrame::hand).isPresent());
    }

    private static String sensorTrouble(Member member) {
        return member.snapshot()
                .filter(seen -> seen.activity() instanceof ActivityView.Playing)
                .map(seen -> ((ActivityView.Playing) seen.activity()).sensorTrouble())
                .orElse("");
    }

    private static boolean hasFailed(Snapshot seen) {
        return seen.events().stream().anyMatch(event -> event.what() instanceof Event.Failed);
    }

    /** An instrument in whose path thread something goes wrong, even what no program should catch. */
    private Member failing(Seat seat, Board board, AtomicBoolean fails) throws IOException {
        Source source = Source.parse(board.pty.port());
        FrameTarget faulty = new FrameTarget() {
            @Override
            public void send(SoundFrame frame, boolean withState) {
                if (fails.getAndSet(false)) {
                    throw new StackOverflowError("made to fail");
                }
            }

            @Override
            public TargetStatus status() {
                return new TargetStatus("faulty", 0, 0, 0, "");
            }

            @Override
            public void close() {}
        };
        return new Member(seat, source, ways(seat), null, () -> {
            SwitchedOut out = new SwitchedOut();
            RecordingSocket recordings = new RecordingSocket();
            Rig rig = Rigs.openWith(source, SourceOptions.USUAL, TestRooms.SHAPE, List.of(out, faulty), recordings);
            return new OpenSource(source, rig, out, recordings);
        });
    }

    @Test
    void aBoardThatIsPluggedInLateIsFoundAndPlays() throws Exception {
        Path port = folder.resolve("ttyLATE");
        Datagrams ears = ears();
        List<Member> members = List.of(member(seat(1, "Wren", ears, 0, Tuning.usual()), port.toString()));
        try (Ensemble ensemble = started(members, true)) {
            assertTrue(
                    members.get(0).trouble().contains("is not there"),
                    members.get(0).trouble());
            // what was typed before it was there holds for it
            ensemble.mute(true);
            Board late = new Board(EnsembleTest::steady);
            Files.createSymbolicLink(port, Path.of(late.pty.port()));
            Waits.until(() -> seen(members.get(0), seen -> seen.readings() > 20));
            assertEquals("", members.get(0).trouble());
            Waits.until(() -> !ears.all().isEmpty());
            assertTrue(ears.all().stream().noneMatch(Datagram::hasHand));
            ensemble.turnMute();
            Waits.until(() -> plays(ears));
        }
    }

    @Test
    void allFadeAtOnce() throws Exception {
        List<Datagrams> ears = List.of(ears(), ears(), ears());
        List<Member> members = new ArrayList<>();
        for (int i = 0; i < ears.size(); i++) {
            members.add(member(i + 1, "Wren " + i, ears.get(i), new Board(EnsembleTest::steady)));
        }
        Ensemble ensemble = started(members, true);
        Waits.until(() -> ears.stream().allMatch(EnsembleTest::plays));
        long startNanos = System.nanoTime();
        ensemble.close();
        double tookMs = (System.nanoTime() - startNanos) / 1e6;
        // one takes 160 ms: a fade of 60 and silence five times over 100
        assertTrue(tookMs < 2_000, "took " + tookMs + " ms");
        for (Datagrams each : ears) {
            List<Datagram> all = each.all();
            all.subList(all.size() - 5, all.size())
                    .forEach(datagram -> assertTrue(datagram.gain01() == 0 && !datagram.hasHand()));
        }
    }

    @Test
    void aLinkThatTakesLongToOpenHoldsUpNobodyElsesEnd() throws Exception {
        AtomicLong asked = new AtomicLong();
        Datagrams ears = ears();
        Seat seat = seat(1, "slow", ears, 0, Tuning.usual());
        Member slow = new Member(seat, Source.parse("/dev/ttyHANDSPAN9"), ways(seat), null, () -> {
            asked.incrementAndGet();
            throw new LinkException(LinkException.Kind.MISSING, "made to be missing");
        });
        Ensemble ensemble = started(List.of(slow), true);
        assertEquals(1, asked.get());
        assertEquals("made to be missing", slow.trouble());
        ensemble.close();
        assertEquals(1, asked.get());
        assertTrue(slow.snapshot().isEmpty());
    }
}
