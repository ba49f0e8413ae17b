/**
 * The desktop program and the window for charts: draws, and hands on what is wanted; decides nothing.
 *
 * <p>Start reading at {@link handspan.show.window.EveningPane}.
 */
@NullMarked
package handspan.show.window;

import org.jspecify.annotations.NullMarked;
