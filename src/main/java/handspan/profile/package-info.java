/**
 * The room file: what is kept of a room, written so that it is never lost.
 *
 * <p>Start reading at {@link handspan.profile.RoomProfile}, then {@link handspan.profile.ProfileFolder}.
 */
@NullMarked
package handspan.profile;

import org.jspecify.annotations.NullMarked;
