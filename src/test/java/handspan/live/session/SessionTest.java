package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.music.send.SoundFrame;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The threads around the engine, with links made of queues. Waits are bounded, nothing is timed. */
@Timeout(30)
class SessionTest {
    private static final long LONGEST_WAIT_MS = 10_000;

    /** A board that sends what a test puts in; {@link #unplug} is what a pulled cable looks like. */
    private static final class Board implements LinkOpener {
        private final BlockingQueue<byte[]> bytes = new ArrayBlockingQueue<>(10_000);
        private final AtomicInteger opened = new AtomicInteger();
        private volatile boolean there = true;

        @Override
        public String name() {
            return "test board";
        }

        @Override
        public Link open() throws LinkException {
            if (!there) {
                throw new LinkException(LinkException.Kind.MISSING, "not plugged in");
            }
            opened.incrementAndGet();
            return new Link() {
                private volatile boolean closed;

                @Override
                public int read(byte[] buffer) {
                    try {
                        while (!closed && there) {
                            byte[] next = bytes.poll(5, java.util.concurrent.TimeUnit.MILLISECONDS);
                            if (next != null) {
                                // as a board that measures: the same line at the same moment is no second measurement
                                Thread.sleep(20);
                                System.arraycopy(next, 0, buffer, 0, next.length);
                                return next.length;
                            }
                        }
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                    return -1;
                }

                @Override
                public void close() {
                    closed = true;
                }
            };
        }

        void lines(int count, String line) {
            for (int i = 0; i < count; i++) {
                bytes.add((line + "\n").getBytes(StandardCharsets.ISO_8859_1));
            }
        }

        void unplug() {
            there = false;
        }

        void plugIn() {
            there = true;
        }
    }

    private static void await(BooleanSupplier condition) throws InterruptedException {
        long waited = 0;
        while (!condition.getAsBoolean()) {
            assertTrue(waited < LONGEST_WAIT_MS, "it did not happen within " + LONGEST_WAIT_MS + " ms");
            Thread.sleep(5);
            waited += 5;
        }
    }

    private static Session play(Board board, FrameList frames) throws LinkException {
        Engine engine = new Engine(
                new Engine.Plugs(TestRooms.SHAPE, List.of(frames), LineTap.NONE, event -> {}), System.nanoTime());
        Session session = Session.start(engine, board, System::nanoTime);
        RoomProfile profile = TestRooms.twoDistances(50);
        session.submit(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL.muted(false)));
        return session;
    }

    @Test
    void twoSessionsLiveInOneProcessAndOneLossDoesNotTouchTheOther() throws Exception {
        Board first = new Board();
        Board second = new Board();
        FrameList firstFrames = new FrameList();
        FrameList secondFrames = new FrameList();
        try (Session one = play(first, firstFrames);
                Session two = play(second, secondFrames)) {
            first.lines(20, "100,300");
            second.lines(20, "500,300");
            await(() -> firstFrames.frames().stream().anyMatch(SoundFrame::hand)
                    && secondFrames.frames().stream().anyMatch(SoundFrame::hand));
            assertEquals(220.0, firstFrames.last().pitchHz(), 0.01);
            assertEquals(880.0, secondFrames.last().pitchHz(), 0.01);
            first.unplug();
            await(() -> one.snapshot().link() == LinkState.LOST);
            second.lines(20, "500,300");
            await(() -> two.snapshot().readings() >= 30);
            assertEquals(LinkState.UP, two.snapshot().link());
        }
    }

    @Test
    void aBoardThatComesBackPlaysAgainThroughAFreshLink() throws Exception {
        Board board = new Board();
        FrameList frames = new FrameList();
        try (Session session = play(board, frames)) {
            board.lines(20, "300,300");
            await(() -> frames.frames().stream().anyMatch(SoundFrame::hand));
            board.unplug();
            await(() -> session.snapshot().link() == LinkState.LOST);
            await(() -> !frames.last().hand() && frames.last().gain01() == 0);
            await(() -> session.snapshot().linkReason().equals("not plugged in"));
            int opened = board.opened.get();
            board.plugIn();
            board.lines(20, "300,300");
            await(() -> frames.last().hand());
            assertEquals(opened + 1, board.opened.get());
        }
    }

    @Test
    void aMistakeInTheProgramEndsInSilenceNotInAHangingNote() throws Exception {
        Board board = new Board();
        FrameList frames = new FrameList();
        AtomicInteger lines = new AtomicInteger();
        LineTap faulty = (line, length, time) -> {
            if (lines.incrementAndGet() == 100) {
                throw new IllegalStateException("made to fail");
            }
        };
        Engine engine =
                new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(frames), faulty, event -> {}), System.nanoTime());
        try (Session session = Session.start(engine, board, System::nanoTime)) {
            RoomProfile profile = TestRooms.twoDistances(50);
            session.submit(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL.muted(false)));
            board.lines(40, "300,300");
            await(() -> frames.frames().stream().anyMatch(frame -> frame.gain01() > 0));
            board.lines(80, "300,300");
            await(() -> session.snapshot().events().stream()
                    .anyMatch(event -> event.what() instanceof Event.Failed failed
                            && failed.reason().contains("made to fail")));
            assertEquals(0, frames.last().gain01());
            assertFalse(frames.last().hand());
            session.submit(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL.muted(false)));
            board.lines(40, "300,300");
            await(() -> frames.last().hand());
        }
    }

    @Test
    void closingFadesFirstAndLeavesNoThreadBehind() throws Exception {
        Board board = new Board();
        FrameList frames = new FrameList();
        Session session = play(board, frames);
        board.lines(20, "300,300");
        await(() -> frames.frames().stream().anyMatch(SoundFrame::hand));
        session.close();
        List<SoundFrame> all = frames.frames();
        assertTrue(all.size() > 5);
        List<SoundFrame> lastFive = all.subList(all.size() - 5, all.size());
        assertTrue(lastFive.stream().allMatch(frame -> !frame.hand() && frame.gain01() == 0));
        assertTrue(Thread.getAllStackTraces().keySet().stream()
                .noneMatch(thread -> thread.isAlive() && thread.getName().endsWith("test board")));
    }

    @Test
    void aLinkThatCanNotBeOpenedIsSaidAtOnce() {
        Board board = new Board();
        board.unplug();
        Engine engine = new Engine(Engine.Plugs.none(), System.nanoTime());
        LinkException e = assertThrows(LinkException.class, () -> Session.start(engine, board, System::nanoTime));
        assertEquals(LinkException.Kind.MISSING, e.kind());
    }

    @Test
    void theEndOfARecordingEndsTheLinkAndIsNotOpenedAgain() throws Exception {
        AtomicInteger opened = new AtomicInteger();
        LinkOpener recording = new LinkOpener() {
            @Override
            public Link open() {
                opened.incrementAndGet();
                return new Link() {
                    @Override
                    public int read(byte[] buffer) {
                        return -1;
                    }

                    @Override
                    public boolean isOver() {
                        return true;
                    }

                    @Override
                    public void close() {}
                };
            }

            @Override
            public String name() {
                return "test recording";
            }
        };
        try (Session session =
                Session.start(new Engine(Engine.Plugs.none(), System.nanoTime()), recording, System::nanoTime)) {
            await(() -> session.snapshot().link() == LinkState.ENDED);
            assertEquals(1, opened.get());
            assertInstanceOf(ActivityView.Idle.class, session.snapshot().activity());
            assertFalse(session.snapshot().done());
        }
    }
}
