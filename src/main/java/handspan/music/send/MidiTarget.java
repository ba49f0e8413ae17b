package handspan.music.send;

/**
 * A MIDI device of this machine, written {@code midi:DEVICE}.
 *
 * @param device its name or a part of it that no other device has
 */
public record MidiTarget(String device) implements SendTarget {
    static final String WAY = "midi";

    /** Checks the name. */
    public MidiTarget {
        if (device.isBlank() || device.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException(
                    "target 'midi:" + device + "' (midi:DEVICE): name the device, or a part of its name");
        }
    }

    @Override
    public String text() {
        return WAY + ":" + device;
    }
}
