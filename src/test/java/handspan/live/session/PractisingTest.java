package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.music.practice.Attempt;
import handspan.music.practice.Course;
import handspan.music.practice.Stop;
import handspan.music.send.PlayState;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Scripted hands over 400 mm from 100 mm on, which carry the 24 semitones from A3 to A5: 16.67 mm and 100 cents each.
 * Note 6 is D#4 at 200 mm, 9 is F#4 at 250 mm, 12 is A4 at 300 mm.
 */
class PractisingTest {
    private static final long READING = 20 * Nanos.PER_MS;
    private static final double NOISE_MM = 1;

    private final RoomProfile room = TestRooms.twoDistances(50, Tuning.usual(), NOISE_MM);
    private final FrameList frames = new FrameList();
    private final List<Event> heard = new ArrayList<>();
    private final Random random = new Random(3);
    private long now = Nanos.PER_SECOND;
    private final Engine engine =
            new Engine(new Engine.Plugs(TestRooms.SHAPE, List.of(frames), LineTap.NONE, heard::add), now);

    private void practise(int... notes) {
        practiseFor(20, notes);
    }

    private void practiseFor(double noteSeconds, int... notes) {
        engine.onLinkUp(now);
        // the first lines after a link has come up are left out
        still(0.5, 200);
        Course course = new Course(java.util.Arrays.stream(notes).boxed().toList());
        engine.onCommand(
                new Command.Practise(
                        new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false)),
                        course,
                        noteSeconds),
                now);
    }

    /** The pitch hand is where a function of the seconds says; not a number = away. The level hand is at 250 mm. */
    private void hand(double seconds, DoubleUnaryOperator mmAtS) {
        long start = now;
        while (now - start < Nanos.ofSeconds(seconds)) {
            now += READING;
            Replay.tickUntil(engine, now);
            double mm = mmAtS.applyAsDouble(Nanos.toSeconds(now - start));
            long printed = Double.isNaN(mm) ? 8190 : Math.round(mm + NOISE_MM * random.nextGaussian());
            byte[] line = (printed + ",250\r\n").getBytes(StandardCharsets.US_ASCII);
            engine.onBytes(line, line.length, now);
        }
    }

    private void still(double seconds, double mm) {
        hand(seconds, s -> mm);
    }

    /** Half a second on the way, then still. */
    private void go(double seconds, double fromMm, double toMm) {
        hand(seconds, s -> fromMm + (toMm - fromMm) * Math.min(1, s / 0.5));
    }

    private List<Attempt> answers() {
        return heard.stream()
                .filter(event -> event.what() instanceof Event.NoteAnswered)
                .map(event -> ((Event.NoteAnswered) event.what()).attempt())
                .toList();
    }

    private List<String> asked() {
        return heard.stream()
                .filter(event -> event.what() instanceof Event.NoteAsked)
                .map(event -> ((Event.NoteAsked) event.what()).note().name())
                .toList();
    }

    private List<String> reasons() {
        return heard.stream()
                .filter(event -> event.what() instanceof Event.NoteNotYet)
                .map(event -> ((Event.NoteNotYet) event.what()).reason())
                .toList();
    }

    private ActivityView.Practising view() {
        return assertInstanceOf(ActivityView.Practising.class, engine.snapshot().activity());
    }

    /** 5 mm beyond A4 are 30 cents too high, and within its cell of 50 either way; 10 mm are 60 and are not. */
    @Test
    void aRestAfterAMoveIsAnAnswerInCentsMillimetresAndSeconds() {
        practise(12, 6);
        go(2, 200, 305);
        go(2, 305, 210);
        List<Attempt> answers = answers();
        assertEquals(2, answers.size());
        Stop first = answers.get(0).stop().orElseThrow();
        assertEquals(5, first.offMm(), 1);
        assertEquals(30, first.offCents(), 6);
        assertEquals(0.5, first.seconds(), 0.12);
        assertTrue(first.hit());
        Stop second = answers.get(1).stop().orElseThrow();
        assertEquals(60, second.offCents(), 6);
        assertFalse(second.hit());
        assertEquals(List.of("A4", "D#4"), asked());
        assertTrue(view().over());
        assertTrue(view().wanted().isEmpty());
    }

    /** The next note is asked for where the hand rests: it has to be moved before the rest counts. */
    @Test
    void whoStaysWhereHeIsForTheNextNoteIsToldToMove() {
        practise(12, 13, 12);
        go(2, 200, 300);
        still(4, 300);
        assertEquals(1, answers().size());
        assertEquals(List.of("no move seen since the last rest (more than 4 mm)"), reasons());
        go(2, 300, 317);
        assertEquals(2, answers().size());
    }

    @Test
    void aHandThatSwaysIsToldAndTimeRunsOutWithoutHarm() {
        practiseFor(5, 12, 6);
        hand(6, s -> 300 + 20 * Math.sin(2 * Math.PI * 0.7 * s));
        assertEquals(1, answers().size());
        assertTrue(answers().get(0).stop().isEmpty());
        assertTrue(reasons().get(0).startsWith("hand "), "" + reasons());
        assertEquals(List.of("A4", "D#4"), asked());
        go(2, 300, 200);
        assertTrue(answers().get(1).isHit());
    }

    @Test
    void vibratoAnswersWithItsMiddle() {
        practise(12);
        hand(3, s -> 300 + 4 * Math.sin(2 * Math.PI * 6 * s));
        assertEquals(0, answers().get(0).stop().orElseThrow().offMm(), 2);
    }

    @Test
    void withoutAHandTimeRunsOutAndTheReasonIsSaid() {
        practiseFor(5, 12, 6);
        hand(5.5, s -> Double.NaN);
        assertTrue(answers().get(0).stop().isEmpty());
        assertTrue(reasons().get(0).startsWith("no hand seen"), "" + reasons());
        assertTrue(heard.stream()
                .anyMatch(event -> event.what() instanceof Event.NoteAnswered answered
                        && answered.reason().startsWith("no hand seen")));
        go(2, 300, 200);
        assertTrue(answers().get(1).isHit());
    }

    @Test
    void aLostLinkStopsTheTimeAndTheNoteIsAskedForAnew() {
        practiseFor(5, 12);
        hand(3, s -> 300 + 40 * Math.sin(2 * Math.PI * s));
        engine.onLinkDown("cable", now);
        now += 30 * Nanos.PER_SECOND;
        Replay.tickUntil(engine, now);
        assertTrue(answers().isEmpty());
        engine.onLinkUp(now);
        still(0.5, 200);
        go(2, 200, 300);
        assertEquals(List.of("A4", "A4"), asked());
        assertEquals(1, answers().size());
        // ten lines are left out, so that it is asked for 0.3 s before the hand sets out
        assertEquals(0.8, answers().get(0).stop().orElseThrow().seconds(), 0.12);
    }

    @Test
    void whatIsHalfSeenBeforeALossIsNoRest() {
        practise(12);
        still(0.7, 300);
        engine.onLinkDown("cable", now);
        engine.onLinkUp(now + Nanos.PER_SECOND);
        now += Nanos.PER_SECOND;
        still(0.7, 300);
        assertTrue(answers().isEmpty());
    }

    @Test
    void itIsPlayedMutedTunedAndFadedAsEver() {
        practise(12, 6);
        go(2, 200, 300);
        assertEquals(PlayState.PLAYING, view().playing().state());
        assertEquals(440, frames.last().pitchHz(), 8);
        assertTrue(frames.last().gain01() > 0);
        engine.onCommand(new Command.Mute(true), now);
        still(0.5, 300);
        assertEquals(0, frames.last().gain01());
        engine.onCommand(new Command.Mute(false), now);
        engine.onCommand(new Command.Tune(room.tunings().get(0).shifted(12, 0)), now);
        still(0.5, 300);
        assertEquals(880, frames.last().pitchHz(), 16);
        // the same place has another name now
        assertEquals(List.of("A4", "D#4", "D#5"), asked());
        engine.onCommand(new Command.Stop(), now);
        still(0.5, 300);
        assertEquals(0, frames.last().gain01());
        assertTrue(engine.snapshot().done());
    }

    @Test
    void whatIsChangedBeforeTheLinesAreLearnedIsNotLost() {
        Engine learning = new Engine(new Engine.Plugs(null, List.of(frames), LineTap.NONE, heard::add), now);
        learning.onLinkUp(now);
        learning.onCommand(
                new Command.Practise(
                        new Command.Play(room, room.tunings().get(0), PathSettings.USUAL), new Course(List.of(12)), 20),
                now);
        learning.onCommand(new Command.Mute(false), now);
        for (int i = 0; i < 60; i++) {
            now += READING;
            Replay.tickUntil(learning, now);
            byte[] line = "250,250\r\n".getBytes(StandardCharsets.US_ASCII);
            learning.onBytes(line, line.length, now);
        }
        assertInstanceOf(ActivityView.Practising.class, learning.snapshot().activity());
        assertTrue(frames.last().gain01() > 0);
        assertTrue(heard.stream().noneMatch(event -> event.what() instanceof Event.Refused));
    }

    @Test
    void anotherTuningWithOtherNotesIsRefused() {
        practise(12, 6);
        Tuning other = room.tunings().get(0).withScale(Scales.named("major"));
        engine.onCommand(new Command.Tune(other), now);
        still(0.2, 200);
        assertTrue(heard.stream()
                .anyMatch(event -> event.what() instanceof Event.TuningRefused refused
                        && refused.reason().contains("end the course first")));
        engine.onCommand(new Command.Tune(room.tunings().get(0).withSnap(Snap.PULL)), now);
        still(0.2, 200);
        assertEquals(Snap.PULL, view().playing().tuning().snap());
    }

    /** Off by 5 mm in a room that snaps to steps: what sounds is the note, what is told is the hand. */
    @Test
    void snappingHidesNothing() {
        practise(12, 6);
        engine.onCommand(new Command.Tune(room.tunings().get(0).withSnap(Snap.STEPS)), now);
        go(2, 200, 305);
        assertEquals(440, frames.last().pitchHz(), 0.5);
        assertEquals(30, answers().get(0).stop().orElseThrow().offCents(), 6);
    }

    @Test
    void aMistakeInTheProgramEndsInSilence() {
        practise(12);
        go(1, 200, 300);
        engine.onFault("test", now);
        assertEquals(0, frames.last().gain01());
        assertEquals(PlayState.LOST, frames.last().state());
    }

    @Test
    void aCommandThatCannotBeCarriedOutIsRefused() {
        Command.Play play = new Command.Play(room, room.tunings().get(0), PathSettings.USUAL);
        String late = String.valueOf(org.junit.jupiter.api.Assertions.assertThrows(
                        IllegalArgumentException.class, () -> new Command.Practise(play, new Course(List.of(1)), 1))
                .getMessage());
        assertTrue(late.contains("time of 1.0 s for a note (2..600)"), late);
        String beyond = String.valueOf(org.junit.jupiter.api.Assertions.assertThrows(
                        IllegalArgumentException.class, () -> new Command.Practise(play, new Course(List.of(25)), 20))
                .getMessage());
        assertTrue(beyond.contains("(0..24 in this tuning)"), beyond);
    }
}
