package handspan.outside.serial;

import handspan.live.session.LinkException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;

/** Why a port can't be opened: missing, busy, forbidden, a folder, a file. Says which, and what to do. */
final class PortCheck {
    private static final int ENOENT = 2;
    private static final int EAGAIN = 11;
    private static final int EACCES = 13;
    private static final int EBUSY = 16;
    private static final int ENOTTY = 25;
    private static final int EAGAIN_MAC = 35;
    private static final int WINDOWS_ACCESS_DENIED = 5;

    private PortCheck() {}

    /** Refuses names that are plainly something else, before the library is asked. */
    static void refuseWhatIsNoPort(String name) throws LinkException {
        if (isWindows()) {
            return;
        }
        Path path;
        try {
            path = Path.of(name.startsWith("/") ? name : "/dev/" + name);
        } catch (InvalidPathException e) {
            throw new LinkException(
                    LinkException.Kind.NOT_A_PORT, "port '" + name + "' is no name of a port: run 'handspan ports'");
        }
        Path given = Path.of(name);
        if (Files.isRegularFile(given)) {
            throw new LinkException(
                    LinkException.Kind.NOT_A_PORT,
                    "'" + name + "' is a file, not a port: to replay a recording write take:" + name);
        }
        if (Files.isDirectory(given)) {
            throw new LinkException(
                    LinkException.Kind.NOT_A_PORT, "'" + name + "' is a folder, not a port: run 'handspan ports'");
        }
        if (!Files.exists(path)) {
            throw missing(name);
        }
        if (!Files.isReadable(path) || !Files.isWritable(path)) {
            throw denied(name);
        }
    }

    static LinkException missing(String name) {
        return new LinkException(
                LinkException.Kind.MISSING,
                "port '" + name + "' is not there: plug the board in, then run 'handspan ports' to see its name");
    }

    static LinkException denied(String name) {
        String remedy = isMac() || isWindows()
                ? "close other programs that may hold it, then try again"
                : "let your user into the port's group with 'sudo usermod -a -G dialout $USER', log out and in again"
                        + " (the group's name is shown by 'ls -l " + name + "')";
        return new LinkException(
                LinkException.Kind.DENIED, "port '" + name + "' may not be opened by this user: " + remedy);
    }

    static LinkException busy(String name) {
        return new LinkException(
                LinkException.Kind.BUSY,
                "port '" + name + "' is in use by another program: close that program (a serial monitor, or a second"
                        + " handspan), wait ten seconds if the board was just plugged in, and try again");
    }

    /**
     * What a failed opening means.
     *
     * @param code the system's error number as the library gives it
     */
    static LinkException refusal(String name, int code) {
        return switch (code) {
            case ENOENT -> isWindows() ? missing(name) : goneOrBusy(name);
            case EACCES -> denied(name);
            case WINDOWS_ACCESS_DENIED -> isWindows() ? busy(name) : refused(name, code);
            case EBUSY, EAGAIN, EAGAIN_MAC -> busy(name); // the lock that the library takes is taken
            case ENOTTY ->
                new LinkException(
                        LinkException.Kind.NOT_A_PORT,
                        "'" + name + "' is a device but not a serial port: run 'handspan ports'");
            default -> refused(name, code);
        };
    }

    /** The library answers "no such port" also when this very program has it open already. */
    private static LinkException goneOrBusy(String name) {
        return Files.exists(Path.of(name.startsWith("/") ? name : "/dev/" + name)) ? busy(name) : missing(name);
    }

    private static LinkException refused(String name, int code) {
        return new LinkException(
                LinkException.Kind.REFUSED,
                "port '" + name + "' could not be opened (system error " + code
                        + "): unplug the board, plug it in again and try again");
    }

    private static boolean isWindows() {
        return os().contains("windows");
    }

    private static boolean isMac() {
        return os().contains("mac");
    }

    private static String os() {
        return System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    }
}
