package handspan.outside.midi;

/** Where channel messages go, one after the other. */
public interface MidiMessages {
    /**
     * Takes a message.
     *
     * @param status status byte, the channel in its lower half
     * @param first data, 0..127
     * @param second data, 0..127; 0 and not sent where the status has one data byte only
     */
    void send(int status, int first, int second);
}
