/**
 * A window for charts.
 *
 * <p>Start reading at {@link handspan.show.window.ChartWindow}.
 */
@NullMarked
package handspan.show.window;

import org.jspecify.annotations.NullMarked;
