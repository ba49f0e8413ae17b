package handspan.outside.midi;

import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;

/** Opens the way to a device. */
@FunctionalInterface
interface MidiOpener {
    /**
     * Opens it; may take a while.
     *
     * @param device its name or a part of it
     * @return closing it lets go of the device
     * @throws MidiUnavailableException saying why it can't be opened and what to do
     */
    Receiver open(String device) throws MidiUnavailableException;
}
