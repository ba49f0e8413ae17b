package handspan.outside.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Pty;
import handspan.live.session.Link;
import handspan.live.session.LinkException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
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
                Link link = new SerialOpener(board.port(), 115_200).open()) {
            board.write("234,567\r\n");
            assertEquals("234,567\r\n", read(link, 9));
        }
    }

    @Test
    void whatWasPrintedBeforeTheOpeningIsStaleAndDropped() throws Exception {
        try (Pty board = new Pty()) {
            // something has to hold the other end open, or the system drops the bytes itself
            try (Link early = new SerialOpener(board.port(), 115_200).open()) {
                board.write("x");
                read(early, 1);
            }
            board.write("old,old\n");
            try (Link link = new SerialOpener(board.port(), 115_200).open()) {
                board.write("new,new\n");
                String text = read(link, 8);
                assertTrue(text.startsWith("new"), "read '" + text + "'");
            }
        }
    }

    @Test
    void aHangUpEndsTheReadAtOnceAndForGood() throws Exception {
        try (Pty board = new Pty();
                Link link = new SerialOpener(board.port(), 115_200).open()) {
            board.close();
            assertEquals(-1, link.read(new byte[16]));
            assertEquals(-1, link.read(new byte[16]));
        }
    }

    @Test
    void closingFromAnotherThreadEndsAWaitingRead() throws Exception {
        try (Pty board = new Pty()) {
            Link link = new SerialOpener(board.port(), 115_200).open();
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
                Link first = new SerialOpener(board.port(), 115_200).open()) {
            assertKind(LinkException.Kind.BUSY, board.port(), "in use by another program");
            board.write("still there\n");
            assertEquals("still there\n", read(first, 12));
        }
    }

    private static void assertKind(LinkException.Kind kind, String port, String part) {
        LinkException e = assertThrows(LinkException.class, () -> new SerialOpener(port, 115_200).open());
        assertEquals(kind, e.kind(), e.getMessage());
        assertTrue(String.valueOf(e.getMessage()).contains(part), e.getMessage());
    }
}
