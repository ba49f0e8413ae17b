package handspan.outside.serial;

import handspan.instrument.sensor.PortIdentity;
import handspan.live.session.LinkException;
import handspan.live.session.PortInfo;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds a board again: by its identity first, then by the name of its port. Pure: the ports are given.
 *
 * @param wanted the name that the player wrote
 * @param identity of the board that is looked for; empty where none is known
 * @param strict whether another board in its place is refused (it was unplugged while it played) or only told of (the
 *     player has named the port)
 */
record PortSearch(String wanted, Optional<PortIdentity> identity, boolean strict) {
    /**
     * What was found.
     *
     * @param name of the port to open
     * @param note what the player should know of it; may be empty
     */
    record Found(String name, String note) {}

    /**
     * Looks among ports.
     *
     * @param ports all that are there
     * @return what to open; the wanted name where nothing better is known
     * @throws LinkException when another board is in its place
     */
    Found among(List<PortInfo> ports) throws LinkException {
        Optional<PortInfo> here =
                ports.stream().filter(port -> port.name().equals(wanted)).findFirst();
        if (identity.isEmpty()) {
            return new Found(wanted, "");
        }
        PortIdentity board = identity.get();
        Optional<PortInfo> same = theBoard(board, ports);
        if (same.isPresent()) {
            String name = same.get().name();
            return new Found(name, name.equals(wanted) ? "" : movedTo(name, here.isPresent()));
        }
        Optional<PortIdentity> other = here.flatMap(PortInfo::identity);
        if (other.isEmpty()) {
            return new Found(wanted, "");
        }
        if (strict) {
            throw new LinkException(
                    LinkException.Kind.MISSING,
                    "another board is at " + wanted + " now (" + other.get().words() + "), and the one that was there ("
                            + board.words() + ") is nowhere: plug that in again" + kin(board, ports));
        }
        return new Found(
                wanted,
                "the board at " + wanted + " (" + other.get().words()
                        + ") is not the one that this room was made with (" + board.words()
                        + "): if it sounds wrong, calibrate again");
    }

    private String movedTo(String name, boolean otherHere) {
        return wanted + (otherHere ? " is another board" : " is not there") + "; the instrument is at " + name
                + " now: using that";
    }

    /**
     * The board itself; of several with one serial number (some makers give all boards the same) the one in its socket.
     */
    private static Optional<PortInfo> theBoard(PortIdentity board, List<PortInfo> ports) {
        List<PortInfo> same = those(ports, board::isSameBoard);
        return same.size() == 1
                ? Optional.of(same.get(0))
                : those(same, board::isSameSocket).stream().findFirst();
    }

    /**
     * Boards of its kind without a serial number, which may be it in another socket: nobody can tell but the player.
     */
    private static String kin(PortIdentity board, List<PortInfo> ports) {
        List<PortInfo> kin = board.serialNumber().isEmpty() ? those(ports, board::isSameKind) : List.of();
        return kin.isEmpty()
                ? ""
                : ", into its old socket; or, if it is the board at "
                        + kin.get(0).name() + ", start again with that";
    }

    private static List<PortInfo> those(List<PortInfo> ports, Predicate<PortIdentity> wanted) {
        return ports.stream()
                .filter(port -> port.identity().filter(wanted).isPresent())
                .toList();
    }
}
