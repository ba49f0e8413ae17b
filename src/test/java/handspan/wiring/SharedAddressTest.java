package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.TestRooms;
import handspan.live.path.PathSettings;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.profile.RoomProfile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who could be told apart at the other end. */
class SharedAddressTest {
    private static Seat seat(int number, String name, String target) {
        RoomProfile room = TestRooms.twoDistances(50);
        SendPlan plan = SendPlan.byDefault("Test reed", List.of(SendTarget.parse(target)))
                .renamed("Test reed", name);
        RoomProfile sending = room.with(plan);
        return new Seat(
                number, name, sending, sending.tunings(), sending.tunings().get(0), PathSettings.USUAL);
    }

    @Test
    void twoOfOneNameAtOneTargetAreRefusedWithWhatToDo() {
        Optional<SharedAddress> shared = SharedAddress.among(List.of(
                seat(1, "Wren", "udp:127.0.0.1:9000"),
                seat(2, "Rook", "udp:127.0.0.1:9000"),
                seat(3, "Wren", "udp:127.0.0.1:9000")));
        String words = shared.orElseThrow().words();
        assertTrue(words.contains("both send /Wren/pitch to udp:127.0.0.1:9000"), words);
        assertTrue(words.contains("--as NAME"), words);
    }

    @Test
    void twoOfOneNameAtTwoTargetsAreNot() {
        assertEquals(
                Optional.empty(),
                SharedAddress.among(
                        List.of(seat(1, "Wren", "udp:127.0.0.1:9000"), seat(2, "Wren", "udp:127.0.0.1:9001"))));
    }

    @Test
    void ofTwoNamesAtOneTargetNothingIsShared() {
        assertEquals(
                Optional.empty(),
                SharedAddress.among(
                        List.of(seat(1, "Wren", "udp:127.0.0.1:9000"), seat(2, "Rook", "udp:127.0.0.1:9000"))));
    }

    @Test
    void oneMidiChannelOfOneDeviceIsNoPlaceForTwo() {
        Optional<SharedAddress> shared =
                SharedAddress.among(List.of(seat(1, "Wren", "midi:Loop"), seat(2, "Rook", "midi:Loop")));
        assertTrue(shared.orElseThrow().words().contains("MIDI channel 1 to midi:Loop"), shared.toString());
    }

    @Test
    void anAddressOfThePlayersOwnStaysWhenTheInstrumentIsCalledOtherwise() {
        SendPlan plan = SendPlan.byDefault("Test reed", List.of());
        SendPlan own =
                plan.of(List.of(plan.lines().get(0).at("/lead/hz"), plan.lines().get(1)));
        assertEquals(
                List.of("/lead/hz", "/Rook/note"),
                own.renamed("Test reed", "Rook").lines().stream()
                        .map(line -> line.address())
                        .toList());
    }
}
