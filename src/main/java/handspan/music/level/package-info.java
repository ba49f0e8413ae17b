/**
 * How loud: from place to gain.
 *
 * <p>Start reading at {@link handspan.music.level.LevelCurve}.
 */
@NullMarked
package handspan.music.level;

import org.jspecify.annotations.NullMarked;
