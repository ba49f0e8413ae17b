/**
 * Charts of what was measured, mapped and played, as pictures and for windows.
 *
 * <p>Start reading at {@link handspan.show.chart.PitchLadderChart}; what all charts share is in
 * {@link handspan.show.chart.Theme} and {@code ChartSheet}.
 */
@NullMarked
package handspan.show.chart;

import org.jspecify.annotations.NullMarked;
