package handspan.command;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The network sockets of a process, as Linux tells them: the inodes behind its descriptors, looked up in the tables of
 * /proc/net (proc(5)). Their columns: 1 local address, 2 remote address, 3 state, 9 inode; addresses in hex, each
 * 32-bit word in the machine's own byte order.
 */
final class OpenSockets {
    private static final String LISTENING = "0A";

    /** 127.0.0.1, and the same as an IPv4 address mapped into IPv6, on a little-endian machine. */
    private static final Set<String> LOOPBACK =
            Set.of("0100007F", "0000000000000000FFFF00000100007F", "00000000000000000000000001000000");

    /** One socket. */
    record Socket(String table, String local, String remote, String state) {
        boolean isListening() {
            return table.startsWith("tcp") && state.equals(LISTENING);
        }

        /** Whether any sender's datagrams come in. */
        boolean receives() {
            return table.startsWith("udp") && remote.endsWith(":0000");
        }

        boolean isOnLoopback() {
            return LOOPBACK.contains(local.substring(0, local.indexOf(':')));
        }
    }

    private OpenSockets() {}

    /** All of a process; empty once it has ended. */
    static List<Socket> of(long pid) throws IOException {
        Path process = Path.of("/proc", Long.toString(pid));
        Set<String> inodes = inodes(process.resolve("fd"));
        List<Socket> sockets = new ArrayList<>();
        for (String table : List.of("tcp", "tcp6", "udp", "udp6")) {
            Path file = process.resolve("net").resolve(table);
            if (!Files.exists(file)) {
                continue;
            }
            List<String> lines = Files.readAllLines(file);
            for (String line : lines.subList(1, lines.size())) {
                String[] columns = line.strip().split("\\s+", -1);
                if (inodes.contains(columns[9])) {
                    sockets.add(new Socket(table, columns[1], columns[2], columns[3]));
                }
            }
        }
        return sockets;
    }

    private static Set<String> inodes(Path descriptors) throws IOException {
        Set<String> inodes = new TreeSet<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(descriptors)) {
            for (Path each : all) {
                String points = pointsTo(each);
                if (points.startsWith("socket:[")) {
                    inodes.add(points.substring("socket:[".length(), points.length() - 1));
                }
            }
        } catch (NoSuchFileException e) {
            return inodes;
        }
        return inodes;
    }

    private static String pointsTo(Path descriptor) {
        try {
            return Files.readSymbolicLink(descriptor).toString();
        } catch (IOException e) {
            return ""; // closed meanwhile
        }
    }
}
