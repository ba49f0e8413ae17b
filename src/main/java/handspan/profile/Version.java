package handspan.profile;

import java.time.Instant;
import java.util.Optional;

/**
 * An earlier version of a room's file.
 *
 * @param number counts upwards
 * @param savedAt when it was saved; the beginning of 1970 where the system does not tell
 * @param profile what it holds; empty when it can't be read
 * @param fault why not; empty when it can
 */
public record Version(int number, Instant savedAt, Optional<RoomProfile> profile, String fault) {}
