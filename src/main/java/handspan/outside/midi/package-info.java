/**
 * Frames as MIDI: one voice on one channel, to a device of this machine or into a file.
 *
 * <p>Start reading at {@link handspan.outside.midi.MidiVoice}, then {@link handspan.outside.midi.MidiOutTarget}.
 *
 * <p>Source of all message layouts: MIDI 1.0 Detailed Specification, document version 4.2 (MIDI Manufacturers
 * Association, 1995); of files: Standard MIDI Files 1.0 (the same, 1988).
 */
@NullMarked
package handspan.outside.midi;

import org.jspecify.annotations.NullMarked;
