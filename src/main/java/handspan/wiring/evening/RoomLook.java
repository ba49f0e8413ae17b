package handspan.wiring.evening;

import handspan.profile.RoomHistory;
import java.util.Optional;

/**
 * A kept room that is looked at more closely.
 *
 * @param history what it is and was
 * @param compared what it is compared with; empty where it is not
 */
public record RoomLook(RoomHistory history, Optional<Compared> compared) {}
