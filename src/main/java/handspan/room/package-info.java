/**
 * What was measured in a venue: holds, zones, responses.
 *
 * <p>Start reading at {@link handspan.room.Room}.
 */
@NullMarked
package handspan.room;

import org.jspecify.annotations.NullMarked;
