package handspan.profile;

import java.util.Optional;

/**
 * A room that is kept in a folder.
 *
 * @param name of the room
 * @param profile what its file holds; empty when it can't be read
 * @param fault why not, with what to do; empty when it can
 */
public record KeptRoom(String name, Optional<RoomProfile> profile, String fault) {}
