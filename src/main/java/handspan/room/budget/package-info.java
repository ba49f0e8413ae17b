/**
 * What can be promised: uncertainty in cents, latency in ms, what a passage was worth.
 *
 * <p>Start reading at {@link handspan.room.budget.LatencyBudget}.
 */
@NullMarked
package handspan.room.budget;

import org.jspecify.annotations.NullMarked;
