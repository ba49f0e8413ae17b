/**
 * The chain from bytes to frames, as pure types driven by time.
 *
 * <p>Start reading at {@link handspan.live.path.PlayPath}: it shows the whole instrument.
 */
@NullMarked
package handspan.live.path;

import org.jspecify.annotations.NullMarked;
