package handspan.wiring;

import handspan.instrument.sensor.PortIdentity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which boards are known by what USB says of them, so that nobody needs to wave: only where one room and one board, and
 * no others, go together. Pure.
 */
final class KnownBoards {
    private KnownBoards() {}

    /**
     * For each room the number of its board, from 0; -1 where that is not known for sure.
     *
     * @param rooms the boards that they were made with
     * @param boards those that are there
     */
    static List<Integer> of(List<Optional<PortIdentity>> rooms, List<Optional<PortIdentity>> boards) {
        List<Integer> known = new ArrayList<>();
        for (Optional<PortIdentity> room : rooms) {
            int board = only(room, boards);
            known.add(board >= 0 && only(boards.get(board), rooms) >= 0 ? board : -1);
        }
        return known;
    }

    private static int only(Optional<PortIdentity> wanted, List<Optional<PortIdentity>> among) {
        int found = -1;
        for (int i = 0; i < among.size(); i++) {
            if (isSame(wanted, among.get(i))) {
                if (found >= 0) {
                    return -1;
                }
                found = i;
            }
        }
        return found;
    }

    private static boolean isSame(Optional<PortIdentity> one, Optional<PortIdentity> other) {
        return one.isPresent() && other.isPresent() && one.get().isSameBoard(other.get());
    }
}
