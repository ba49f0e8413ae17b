package handspan.outside.serial;

import handspan.live.session.LinkException;
import java.util.List;

/**
 * What is said when a port can't be opened, with the remedy of each system. Pure, so that the words for one system can
 * be read on another.
 */
final class PortRefusal {
    private static final String LIST = "run 'handspan ports'";

    private final Os os;
    private final String name;

    /**
     * Refusals of a port.
     *
     * @param os whose remedies
     * @param name of the port, as the player wrote it
     */
    PortRefusal(Os os, String name) {
        this.os = os;
        this.name = name;
    }

    /**
     * Nothing of that name is there.
     *
     * @param present names of the ports that are
     */
    LinkException missing(List<String> present) {
        String there = present.isEmpty()
                ? "plug the board in, with a cable that carries data"
                : "plug the board in, or name one that is there: " + String.join(", ", present);
        String where = switch (os) {
            case LINUX -> "; 'handspan ports' lists them, 'sudo dmesg' says what the system made of a board";
            case MAC -> "; 'handspan ports' lists them, 'ls /dev/cu.*' does too";
            case WINDOWS ->
                "; 'handspan ports' lists them, so does the Device Manager under Ports (COM & LPT): a board"
                        + " with a yellow mark there lacks its driver";
        };
        return new LinkException(LinkException.Kind.MISSING, "port '" + name + "' is not there: " + there + where);
    }

    /** It was there and has gone. */
    LinkException gone() {
        return new LinkException(
                LinkException.Kind.MISSING, "port '" + name + "' is not there: plug the board in again");
    }

    /**
     * This user may not open it.
     *
     * @param group that the port belongs to; empty where it is not known
     */
    LinkException denied(String group) {
        String remedy = switch (os) {
            case LINUX ->
                group.isEmpty() || group.equals("root")
                        ? "it belongs to no group that a user can join: 'ls -l " + name
                                + "' shows whose it is, and for this time 'sudo chmod a+rw " + name + "' helps"
                        : "let your user into the port's group with 'sudo usermod -a -G " + group
                                + " $USER', then log out and in again";
            case MAC ->
                "'ls -l " + name + "' shows whose it is; allow accessories under System Settings, Privacy"
                        + " & Security, and plug the board in again";
            case WINDOWS -> "close other programs that may hold it; if none does, unplug the board, plug it in again";
        };
        return new LinkException(
                LinkException.Kind.DENIED, "port '" + name + "' may not be opened by this user: " + remedy);
    }

    /**
     * Somebody else has it open.
     *
     * @param holders who, as far as the system tells; may be empty
     */
    LinkException busy(List<PortHolder> holders) {
        if (!holders.isEmpty()) {
            PortHolder first = holders.get(0);
            String who = first.isHandspan() ? "a second handspan (process " + first.pid() + ")" : first.words();
            return new LinkException(
                    LinkException.Kind.BUSY,
                    "port '" + name + "' is in use: " + who + " has it open; end that first, with 'kill " + first.pid()
                            + "' if its window can't be found");
        }
        String remedy = switch (os) {
            case LINUX ->
                "close that program (a serial monitor, or a second handspan; 'sudo fuser -v " + name
                        + "' names it), wait ten seconds if the board was just plugged in, and try again";
            case MAC ->
                "close that program (a serial monitor, or a second handspan; 'lsof " + name
                        + "' names it), and try again";
            case WINDOWS ->
                "close that program (a serial monitor, a second handspan, a slicer for printers), and try"
                        + " again; if none is open, unplug the board and plug it in again";
        };
        return new LinkException(
                LinkException.Kind.BUSY, "port '" + name + "' is in use by another program: " + remedy);
    }

    /** It is something else: a device that is no serial port. */
    LinkException notAPort() {
        return new LinkException(
                LinkException.Kind.NOT_A_PORT,
                "'" + name + "' is a device but not a serial port: "
                        + switch (os) {
                            case LINUX -> LIST + "; boards are /dev/ttyACM0, /dev/ttyUSB0 or alike";
                            case MAC -> LIST + "; boards are /dev/cu.usbmodem1101, /dev/cu.usbserial-10 or alike";
                            case WINDOWS -> LIST + "; boards are COM3, COM4 or alike";
                        });
    }

    /** A file. */
    LinkException file() {
        return new LinkException(
                LinkException.Kind.NOT_A_PORT,
                "'" + name + "' is a file, not a port: to replay a recording write take:" + name);
    }

    /** A folder. */
    LinkException folder() {
        return new LinkException(LinkException.Kind.NOT_A_PORT, "'" + name + "' is a folder, not a port: " + LIST);
    }

    /** No system could have a port of that name. */
    LinkException noName() {
        return new LinkException(LinkException.Kind.NOT_A_PORT, "port '" + name + "' is no name of a port: " + LIST);
    }

    /** For a reason that is not told. */
    LinkException refused(int code) {
        return new LinkException(
                LinkException.Kind.REFUSED,
                "port '" + name + "' could not be opened (system error " + code
                        + "): unplug the board, plug it in again and try again");
    }
}
