package handspan.wiring;

/**
 * A MIDI output of this machine.
 *
 * @param name as it is named in a target
 * @param description in its maker's words
 * @param vendor who made it, or its driver
 */
public record MidiOutput(String name, String description, String vendor) {}
