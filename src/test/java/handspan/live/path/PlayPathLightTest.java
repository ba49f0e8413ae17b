package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.NoReadings;
import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Unit;
import handspan.music.level.LevelCurve;
import handspan.music.send.PlayState;
import handspan.music.send.SendPlan;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.fit.MonotoneCurve;
import handspan.number.units.Decibels;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import handspan.room.calibrate.Refit;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is sent while the light over the level hand's sensor changes. */
class PlayPathLightTest {
    private static final double RATE = 50;
    private static final double CEILING = 0.501187233627;

    /** One more count is up to 0.2 dB in the upper half of this room's level; and the smoother's last step. */
    private static final double STEP_GAIN = 0.02;

    /** A hand at 600 mm takes 1 % of the light, 0.4 dB here. */
    private static final double HIGH_HAND_GAIN = 0.025;

    /** Before half a reading's worth of failing light is seen for what it is, level may have grown by so much. */
    private static final double UNSEEN_DB = 10;

    private static final double OPEN = 1.76;
    private static final double COVERED = OPEN - LightCellSeen.SPAN_LN;
    private static final double MID = OPEN - LightCellSeen.POWER * Math.log(1 / LightCellSeen.light01(50));
    private static final Photoresistor CELL = Photoresistor.of(Unit.COUNTS10, 5, NoReadings.NONE);

    private final FrameList frames = new FrameList();
    private double second = 1;
    private PlayPath path = open(LevelCurve.USUAL);

    private PlayPath open(LevelCurve curve) {
        RoomProfile profile =
                new RoomProfile(room(), List.of(Tuning.usual()), curve, SendPlan.byDefault("test", List.of()));
        return new PlayPath(
                profile,
                Tuning.usual(),
                TestRooms.SHAPE,
                PathSettings.USUAL.muted(false),
                List.of(frames),
                Nanos.ofSeconds(second));
    }

    private static Room room() {
        ChannelSpec pitch = ChannelSpec.parse("1:distance:mm");
        ChannelSpec level = ChannelSpec.parse("2:photoresistor:counts10");
        Response light = new Response.Curve(List.of(
                new MonotoneCurve.Point(COVERED, 0),
                new MonotoneCurve.Point(MID, 100),
                new MonotoneCurve.Point(OPEN, 200)));
        return new Room(
                "test",
                "2026-01-01T00:00:00Z",
                new Instrument("Test reed", 1, 115_200, TestRooms.SHAPE, pitch, level, 5),
                Air.USUAL,
                RATE,
                new HandSetup(pitch, new Response.AsMeasured(), new Zone(100, 500, 0, 0), 0, false),
                new HandSetup(level, light, new Zone(0, 200, 0, 0), 1, true),
                List.of());
    }

    /** Light as share of the saved open level, from now on; seconds count from the call. */
    private void show(DoubleUnaryOperator light01, double seconds, boolean hand) {
        double from = second;
        LightCellSeen.show(light01, 0, seconds, RATE, 0.4, (over, time) -> {
            second = from + Nanos.toSeconds(time) - 100;
            long now = Nanos.ofSeconds(second);
            tickTo(now);
            path.onReading(new Reading(now, new double[] {hand ? 300 : 8190, Math.rint(CELL.raw(OPEN + over))}, 0b11));
        });
        second = from + seconds;
        tickTo(Nanos.ofSeconds(second));
    }

    private void tickTo(long time) {
        while (path.nextDeadlineNanos() <= time) {
            path.onTick(path.nextDeadlineNanos());
        }
    }

    private double loudestSince(double from) {
        return frames.frames().stream()
                .filter(frame -> frame.timeNanos() >= Nanos.ofSeconds(from))
                .mapToDouble(SoundFrame::gain01)
                .max()
                .orElse(0);
    }

    private static DoubleUnaryOperator step(double before, double after) {
        return t -> t < 0.5 ? before : after;
    }

