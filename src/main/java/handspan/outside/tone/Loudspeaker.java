package handspan.outside.tone;

import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** Opens the way to the loudspeaker. */
interface Loudspeaker {
    /** A line that is open and running. */
    SourceDataLine open(AudioFormat format) throws LineUnavailableException;

    /** The machine's usual device, with as much sound underway as it likes. */
    static Loudspeaker usual() {
        return format -> {
            SourceDataLine line = AudioSystem.getSourceDataLine(format);
            line.open(format);
            line.start();
            return line;
        };
    }

    /**
     * The same with little sound underway, as far as the device allows.
     *
     * @param bytes of samples between us and the ear
     */
    static Loudspeaker prompt(int bytes) {
        return format -> {
            SourceDataLine line = AudioSystem.getSourceDataLine(format);
            line.open(format, bytes);
            line.start();
            return line;
        };
    }
}
