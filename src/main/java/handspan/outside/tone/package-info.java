/**
 * Sound of the program's own: short signals for a player whose hands are in the air, and the listening tone, which lets
 * what is sent be heard without a sound patch, through the machine's device or from a file.
 *
 * <p>Start reading at {@link handspan.outside.tone.SignalPlayer} for signals, at {@code ToneVoice} for the tone, then
 * {@link handspan.outside.tone.ListenTarget} and {@link handspan.outside.tone.WavTarget}.
 */
@NullMarked
package handspan.outside.tone;

import org.jspecify.annotations.NullMarked;
