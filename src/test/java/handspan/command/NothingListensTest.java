package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Program;
import handspan.Waits;
import handspan.command.OpenSockets.Socket;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.channels.DatagramChannel;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Nothing of the program can be reached from the network; what demo receives on is of this machine only (Linux). */
@EnabledOnOs(OS.LINUX)
class NothingListensTest {
    @TempDir
    Path folder;

    private static void assertClosed(Program program) throws IOException {
        for (Socket socket : OpenSockets.of(program.pid())) {
            assertFalse(socket.isListening() || socket.receives(), "" + socket);
        }
    }

    @Test
    void playingWatchingAndCalibratingListenToNobody() throws IOException {
        String profiles = folder.resolve("rooms").toString();
        try (Datagrams heard = new Datagrams();
                Program play = Program.start(
                        folder,
                        "play",
                        "sim:hall",
                        "--room",
                        "saltmill-hall",
                        "--profiles",
                        "profiles",
                        "--go",
                        "--json",
                        "--send",
                        "udp:127.0.0.1:" + heard.port());
                Program watch = Program.start(folder, "watch", "sim:hall", "--json");
                Program calibrate = Program.start(
                        folder, "calibrate", "sim:hall", "--room", "x", "--profiles", profiles, "--json")) {
            Waits.until(() -> play.out().contains("\"playing\""), play::words);
            Waits.until(() -> watch.out().contains("\"values\""), watch::words);
            Waits.until(() -> calibrate.out().contains("\"step\""), calibrate::words);
            assertClosed(play);
            assertClosed(watch);
            assertClosed(calibrate);
            List<Socket> sending = OpenSockets.of(play.pid());
            assertEquals(1, sending.size(), "its target alone: " + sending);
            assertTrue(sending.get(0).table().startsWith("udp"), "" + sending);
            assertEquals(List.of(), OpenSockets.of(watch.pid()));
            assertEquals(List.of(), OpenSockets.of(calibrate.pid()));
        }
    }

    @Test
    void theDemoReceivesFromThisMachineOnly() throws IOException {
        Set<Socket> seen = new HashSet<>();
        String out = folder.resolve("demo").toString();
        try (Program demo = Program.start(folder, "demo", "--no-window", "--out", out)) {
            Waits.until(
                    () -> {
                        seen.addAll(socketsOf(demo));
                        return seen.stream().anyMatch(Socket::receives);
                    },
                    demo::words);
        }
        for (Socket socket : seen) {
            assertFalse(socket.isListening(), "" + socket);
            assertTrue(!socket.receives() || socket.isOnLoopback(), "" + socket);
        }
    }

    private static List<Socket> socketsOf(Program program) {
        try {
            return OpenSockets.of(program.pid());
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Else the others would prove nothing. */
    @Test
    void whatListensIsSeen() throws IOException {
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
                DatagramChannel everywhere = DatagramChannel.open().bind(null)) {
            List<Socket> sockets = OpenSockets.of(ProcessHandle.current().pid());
            assertTrue(server.isBound() && sockets.stream().anyMatch(Socket::isListening), "" + sockets);
            assertTrue(
                    everywhere.isOpen()
                            && sockets.stream().anyMatch(socket -> socket.receives() && !socket.isOnLoopback()),
                    "" + sockets);
        }
    }
}
