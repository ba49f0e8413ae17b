package handspan.room.calibrate;

import handspan.room.Room;
import java.util.List;
import java.util.Optional;

/**
 * How a calibration ended: with a room, or with a plain "no, because".
 *
 * @param room what was made of the holds; empty when refused
 * @param reasons why not; empty when there is a room
 */
public record Outcome(Optional<Room> room, List<String> reasons) {
    /** Copies the reasons. */
    public Outcome {
        reasons = List.copyOf(reasons);
    }

    static Outcome of(Room room) {
        return new Outcome(Optional.of(room), List.of());
    }

    static Outcome no(List<String> reasons) {
        return new Outcome(Optional.empty(), reasons);
    }
}
