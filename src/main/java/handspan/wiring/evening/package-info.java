/**
 * One instrument's evening as one object: connecting, holds, the room that is worked on, and sound, each a part of its
 * own that does in turn what takes time and shows how it stands in one immutable view.
 *
 * <p>Start reading at {@link handspan.wiring.evening.Evening}.
 */
@NullMarked
package handspan.wiring.evening;

import org.jspecify.annotations.NullMarked;
