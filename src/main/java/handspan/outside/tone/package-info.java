/**
 * Sound by the machine's own device: short signals for a player whose hands are in the air.
 *
 * <p>Start reading at {@link handspan.outside.tone.SignalPlayer}, then {@link handspan.outside.tone.Signal}.
 */
@NullMarked
package handspan.outside.tone;

import org.jspecify.annotations.NullMarked;
