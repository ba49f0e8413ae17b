/**
 * Where the hand is: spikes out, wobble down, in millimetres only.
 *
 * <p>Start reading at {@link handspan.hand.smooth.SpikeGate}, then {@link handspan.hand.smooth.HandSmoother}.
 */
@NullMarked
package handspan.hand.smooth;

import org.jspecify.annotations.NullMarked;
