package handspan.outside.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.PortIdentity;
import handspan.live.session.LinkException;
import handspan.live.session.PortInfo;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Ports and boards are invented; vendor 0x1209 is the one for projects without one of their own. */
class PortSearchTest {
    private static final PortIdentity NUMBERED = new PortIdentity(0x1209, 1, "A17", "1-1");
    private static final PortIdentity PLAIN = new PortIdentity(0x1209, 2, "", "1-2");

    private static PortInfo port(String name, int product, String serial, String location) {
        return new PortInfo(name, "board", 0x1209, product, serial, location, true, "");
    }

    private static PortSearch.Found find(PortIdentity board, boolean strict, PortInfo... ports) throws LinkException {
        return new PortSearch("/dev/ttyACM0", Optional.of(board), strict).among(List.of(ports));
    }

    @Test
    void aBoardAtItsOldPortIsOpenedWithoutAWord() throws LinkException {
        assertEquals(
                new PortSearch.Found("/dev/ttyACM0", ""), find(NUMBERED, true, port("/dev/ttyACM0", 1, "A17", "1-1")));
    }

    @Test
    void aBoardWithASerialNumberIsFoundUnderAnotherNameAndInAnotherSocket() throws LinkException {
        PortSearch.Found found = find(NUMBERED, true, port("/dev/ttyACM3", 1, "A17", "2-4"));
        assertEquals("/dev/ttyACM3", found.name());
        assertEquals("/dev/ttyACM0 is not there; the instrument is at /dev/ttyACM3 now: using that", found.note());
    }

    @Test
    void swappedNamesDoNotSwapTheBoards() throws LinkException {
        PortSearch.Found found =
                find(NUMBERED, true, port("/dev/ttyACM0", 1, "B22", "1-3"), port("/dev/ttyACM1", 1, "A17", "1-1"));
        assertEquals("/dev/ttyACM1", found.name());
        assertTrue(found.note().contains("/dev/ttyACM0 is another board"), found.note());
    }

    @Test
    void aBoardWithoutASerialNumberIsFoundByItsSocket() throws LinkException {
        PortSearch.Found found =
                find(PLAIN, true, port("/dev/ttyUSB4", 2, "", "1-3"), port("/dev/ttyUSB5", 2, "", "1-2"));
        assertEquals("/dev/ttyUSB5", found.name());
    }

    /** Some makers give all their boards the same serial number. */
    @Test
    void ofBoardsWithOneSerialNumberTheOneInTheOldSocketIsTaken() throws LinkException {
        PortSearch.Found found =
                find(NUMBERED, true, port("/dev/ttyACM1", 1, "A17", "1-4"), port("/dev/ttyACM2", 1, "A17", "1-1"));
        assertEquals("/dev/ttyACM2", found.name());
    }

    @Test
    void anotherBoardUnderTheOldNameIsNotOpenedSilentlyInASet() {
        LinkException e =
                assertThrows(LinkException.class, () -> find(NUMBERED, true, port("/dev/ttyACM0", 1, "B22", "1-1")));
        assertTrue(
                String.valueOf(e.getMessage())
                        .contains("another board is at /dev/ttyACM0 now (USB 1209:0001 B22 at 1-1)"),
                e.getMessage());
        // the same kind in another socket may be it, but nobody can tell
        LinkException plain =
                assertThrows(LinkException.class, () -> find(PLAIN, true, port("/dev/ttyACM0", 2, "", "1-7")));
        assertTrue(String.valueOf(plain.getMessage()).contains("start again with that"), plain.getMessage());
    }

    @Test
    void aPortThatThePlayerNamedIsOpenedThoughTheRoomRemembersAnotherBoard() throws LinkException {
        PortSearch.Found found = find(NUMBERED, false, port("/dev/ttyACM0", 1, "B22", "1-1"));
        assertEquals("/dev/ttyACM0", found.name());
        assertTrue(found.note().contains("is not the one that this room was made with"), found.note());
    }

    @Test
    void aPortOfNoIdentityIsOpenedByItsName() throws LinkException {
        PortInfo built = new PortInfo("/dev/ttyACM0", "built in", -1, -1, "", "", true, "");
        assertEquals(new PortSearch.Found("/dev/ttyACM0", ""), find(NUMBERED, true, built));
        assertEquals(new PortSearch.Found("COM3", ""), new PortSearch("COM3", Optional.empty(), true).among(List.of()));
    }
}
