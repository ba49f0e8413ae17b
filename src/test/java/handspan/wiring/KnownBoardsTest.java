package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.instrument.sensor.PortIdentity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Invented USB identities. */
class KnownBoardsTest {
    private static final Optional<PortIdentity> A = board("A1", "1-1");
    private static final Optional<PortIdentity> B = board("B2", "1-2");
    private static final Optional<PortIdentity> CHEAP_LEFT = board("", "1-3");
    private static final Optional<PortIdentity> CHEAP_RIGHT = board("", "1-4");

    private static Optional<PortIdentity> board(String serial, String location) {
        return Optional.of(new PortIdentity(0x1234, 0x5678, serial, location));
    }

    @Test
    void serialNumbersAreEnough() {
        assertEquals(List.of(1, 0), KnownBoards.of(List.of(B, A), List.of(A, B)));
        assertEquals(List.of(0), KnownBoards.of(List.of(A), List.of(board("A1", "9-9"))));
    }

    @Test
    void withoutSerialNumbersTheSocketIs() {
        assertEquals(List.of(1, 0), KnownBoards.of(List.of(CHEAP_RIGHT, CHEAP_LEFT), List.of(CHEAP_LEFT, CHEAP_RIGHT)));
        assertEquals(List.of(-1), KnownBoards.of(List.of(CHEAP_LEFT), List.of(CHEAP_RIGHT)));
    }

    @Test
    void twoRoomsOfOneBoardHaveToWave() {
        assertEquals(List.of(-1, -1, 1), KnownBoards.of(List.of(A, A, B), List.of(A, B)));
    }

    @Test
    void twoBoardsOfOneSerialNumberHaveToWave() {
        assertEquals(List.of(-1), KnownBoards.of(List.of(A), List.of(A, board("A1", "1-9"))));
    }

    @Test
    void aRoomThatKnowsNoBoardHasToWave() {
        assertEquals(List.of(-1, 0), KnownBoards.of(List.of(Optional.empty(), A), List.of(A, Optional.empty())));
    }
}
