package handspan.outside.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Pty;
import handspan.instrument.sensor.PortIdentity;
import handspan.live.session.Link;
import handspan.live.session.LinkException;
import handspan.live.session.PortInfo;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The serial library against a real pseudo-terminal. */
@Timeout(20)
@DisabledOnOs(OS.WINDOWS)
class PseudoTerminalTest {
    private static String read(Link link, int count) {
        StringBuilder text = new StringBuilder();
        byte[] buffer = new byte[64];
        while (text.length() < count) {
            int got = link.read(buffer);
            assertTrue(got > 0, "the link ended after '" + text + "'");
            text.append(new String(buffer, 0, got, StandardCharsets.ISO_8859_1));
        }
        return text.toString();
    }

    @Test
    void whatTheBoardPrintsIsRead() throws Exception {
        try (Pty board = new Pty();
                Link link = new SerialOpener(board.port(), 115_200, null).open()) {
            board.write("234,567\r\n");
            assertEquals("234,567\r\n", read(link, 9));
        }
    }

    @Test
    void whatWasPrintedBeforeTheOpeningIsStaleAndDropped() throws Exception {
        try (Pty board = new Pty()) {
            // something has to hold the other end open, or the system drops the bytes itself
            try (Link early = new SerialOpener(board.port(), 115_200, null).open()) {
                board.write("x");
                read(early, 1);
            }
            board.write("old,old\n");
            try (Link link = new SerialOpener(board.port(), 115_200, null).open()) {
                board.write("new,new\n");
                String text = read(link, 8);
                assertTrue(text.startsWith("new"), "read '" + text + "'");
            }
        }
    }

    @Test
    void aHangUpEndsTheReadAtOnceAndForGood() throws Exception {
        try (Pty board = new Pty();
                Link link = new SerialOpener(board.port(), 115_200, null).open()) {
            board.close();
            assertEquals(-1, link.read(new byte[16]));
            assertEquals(-1, link.read(new byte[16]));
        }
    }

    @Test
    void closingFromAnotherThreadEndsAWaitingRead() throws Exception {
        try (Pty board = new Pty()) {
            Link link = new SerialOpener(board.port(), 115_200, null).open();
            int[] result = {0};
            Thread reader = new Thread(() -> result[0] = link.read(new byte[16]));
            reader.start();
            Thread.sleep(50);
            link.close();
            reader.join(5000);
            assertEquals(-1, result[0]);
        }
    }

    @Test
    void whatIsNoPortIsToldApart(@TempDir Path folder) throws IOException {
        assertKind(LinkException.Kind.MISSING, "/dev/ttyHANDSPAN99", "plug the board in");
        assertKind(LinkException.Kind.NOT_A_PORT, folder.toString(), "is a folder");
        Path file = Files.writeString(folder.resolve("log.txt"), "1,2\n");
        assertKind(LinkException.Kind.NOT_A_PORT, file.toString(), "take:" + file);
        assertKind(LinkException.Kind.NOT_A_PORT, "/dev/null", "not a serial port");
    }

    @Test
    void aPortThatIsOpenAlreadyIsBusy() throws Exception {
        try (Pty board = new Pty();
                Link first = new SerialOpener(board.port(), 115_200, null).open()) {
            assertKind(LinkException.Kind.BUSY, board.port(), "in use");
            board.write("still there\n");
            assertEquals("still there\n", read(first, 12));
        }
    }

    /** The board that was there is gone, and comes back under another name while another board has taken its own. */
    @Test
    void aBoardIsOpenedAgainUnderItsNewName() throws Exception {
        try (Pty one = new Pty();
                Pty two = new Pty();
                Pty back = new Pty()) {
            List<PortInfo> ports = new CopyOnWriteArrayList<>(List.of(info(one, "A17"), info(two, "B22")));
            SerialOpener opener = new SerialOpener(one.port(), 115_200, null, () -> ports);
            try (Link link = opener.open()) {
                assertEquals(
                        "A17", Objects.requireNonNull(link.facts().identity()).serialNumber());
                assertEquals("", link.facts().note());
            }
            ports.clear();
            ports.add(new PortInfo(one.port(), "board", 0x1209, 1, "C33", "1-1", true, ""));
            LinkException e = assertThrows(LinkException.class, opener::open);
            assertTrue(String.valueOf(e.getMessage()).contains("another board is at"), e.getMessage());
            ports.add(info(back, "A17"));
            try (Link link = opener.open()) {
                assertEquals(back.port(), link.facts().port());
                assertTrue(link.facts().note().contains("the instrument is at " + back.port() + " now"));
                back.write("here\n");
                assertEquals("here\n", read(link, 5));
            }
        }
    }

    /** A room remembers its board: play opens it where it is now. */
    @Test
    void aRememberedBoardIsOpenedThoughItsPortHasAnotherNameTonight() throws Exception {
        try (Pty board = new Pty()) {
            PortIdentity remembered = new PortIdentity(0x1209, 1, "A17", "9-9");
            SerialOpener opener =
                    new SerialOpener("/dev/ttyHANDSPAN99", 115_200, remembered, () -> List.of(info(board, "A17")));
            try (Link link = opener.open()) {
                assertEquals(board.port(), link.facts().port());
                assertTrue(link.facts().note().startsWith("/dev/ttyHANDSPAN99 is not there"));
            }
        }
    }

    /** All speeds are alike to a pseudo-terminal: the first is taken, after the board's start. */
    @Test
    void aSpeedIsLookedForOnTheOpenPortAndThenReadGoesOn() throws Exception {
        try (Pty board = new Pty()) {
            AtomicBoolean on = new AtomicBoolean(true);
            Thread printer = new Thread(() -> {
                for (int i = 0; on.get(); i++) {
                    board.write((200 + i % 9) + ",567\r\n");
                    try {
                        Thread.sleep(20);
                    } catch (InterruptedException e) {
                        Thread.currentThread().interrupt();
                    }
                }
            });
            printer.start();
            try (Link link = new SerialOpener(board.port(), SerialOpener.AUTO, null).open()) {
                assertEquals(115_200, link.facts().baud());
                assertTrue(
                        link.facts().note().startsWith("115200 baud found by trying: "),
                        link.facts().note());
                assertTrue(read(link, 40).contains(",567\r\n"));
            } finally {
                on.set(false);
                printer.join();
            }
        }
    }

    /** Another program that takes no lock: it is told, with its number, because each gets only part of the lines. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void anotherReaderOfAnOpenPortIsNamed() throws Exception {
        try (Pty board = new Pty()) {
            Process other = new ProcessBuilder("sleep", "30")
                    .redirectInput(Path.of(board.port()).toFile())
                    .start();
            try (Link link = new SerialOpener(board.port(), 115_200, null).open()) {
                assertTrue(
                        link.facts().note().contains("'sleep' (process " + other.pid() + ") has this port open, too"),
                        link.facts().note());
            } finally {
                other.destroyForcibly().waitFor();
            }
        }
    }

    private static PortInfo info(Pty pty, String serial) {
        return new PortInfo(pty.port(), "board", 0x1209, 1, serial, "1-1", true, "");
    }

    private static void assertKind(LinkException.Kind kind, String port, String part) {
        LinkException e = assertThrows(LinkException.class, () -> new SerialOpener(port, 115_200, null).open());
        assertEquals(kind, e.kind(), e.getMessage());
        assertTrue(String.valueOf(e.getMessage()).contains(part), e.getMessage());
    }
}
