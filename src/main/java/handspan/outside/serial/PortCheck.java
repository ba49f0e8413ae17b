package handspan.outside.serial;

import handspan.live.session.LinkException;
import handspan.live.session.PortInfo;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Finds out why a port can't be opened: missing, busy, forbidden, a folder, a file. */
final class PortCheck {
    private static final int ENOENT = 2;
    private static final int EAGAIN = 11;
    private static final int EACCES = 13;
    private static final int EBUSY = 16;
    private static final int ENOTTY = 25;
    private static final int EAGAIN_MAC = 35;
    private static final int WINDOWS_ACCESS_DENIED = 5;
    private static final String WINDOWS_DEVICES = "\\\\.\\";
    private static final String MAC_CALL_IN = "/dev/tty.";
    private static final String MAC_CALL_OUT = "/dev/cu.";

    private final Os os;
    private final String name;
    private final @Nullable PortCatalogue catalogue;
    private final PortRefusal refusal;

    /**
     * A check of one port.
     *
     * @param name as the player wrote it
     * @param catalogue what ports are there, for the words when it is not; null when it was there before
     */
    PortCheck(Os os, String name, @Nullable PortCatalogue catalogue) {
        this.os = os;
        this.name = name;
        this.catalogue = catalogue;
        this.refusal = new PortRefusal(os, name);
    }

    /**
     * The name to open a port by. On macOS each port has a call-in name that waits for a modem's carrier and a call-out
     * name that does not; the latter is what boards need. On Windows {@code \\.\COM12} means {@code COM12}.
     *
     * @param exists whether a path is there
     */
    static String callout(Os os, String name, Predicate<String> exists) {
        String full = os != Os.WINDOWS && name.startsWith("tty.") ? "/dev/" + name : name;
        if (os == Os.MAC && full.startsWith(MAC_CALL_IN)) {
            String out = MAC_CALL_OUT + full.substring(MAC_CALL_IN.length());
            return exists.test(out) ? out : name;
        }
        return os == Os.WINDOWS && name.startsWith(WINDOWS_DEVICES) ? name.substring(WINDOWS_DEVICES.length()) : name;
    }

    /** Whether a port belongs in a list: on macOS its call-in twin does not. */
    static boolean isListed(Os os, String path) {
        return os != Os.MAC || !path.startsWith(MAC_CALL_IN);
    }

    /** The path of a port; null for a name that no system could have. */
    static @Nullable Path path(String name) {
        try {
            return Path.of(name.startsWith("/") ? name : "/dev/" + name);
        } catch (InvalidPathException e) {
            return null;
        }
    }

    /** The name of the device that a name leads to, links followed; the name itself where there is none. */
    static String device(String name) {
        Path path = path(name);
        try {
            return path == null || !Files.isSymbolicLink(path)
                    ? name
                    : path.toRealPath().toString();
        } catch (IOException e) {
            return name;
        }
    }

    /** Refuses names that are plainly something else, before the library is asked. */
    void refuseWhatIsNoPort() throws LinkException {
        if (os == Os.WINDOWS) {
            return;
        }
        Path path = path(name);
        if (path == null || name.isBlank()) {
            throw refusal.noName();
        }
        Path given = Path.of(name);
        if (Files.isRegularFile(given)) {
            throw refusal.file();
        }
        if (Files.isDirectory(given)) {
            throw refusal.folder();
        }
        if (!Files.exists(path)) {
            throw missing();
        }
        if (!Files.isReadable(path) || !Files.isWritable(path)) {
            throw refusal.denied(groupOf(path));
        }
    }

    LinkException missing() {
        return catalogue == null
                ? refusal.gone()
                : refusal.missing(catalogue.ports().stream().map(PortInfo::name).toList());
    }

    private LinkException busy() {
        Path path = os == Os.LINUX ? path(name) : null;
        return refusal.busy(path == null ? List.of() : PortHolder.othersOf(path));
    }

    /** The group that may open it; empty where none is told. */
    private static String groupOf(Path path) {
        try {
            return Files.readAttributes(path, PosixFileAttributes.class).group().getName();
        } catch (IOException | UnsupportedOperationException e) {
            return "";
        }
    }

    /**
     * What a failed opening means.
     *
     * @param code the system's error number as the library gives it
     */
    LinkException refusal(int code) {
        return switch (code) {
            case ENOENT -> os == Os.WINDOWS ? missing() : goneOrBusy();
            case EACCES -> denied();
            case WINDOWS_ACCESS_DENIED -> os == Os.WINDOWS ? busy() : refusal.refused(code);
            case EBUSY, EAGAIN, EAGAIN_MAC -> busy(); // the lock that the library takes is taken
            case ENOTTY -> refusal.notAPort();
            default -> refusal.refused(code);
        };
    }

    private LinkException denied() {
        Path path = path(name);
        return refusal.denied(path == null ? "" : groupOf(path));
    }

    /** The library answers "no such port" also when this very program has it open already. */
    private LinkException goneOrBusy() {
        Path path = path(name);
        return path != null && Files.exists(path) ? busy() : missing();
    }
}
