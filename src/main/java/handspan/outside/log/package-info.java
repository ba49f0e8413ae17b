/**
 * A small text file that rolls: what happened lately, for whoever asks afterwards.
 *
 * <p>Start reading at {@link handspan.outside.log.RollingText}.
 */
@NullMarked
package handspan.outside.log;

import org.jspecify.annotations.NullMarked;
