package handspan.room.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.line.Rejection;
import handspan.room.budget.VenueLine.Grade;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Each verdict beside its near miss; limits are common practice and stand in the class. */
class VenueLineTest {
    private static Grade link(long lines, Map<Rejection, Long> rejections, double ratePerS) {
        return VenueLine.link(lines, rejections, ratePerS, 50).grade();
    }

    @Test
    void aLinkIsHeldAgainstTheRoomsRate() {
        assertEquals(Grade.GOOD, link(500, Map.of(), 50));
        assertEquals(Grade.GOOD, link(500, Map.of(), 44));
        assertEquals(Grade.LOOK, link(500, Map.of(), 41));
        assertEquals(Grade.LOOK, link(500, Map.of(), 100));
        // too few for a rate
        assertEquals(Grade.GOOD, link(5, Map.of(), 10));
    }

    @Test
    void silenceAndGarbledLinesWillNotDo() {
        VenueLine silent = VenueLine.link(0, Map.of(), 0, 50);
        assertEquals(Grade.BAD, silent.grade());
        assertTrue(silent.remedy().contains("baud"), silent.remedy());
        assertEquals(Grade.BAD, link(100, Map.of(Rejection.NOT_TEXT, 31L), 50));
        assertEquals(Grade.LOOK, link(100, Map.of(Rejection.NOT_TEXT, 29L), 50));
        assertEquals(Grade.LOOK, link(100, Map.of(Rejection.OTHER_COUNT, 6L), 50));
        assertEquals(Grade.GOOD, link(100, Map.of(Rejection.OTHER_COUNT, 5L), 50));
        assertEquals(Grade.GOOD, link(100, Map.of(Rejection.SETTLING, 5L, Rejection.NO_NUMBER, 4L), 50));
    }

    @Test
    void aTargetThatNobodyListensAtIsWorthALookAndOneOutOfReachWillNotDo() {
        assertEquals(Grade.GOOD, VenueLine.target("udp:a:1", 4, 0, "").grade());
        assertEquals(
                "4 silent messages sent, none refused",
                VenueLine.target("midi:moth", 4, 0, "").reason());
        assertEquals(
                Grade.LOOK, VenueLine.target("udp:a:1", 2, 2, "nobody listens").grade());
        VenueLine lost = VenueLine.target("udp:a:1", 0, 0, "host 'a' is not known");
        assertEquals(Grade.BAD, lost.grade());
        assertEquals("host 'a' is not known", lost.remedy());
    }

    @Test
    void thePageIsAsGoodAsItsWorstLine() {
        VenueLine room = VenueLine.room(RoomCheck.rebuilt("rebuilt"));
        assertEquals(Grade.BAD, room.grade());
        assertEquals("calibrate anew", room.remedy());
        VenueLine left = VenueLine.notChecked("room", "left out");
        assertEquals(Grade.GOOD, VenueLine.worst(List.of()));
        assertEquals(Grade.NOT_CHECKED, VenueLine.worst(List.of(left, VenueLine.target("t", 1, 0, ""))));
        assertEquals(Grade.BAD, VenueLine.worst(List.of(room, left)));
    }
}
