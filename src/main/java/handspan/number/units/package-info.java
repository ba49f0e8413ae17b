/**
 * Units, cents, decibels and figures in words.
 *
 * <p>Start reading at {@link handspan.number.units.Cents}.
 */
@NullMarked
package handspan.number.units;

import org.jspecify.annotations.NullMarked;
