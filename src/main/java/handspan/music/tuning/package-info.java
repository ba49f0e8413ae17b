/**
 * Which pitch: reference, note names, scales, the curve over the zone, snapping.
 *
 * <p>Start reading at {@link handspan.music.tuning.Tuning}.
 */
@NullMarked
package handspan.music.tuning;

import org.jspecify.annotations.NullMarked;
