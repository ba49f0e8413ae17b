/**
 * Arithmetic on series and points: robust values, monotone curves, delays; thin over the numerics library.
 *
 * <p>Start reading at {@link handspan.number.fit.SteadyValue}.
 */
@NullMarked
package handspan.number.fit;

import org.jspecify.annotations.NullMarked;
