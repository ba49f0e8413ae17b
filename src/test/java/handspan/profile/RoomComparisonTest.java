package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.music.send.Packing;
import handspan.music.send.SendLine;
import handspan.music.send.SendTarget;
import handspan.music.send.SendValue;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Cents by hand: two octaves are 2400 cents over the zone. */
class RoomComparisonTest {
    private static final double CENTS = 0.01;

    private static RoomProfile withZone(RoomProfile profile, double nearMm, double farMm) {
        Room room = profile.room();
        HandSetup pitch = room.pitch().with(room.pitch().response(), new Zone(nearMm, farMm, 1, 1));
        return new RoomProfile(
                new Room(
                        room.name(),
                        room.calibratedAt(),
                        room.instrument(),
                        room.air(),
                        room.ratePerS(),
                        pitch,
                        room.level(),
                        room.holds(),
                        room.aim()),
                List.of(SavingProgram.version("x", 0).tunings().get(0)),
                profile.level(),
                profile.send());
    }

    private static final RoomProfile BEFORE = withZone(SampleRooms.twoHands("Copper Attic"), 100, 500);

    @Test
    void nothingDiffersFromItself() {
        RoomComparison same = RoomComparison.of(BEFORE, BEFORE);
        assertEquals(List.of(), same.differences());
        assertEquals(List.of(0.0, 0.0, 0.0, 0.0, 0.0), same.centsByPlace());
    }

    /**
     * A near end 10 mm farther away: the hand at 200 mm stood at 100/400 of the zone and stands at 90/390 now, which is
     * 2400 * (0.2308 - 0.25) = -46.2 cents; at 300 mm 190/390 instead of 1/2: -30.8; at 400 mm -15.4.
     */
    @Test
    void aMovedZoneIsToldInMillimetresAndCents() {
        RoomComparison moved = RoomComparison.of(BEFORE, withZone(BEFORE, 110, 500));
        assertEquals(List.of("zone"), moved.words());
        assertEquals(10, moved.nearMm(), 1e-9);
        assertEquals(0, moved.farMm(), 1e-9);
        double[] expected = {0, -46.154, -30.769, -15.385, 0};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], moved.centsByPlace().get(i), CENTS);
        }
        assertTrue(
                moved.differences().get(0).words().startsWith("near end +10.0 mm, far end +0.0 mm"),
                moved.differences().get(0).words());
    }

    @Test
    void whatSoundsOtherwiseIsNamedEachInItsPlace() {
        RoomProfile after = BEFORE.with(BEFORE.tunings().get(0).shifted(2, 0))
                .with(BEFORE.tunings().get(0).named("second"))
                .with(new LevelCurve(-50, -9, 0.03, true, 1))
                .with(BEFORE.send().to(List.of(SendTarget.parse("udp:127.0.0.1:9123"))));
        assertEquals(
                List.of("tuning 'first'", "tuning 'second'", "level curve", "sends"),
                RoomComparison.of(BEFORE, after).words());
        assertEquals(
                "is gone", RoomComparison.of(after, BEFORE).differences().get(1).words());
    }

    @Test
    void linesThatAreSentOtherwiseAreNamed() {
        List<SendLine> lines = new ArrayList<>(BEFORE.send().lines());
        lines.set(3, lines.get(3).typed("i"));
        lines.add(SendLine.byDefault(SendValue.DB, "copper wing"));
        RoomProfile after = BEFORE.with(BEFORE.send().of(lines).with(Packing.USUAL.after(20)));
        RoomComparison comparison = RoomComparison.of(BEFORE, after);
        assertEquals(List.of("what is sent"), comparison.words());
        assertEquals(
                "not the same: level, db, bundles or their time",
                comparison.differences().get(0).words());
    }

    @Test
    void aNewInstrumentAndANewAirAreNamed() {
        RoomProfile other = SampleRooms.onlyPitch("Copper Attic");
        List<String> words = RoomComparison.of(BEFORE, other).words();
        assertTrue(words.contains("level hand"), words.toString());
    }
}
