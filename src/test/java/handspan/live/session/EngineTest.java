package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Rejection;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.music.send.PlayState;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class EngineTest {
    private static final long READING = 20 * Nanos.PER_MS;

    private final List<String> taps = new ArrayList<>();
    private final List<Event> heard = new ArrayList<>();
    private final FrameList frames = new FrameList();
    private long now = Nanos.PER_SECOND;
    private Engine engine = new Engine(new Engine.Plugs(null, List.of(frames), tap(), heard::add), now);

    private LineTap tap() {
        return (line, length, time) -> taps.add(new String(line, 0, length, StandardCharsets.ISO_8859_1));
    }

    private void send(String text) {
        now += READING;
        Replay.tickUntil(engine, now);
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        engine.onBytes(bytes, bytes.length, now);
    }

    private void lines(int count, String line) {
        for (int i = 0; i < count; i++) {
            send(line + "\r\n");
        }
    }

    @Test
    void learningLosesNoLineButTheFiveThatSettle() {
        engine.onLinkUp(now);
        engine.onCommand(new Command.Watch(), now);
        lines(1, "tail of a li");
        lines(40, "234,567");
        Snapshot snapshot = engine.snapshot();
        assertEquals(40, snapshot.lines());
        assertEquals(35, snapshot.readings());
        assertEquals(5, snapshot.rejections().get(Rejection.SETTLING));
        assertEquals(40, taps.size());
        ActivityView.Watching watching = assertInstanceOf(ActivityView.Watching.class, snapshot.activity());
        assertEquals(List.of(234.0, 567.0), watching.values());
        assertEquals(50, watching.ratePerS(), 0.01);
    }

    @Test
    void aCommandGivenBeforeTheShapeIsKnownWaitsForIt() {
        engine.onLinkUp(now);
        engine.onCommand(new Command.Watch(), now);
        lines(10, "234,567");
        assertInstanceOf(ActivityView.Idle.class, engine.snapshot().activity());
        lines(20, "234,567");
        assertInstanceOf(ActivityView.Watching.class, engine.snapshot().activity());
    }

    @Test
    void whatIsChangedBeforePlayingCanBeginIsNotLostAndDoesNotKeepItFromBeginning() {
        RoomProfile room = TestRooms.twoDistances(50);
        engine.onLinkUp(now);
        engine.onCommand(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(true)), now);
        engine.onCommand(new Command.Mute(true), now);
        engine.onCommand(new Command.Tune(room.tunings().get(0).shifted(5, 0)), now);
        engine.onCommand(new Command.Mute(false), now);
        lines(40, "250,280");
        ActivityView.Playing playing =
                assertInstanceOf(ActivityView.Playing.class, engine.snapshot().activity());
        assertEquals(5, playing.tuning().transpose());
        assertEquals(PlayState.PLAYING, playing.state());
        assertTrue(heard.stream().noneMatch(event -> event.what() instanceof Event.Refused));
    }

    @Test
    void anOpenLinkThatFallsSilentForASecondIsLostOnce() {
        engine.onLinkUp(now);
        lines(30, "234,567");
        Replay.tickUntil(engine, now + Nanos.ofMs(990));
        assertEquals(LinkState.UP, engine.snapshot().link());
        Replay.tickUntil(engine, now + Nanos.ofMs(1010));
        assertEquals(LinkState.LOST, engine.snapshot().link());
        assertTrue(engine.takeReopen());
        assertFalse(engine.takeReopen());
    }

    @Test
    void aBoardThatHasNotSpokenYetIsNotLost() {
        engine.onLinkUp(now);
        Replay.tickUntil(engine, now + 5 * Nanos.PER_SECOND);
        assertEquals(LinkState.WAITING, engine.snapshot().link());
    }

    /** A tick far later than its deadline: the machine slept. */
    @Test
    void aJumpOfTheClockIsALoss() {
        engine.onLinkUp(now);
        lines(30, "234,567");
        engine.onTick(now + 60 * Nanos.PER_SECOND);
        assertEquals(LinkState.LOST, engine.snapshot().link());
        assertTrue(engine.snapshot().linkReason().contains("clock jumped"));
    }

    @Test
    void afterAJumpOfTheClockAllComesBack() {
        play();
        lines(60, "300,300");
        now += 3600 * Nanos.PER_SECOND;
        engine.onTick(now);
        assertTrue(engine.snapshot().linkReason().contains("clock jumped"));
        assertEquals(PlayState.LOST, frames.last().state());
        assertTrue(engine.takeReopen());
        engine.onLinkDown(LinkWatch.ENDED, now);
        engine.onLinkUp(now);
        lines(40, "300,300");
        assertEquals(LinkState.UP, engine.snapshot().link());
        assertEquals(PlayState.PLAYING, frames.last().state());
        // bytes may be the first thing that is seen after a sleep
        now += 3600 * Nanos.PER_SECOND;
        byte[] line = "300,300\r\n".getBytes(StandardCharsets.ISO_8859_1);
        engine.onBytes(line, line.length, now);
        assertTrue(heard.stream()
                .filter(event -> event.what() instanceof Event.Linked linked && linked.state() == LinkState.LOST)
                .skip(1)
                .findFirst()
                .isPresent());
        lines(40, "300,300");
        assertEquals(PlayState.PLAYING, frames.last().state());
    }

    @Test
    void aJumpWhileABoardIsWaitedForStartsTheWaitingAnew() {
        engine.onLinkUp(now);
        now += 3600 * Nanos.PER_SECOND;
        engine.onTick(now);
        assertEquals("", engine.snapshot().linkReason());
        assertEquals(LinkState.WAITING, engine.snapshot().link());
        assertFalse(engine.takeReopen());
        lines(30, "234,567");
        assertEquals(LinkState.UP, engine.snapshot().link());
    }

    @Test
    void aJumpWhileAPortIsGoneChangesNothing() {
        engine.onLinkUp(now);
        lines(30, "234,567");
        engine.onLinkDown(LinkWatch.ENDED, now);
        now += 3600 * Nanos.PER_SECOND;
        engine.onTick(now);
        assertEquals(LinkState.LOST, engine.snapshot().link());
        assertFalse(engine.takeReopen());
        engine.onLinkUp(now);
        lines(30, "234,567");
        assertEquals(LinkState.UP, engine.snapshot().link());
    }

    /** Seconds at which the port is closed and opened again within a time, by a board that stays silent. */
    private List<Long> reopenedS(long withinS) {
        List<Long> seconds = new ArrayList<>();
        long startNanos = now;
        while (now < startNanos + withinS * Nanos.PER_SECOND) {
            now += 100 * Nanos.PER_MS;
            Replay.tickUntil(engine, now);
            if (engine.takeReopen()) {
                seconds.add((now - startNanos) / Nanos.PER_SECOND);
                engine.onLinkDown(LinkWatch.ENDED, now);
                engine.onLinkUp(now + 300 * Nanos.PER_MS);
            }
        }
        return seconds;
    }

    /** Each opening starts most boards anew, and a start takes up to 3 s: each further one waits longer. */
    @Test
    void aBoardThatFellSilentIsOpenedAgainAtOnceAndThenEverMoreSeldom() {
        engine.onLinkUp(now);
        lines(30, "234,567");
        assertEquals(List.of(1L, 6L, 16L, 36L, 77L), reopenedS(100));
        lines(600, "234,567");
        assertEquals(List.of(1L, 6L), reopenedS(10));
    }

    @Test
    void aBoardThatSpeaksThreeSecondsAfterItsPortWasOpenedAgainIsNotOpenedTwice() {
        engine.onLinkUp(now);
        lines(30, "234,567");
        assertEquals(List.of(1L), reopenedS(4));
        lines(30, "234,567");
        assertEquals(LinkState.UP, engine.snapshot().link());
        // it hangs once more before it was well for long: no hasty opening
        assertEquals(List.of(5L), reopenedS(8));
    }

    @Test
    void aBoardThatNeverSpokeIsWaitedForAndThePlayerToldOnce() {
        engine.onLinkUp(now);
        assertEquals(List.of(), reopenedS(120));
        List<String> reasons = heard.stream()
                .filter(event -> event.what() instanceof Event.Linked)
                .map(event -> ((Event.Linked) event.what()).reason())
                .toList();
        assertEquals(2, reasons.size());
        assertTrue(reasons.get(1).contains("no line came for 2.5 s"), reasons.get(1));
    }

    @Test
    void whyAPortIsStillMissingIsToldWhenItChangesNotAtEachTry() {
        engine.onLinkUp(now);
        lines(30, "234,567");
        engine.onLinkDown(LinkWatch.ENDED, now);
        for (int i = 0; i < 10; i++) {
            engine.onLinkDown("not there", now);
        }
        assertEquals(
                2,
                heard.stream()
                        .filter(event ->
                                event.what() instanceof Event.Linked linked && linked.state() == LinkState.LOST)
                        .count());
        assertEquals("not there", engine.snapshot().linkReason());
    }

    @Test
    void playingThroughALossFadesAndComesBack() {
        play();
        lines(60, "300,300");
        assertTrue(frames.last().gain01() > 0.4);
        engine.onLinkDown("the link ended", now);
        now += Nanos.ofMs(400);
        Replay.tickUntil(engine, now);
        assertEquals(0, frames.last().gain01());
        assertFalse(frames.last().hand());
        assertEquals(PlayState.LOST, frames.last().state());
        engine.onLinkUp(now);
        lines(40, "300,300");
        assertTrue(frames.last().gain01() > 0.4);
        assertEquals(PlayState.PLAYING, frames.last().state());
    }

    private void play() {
        RoomProfile profile = TestRooms.twoDistances(50);
        engine = new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(frames), tap(), heard::add), now);
        engine.onLinkUp(now);
        engine.onCommand(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL.muted(false)), now);
    }

    @Test
    void aRememberedShapeIsNotLearnedAgain() {
        play();
        assertInstanceOf(ActivityView.Playing.class, engine.snapshot().activity());
        assertTrue(heard.stream().noneMatch(event -> event.what() instanceof Event.Learned));
    }

    @Test
    void aRoomWhoseChannelIsNotInTheLinesIsRefused() {
        RoomProfile profile = TestRooms.twoDistances(50);
        engine.onLinkUp(now);
        engine.onCommand(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL), now);
        lines(30, "567");
        assertTrue(heard.stream()
                .anyMatch(event -> event.what() instanceof Event.Refused refused
                        && refused.reason().contains("channel '2'")));
    }

    @Test
    void aCommandThatFitsNothingIsRefusedAndHarmsNothing() {
        engine.onLinkUp(now);
        engine.onCommand(new Command.Watch(), now);
        lines(30, "234,567");
        engine.onCommand(new Command.Mute(true), now);
        assertTrue(heard.stream().anyMatch(event -> event.what() instanceof Event.Refused));
        lines(1, "234,568");
        assertInstanceOf(ActivityView.Watching.class, engine.snapshot().activity());
    }

    @Test
    void snapshotsDoNotChangeAfterwards() {
        engine.onLinkUp(now);
        engine.onCommand(new Command.Watch(), now);
        lines(30, "234,567");
        Snapshot early = engine.snapshot();
        long readings = early.readings();
        int events = early.events().size();
        lines(30, "xyz");
        engine.onLinkDown("gone", now);
        assertEquals(readings, early.readings());
        assertEquals(events, early.events().size());
        assertTrue(early.rejections().get(Rejection.NO_NUMBER) == null);
    }

    @Test
    void theEndOfAShortRecordingLearnsFromWhatIsThere() {
        engine.onLinkUp(now);
        engine.onCommand(new Command.Watch(), now);
        lines(9, "234;567");
        engine.onEnd(now);
        assertEquals(LinkState.ENDED, engine.snapshot().link());
        // the first line is taken for a tail, five readings settle
        assertEquals(3, engine.snapshot().readings());
    }
}