    /** Wherever the level hand is, lights that fail take sound away and never add to it. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 30, 50, 100, 600})
    void aBlackoutUnderAPlayingHandIsNeverLouderThanBefore(double levelHandMm) {
        double light = LightCellSeen.light01(levelHandMm);
        show(t -> light, 2, true);
        double before = frames.last().gain01();
        double from = second;
        show(step(light, 0.002 * light), 4, true);
        assertTrue(loudestSince(from) <= before + STEP_GAIN, loudestSince(from) + " after " + before);
        assertEquals(0, loudestSince(second - 2), 1e-9);
        assertEquals(PlayState.MUTED, frames.last().state());
        assertTrue(path.lightMute().contains("darker"), path.lightMute());
    }

    @ParameterizedTest
    @ValueSource(doubles = {30, 50, 100, 600})
    void aSpotlightUnderAPlayingHandIsNeverLouderThanBeforeAndFades(double levelHandMm) {
        double light = LightCellSeen.light01(levelHandMm);
        show(t -> light, 2, true);
        double before = frames.last().gain01();
        double from = second;
        show(step(light, 30 * light), 3, true);
        assertTrue(loudestSince(from) <= before + STEP_GAIN, loudestSince(from) + " after " + before);
        assertEquals(0, loudestSince(from + 1), 0);
        assertEquals(PlayState.MUTED, frames.last().state());
    }

    @Test
    void whenTheLightIsBackItPlaysAgainAfterASecond() {
        show(t -> 1, 2, true);
        show(step(1, 10), 5, true);
        assertEquals(0, frames.last().gain01(), 0);
        double back = second + 0.5;
        show(step(10, 1), 1.4, true);
        assertEquals(0, loudestSince(back), 0);
        show(t -> 1, 1, true);
        assertEquals(CEILING, frames.last().gain01(), STEP_GAIN);
        assertEquals(PlayState.PLAYING, frames.last().state());
        assertEquals("", path.lightMute());
    }

    @ParameterizedTest
    @CsvSource({"0.15", "0.3", "1"})
    void aHandThatClosesAndOpensIsPlayed(double seconds) {
        show(t -> 1, 2, true);
        show(t -> LightCellSeen.light01(LightCellSeen.reachMm(600, 8, seconds, t - 0.5)), 2, true);
        assertEquals(0, frames.last().gain01(), 0.001);
        assertEquals(PlayState.PLAYING, frames.last().state());
        show(t -> LightCellSeen.light01(LightCellSeen.reachMm(8, 600, seconds, t - 0.5)), 2, true);
        assertEquals(CEILING, frames.last().gain01(), HIGH_HAND_GAIN);
        assertTrue(frames.withState().stream().noneMatch(frame -> frame.state() == PlayState.MUTED));
    }

    /** The same player, lights and hand, where the covered sensor is the loud one: now the blackout would be loud. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 100, 600})
    void whereCoveredIsLoudABlackoutIsNotLouderEither(double levelHandMm) {
        path = open(new LevelCurve(-60, -6, 0.03, false, 1));
        double light = LightCellSeen.light01(levelHandMm);
        show(t -> light, 2, true);
        double before = frames.last().gain01();
        double from = second;
        show(step(light, 0.002 * light), 4, true);
        double most = Math.max(before, 0.001) * Decibels.gain(UNSEEN_DB);
        assertTrue(loudestSince(from) <= most, loudestSince(from) + " after " + before);
        assertEquals(0, loudestSince(second - 3), 0);
    }

    @Test
    void whereCoveredIsLoudAFastHandIsPlayed() {
        path = open(new LevelCurve(-60, -6, 0.03, false, 1));
        show(t -> 1, 2, true);
        show(t -> LightCellSeen.light01(LightCellSeen.reachMm(600, 8, 0.15, t - 0.5)), 1, true);
        assertEquals(CEILING, frames.last().gain01(), STEP_GAIN);
    }

    @Test
    void aStepWithNobodyThereMutesBeforeAHandComes() {
        show(t -> 1, 2, false);
        show(step(1, 10), 3, false);
        double from = second;
        show(t -> 10, 5, true);
        assertEquals(0, loudestSince(from), 0);
    }

    @Test
    void theOpenLevelIsTakenAgainAndTheWholeResponseMovesAsARefitMovesIt() {
        show(t -> 1, 2, false);
        show(step(1, 3), 2, false);
        assertTrue(frames.last().state() == PlayState.MUTED);
        path.retakeLight();
        show(t -> 3, 1.2, false);
        LightTaken taken = path.takeLightTaken();
        assertNotNull(taken);
        assertTrue(taken.taken(), taken.words());
        assertEquals(Math.rint(CELL.raw(OPEN)), taken.beforeRaw(), 1);
        assertEquals(Math.rint(CELL.raw(OPEN + LightCellSeen.POWER * Math.log(3))), taken.afterRaw(), 1);
        assertNull(path.takeLightTaken(), "told once");
        show(t -> 3 * LightCellSeen.light01(50), 2, true);
        assertEquals(0.5, frames.last().levelPlace01(), 0.02);
        Room refitted = Refit.of("test", "2026-01-01T00:00:00Z", room(), List.of(openHold(taken.afterRaw())))
                .room()
                .orElseThrow();
        HandSetup level = refitted.level();
        assertNotNull(level);
        double seen = Math.rint(CELL.raw(OPEN + LightCellSeen.POWER * Math.log(3 * LightCellSeen.light01(50))));
        double asRefitted = level.zone().place01(level.response().mm(CELL.physical(seen)));
        assertEquals(asRefitted, frames.last().levelPlace01(), 0.005);
    }

    private static Hold openHold(double raw) {
        return Hold.of(StepKind.OPEN, HandRole.LEVEL, CELL.physical(raw), 0.001, 0.001, 50);
    }

    @Test
    void whileAHandPlaysTheOpenLevelIsNotTaken() {
        show(t -> 1, 2, true);
        path.retakeLight();
        show(t -> 1, 5, true);
        assertNull(path.takeLightTaken(), "it waits");
        show(t -> 1, 6, true);
        LightTaken taken = path.takeLightTaken();
        assertNotNull(taken);
        assertFalse(taken.taken());
        assertTrue(taken.words().contains("a hand played"), taken.words());
        assertEquals(CEILING, frames.last().gain01(), STEP_GAIN);
    }

    @Test
    void aMovingLevelHandIsNotTakenForTheOpenLevel() {
        show(t -> 1, 2, false);
        path.retakeLight();
        show(t -> LightCellSeen.light01(80 + 60 * Math.sin(6 * t)), 11, false);
        LightTaken taken = path.takeLightTaken();
        assertNotNull(taken);
        assertFalse(taken.taken());
        assertTrue(taken.words().contains("did not stand still"), taken.words());
    }

    @Test
    void anOpenLevelAtTheEndOfTheScaleIsNotTaken() {
        show(t -> 1, 2, false);
        path.retakeLight();
        show(t -> 1e6, 12, false);
        LightTaken taken = path.takeLightTaken();
        assertNotNull(taken);
        assertFalse(taken.taken());
        assertTrue(taken.words().contains("end of its scale"), taken.words());
    }

    /** Light that fell by a sixth between two songs, over minutes: open is open again. */
    @Test
    void driftBetweenSongsIsFollowedAndHinted() {
        double less = 0.84;
        show(t -> 1 + (less - 1) * t / 600, 600, false);
        show(t -> less, 300, false);
        assertTrue(path.hint().startsWith("the open light is darker"), path.hint());
        show(t -> less, 2, true);
        assertEquals(1, frames.last().levelPlace01(), 0.02);
        assertEquals("", path.hint(), "never while a hand plays");
    }

