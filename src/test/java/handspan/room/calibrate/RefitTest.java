package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.number.fit.MonotoneCurve;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class RefitTest {
    private static Room room(@Nullable HandSetup level) {
        ChannelSpec pitch = ChannelSpec.parse("1:distance:mm");
        return new Room(
                "hall",
                "2026-01-01",
                new Instrument("reed", 1, 115_200, null, pitch, level == null ? null : level.channel(), 5),
                Air.USUAL,
                50,
                new HandSetup(pitch, new Response.Parabola(5, 1, 0, 90, 510), new Zone(100, 500, 1, 1), 2, false),
                level,
                List.of());
    }

    private static HandSetup light() {
        return new HandSetup(
                ChannelSpec.parse("2:photoresistor:counts10"),
                new Response.Curve(List.of(
                        new MonotoneCurve.Point(-2, 0),
                        new MonotoneCurve.Point(0, 100),
                        new MonotoneCurve.Point(2, 200))),
                new Zone(0, 200, 1, 1),
                1,
                true);
    }

    private static Hold hold(StepKind kind, HandRole hand, double physical) {
        return Hold.of(kind, hand, physical, 0.3, 2, 75);
    }

    @Test
    void newEndsAreReadThroughTheOldResponse() {
        Room before = room(light());
        Room after = Refit.of(
                        "attic",
                        "2026-02-02",
                        before,
                        List.of(
                                hold(StepKind.NEAR, HandRole.PITCH, 115),
                                hold(StepKind.FAR, HandRole.PITCH, 455),
                                hold(StepKind.OPEN, HandRole.LEVEL, 2)))
                .room()
                .orElseThrow();
        assertEquals("attic", after.name());
        assertSame(before.pitch().response(), after.pitch().response());
        assertEquals(120, after.pitch().zone().nearMm(), 1e-9);
        assertEquals(460, after.pitch().zone().farMm(), 1e-9);
    }

    /** A dimmer room shifts all places by one amount of log light. */
    @Test
    void theOpenLightShiftsTheWholeResponse() {
        HandSetup level = Objects.requireNonNull(
                Refit.of("hall", "2026-02-02", room(light()), List.of(hold(StepKind.OPEN, HandRole.LEVEL, 1.2)))
                        .room()
                        .orElseThrow()
                        .level());
        assertEquals(200, level.response().mm(1.2), 1e-9);
        assertEquals(100, level.response().mm(-0.8), 1e-9);
        assertEquals(0, level.response().mm(-2.8), 1e-9);
    }

    @Test
    void endsTooCloseTogetherAreRefusedHereToo() {
        Outcome outcome = Refit.of(
                "hall",
                "2026-02-02",
                room(null),
                List.of(hold(StepKind.NEAR, HandRole.PITCH, 200), hold(StepKind.FAR, HandRole.PITCH, 270)));
        assertTrue(outcome.reasons().get(0).contains("only 70 mm apart"));
    }

    @Test
    void aRoomWithoutLightHasNoLightToTakeAgain() {
        assertThrows(IllegalArgumentException.class, () -> Refit.plan(room(null), true));
        assertEquals(2, Refit.plan(room(null), false).steps().size());
        assertEquals(1, Refit.plan(room(light()), true).steps().size());
    }
}
