/**
 * Finding notes: which is asked for next, how far off a hand came to rest, and what a run was worth.
 *
 * <p>Start reading at {@link handspan.music.practice.Course}, then {@link handspan.music.practice.Tally}.
 */
@NullMarked
package handspan.music.practice;

import org.jspecify.annotations.NullMarked;
