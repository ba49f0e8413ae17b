package handspan;

import com.sun.jna.Native;
import com.sun.jna.NativeLong;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * A pseudo-terminal: its master end is the board, its slave end a port that the serial library can open. Linux and
 * macOS. The master does not block, so that writing never waits for a reader; what finds no room is dropped, as a board
 * without flow control does.
 */
public final class Pty implements AutoCloseable {
    private static final boolean MAC = System.getProperty("os.name", "").startsWith("Mac");
    private static final int O_RDWR = 2;
    private static final int O_NOCTTY = MAC ? 0x20000 : 0x100;
    private static final int F_SETFL = 4;
    private static final int O_NONBLOCK = MAC ? 4 : 0x800;
    private static final int TERMIOS_BYTES = 128;

    static {
        Native.register(Pty.class, "c");
    }

    private int master;
    private final String slave;

    /** Opens a raw one: no echo, no line editing. */
    public Pty() throws IOException {
        master = posix_openpt(O_RDWR | O_NOCTTY);
        if (master < 0 || grantpt(master) != 0 || unlockpt(master) != 0) {
            throw new IOException("no pseudo-terminal to be had");
        }
        slave = ptsname(master);
        byte[] termios = new byte[TERMIOS_BYTES];
        tcgetattr(master, termios);
        cfmakeraw(termios);
        tcsetattr(master, 0, termios);
        fcntl(master, F_SETFL, O_RDWR | O_NONBLOCK);
    }

    /** The port's name. */
    public String port() {
        return slave;
    }

    /** The board prints. */
    public void write(String text) {
        write(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    /** The board prints bytes. */
    public synchronized void write(byte[] bytes) {
        if (master >= 0) {
            write(master, bytes, new NativeLong(bytes.length));
        }
    }

    /** Hangs up: what a pulled cable looks like. */
    @Override
    public synchronized void close() {
        if (master >= 0) {
            close(master);
            master = -1;
        }
    }

    private static native int posix_openpt(int flags);

    private static native int grantpt(int fd);

    private static native int unlockpt(int fd);

    private static native String ptsname(int fd);

    private static native int tcgetattr(int fd, byte[] termios);

    private static native int tcsetattr(int fd, int action, byte[] termios);

    private static native void cfmakeraw(byte[] termios);

    private static native int fcntl(int fd, int command, int argument);

    private static native NativeLong write(int fd, byte[] bytes, NativeLong count);

    private static native int close(int fd);
}