    /** The same fall while a hand plays all the time is not followed: an eighth in ln is a tenth of the level's way. */
    @Test
    void driftWhilePlayingIsNotFollowed() {
        show(t -> 1 - 0.16 * t / 600, 600, true);
        double lostMm = 100 * LightCellSeen.POWER * -Math.log(0.84) / (OPEN - MID);
        assertTrue(lostMm > 15);
        assertTrue(
                frames.last().levelPlace01() < 1 - 0.5 * lostMm / 200,
                "place " + frames.last().levelPlace01());
        assertEquals("", path.hint());
    }

    @Test
    void steadyLightGivesNoHint() {
        show(t -> 1 + 0.04 * Math.sin(t / 100), 1200, false);
        assertEquals("", path.hint());
    }

    @Test
    void aRoomWithoutLightSaysSo() {
        RoomProfile profile = TestRooms.twoDistances(50);
        PlayPath bare = new PlayPath(
                profile, Tuning.usual(), TestRooms.SHAPE, PathSettings.USUAL, List.of(frames), Nanos.PER_SECOND);
        assertNull(bare.takeLightTaken());
        bare.retakeLight();
        LightTaken taken = bare.takeLightTaken();
        assertNotNull(taken);
        assertTrue(taken.words().contains("no light sensor"), taken.words());
        assertNull(bare.takeLightTaken());
    }
}
