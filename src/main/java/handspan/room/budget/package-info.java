/**
 * What can be promised: uncertainty in cents, latency in ms, how often a note is missed, what a scale asks for.
 *
 * <p>Start reading at {@link handspan.room.budget.PitchBudget} and {@link handspan.room.budget.Adviser}.
 */
@NullMarked
package handspan.room.budget;

import org.jspecify.annotations.NullMarked;
