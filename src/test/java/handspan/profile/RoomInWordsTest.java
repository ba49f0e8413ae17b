package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.TestRooms;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.StepKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class RoomInWordsTest {
    /** Pitch over 100..500 mm, with something seen at rest. */
    private static Room seeing(double mm) {
        Room room = TestRooms.twoDistances(50).room();
        Hold rest = new Hold(
                StepKind.REST,
                HandRole.PITCH,
                mm,
                0.1,
                2,
                100,
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                1,
                Optional.empty());
        return new Room(
                room.name(),
                room.calibratedAt(),
                room.instrument(),
                room.air(),
                room.ratePerS(),
                room.pitch(),
                room.level(),
                List.of(rest));
    }

    private static List<String> ofRest(Room room) {
        return RoomInWords.hands(room).stream()
                .filter(line -> line.startsWith("rest: "))
                .toList();
    }

    @Test
    void whatStandsWhereAHandPlaysIsSaid() {
        List<String> said = ofRest(seeing(150));
        assertEquals(1, said.size());
        assertTrue(said.get(0).contains("150 mm"), said::toString);
    }

    @Test
    void aCeilingFarBeyondTheZoneIsNotWorthAWord() {
        assertEquals(List.of(), ofRest(seeing(2400)));
        assertEquals(List.of(), ofRest(TestRooms.twoDistances(50).room()));
    }
}
