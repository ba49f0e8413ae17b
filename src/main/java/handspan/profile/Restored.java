package handspan.profile;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What a restoring did.
 *
 * @param now the room as it is again
 * @param before the room as it was; it is the newest of the earlier versions now. Empty when it could not be read or
 *     was not there
 * @param setAside where the file that could not be read is kept now; empty when it could
 */
public record Restored(RoomProfile now, Optional<RoomProfile> before, Optional<Path> setAside) {}
