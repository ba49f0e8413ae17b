package handspan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.outside.midi.MidiMessages;
import java.util.ArrayList;
import java.util.List;

/**
 * A receiver of one voice, written from the MIDI 1.0 Detailed Specification: the last note that is on sounds; bend and
 * controllers as they stand; bend range 2 semitones until registered parameter 0 says another; nothing but what it
 * knows may come.
 *
 * <p>Statuses (table 1 of the specification): 8n note off, 9n note on (velocity 0 is off), Bn control change, Dn
 * channel pressure, En pitch bend, lower seven bits first. Controllers (table 3): 6 and 38 data entry, 11 and 43
 * expression, 100 and 101 registered parameter (127 127 none), 123 all notes off.
 */
public final class MidiEar implements MidiMessages {
    private final int channel;
    private final boolean obeysAllNotesOff;
    private final List<Integer> keys = new ArrayList<>();
    private final List<String> log = new ArrayList<>();
    private int parameterHigh = 127;
    private int parameterLow = 127;
    private int rangeSemitones = 2;
    private int rangeCents;
    private int bend = 8192;
    private int expressionHigh = 127;
    private int expressionLow;
    private int pressure;
    private int velocity;
    private int notesOn;
    private int mostKeys;
    private long bytes;

    /**
     * An ear that hears one channel and lets no other pass.
     *
     * @param channel 1..16
     */
    public MidiEar(int channel) {
        this(channel, true);
    }

    /**
     * The same, or one that passes over "all notes off", as receivers that listen to all channels may (MIDI 1.0
     * Detailed Specification, All Notes Off).
     */
    public MidiEar(int channel, boolean obeysAllNotesOff) {
        this.channel = channel;
        this.obeysAllNotesOff = obeysAllNotesOff;
    }

    @Override
    public void send(int status, int first, int second) {
        log.add(String.format(java.util.Locale.ROOT, "%02X %02X %02X", status, first, second));
        assertEquals(channel - 1, status & 0x0F, "channel");
        assertTrue(first >= 0 && first <= 127 && second >= 0 && second <= 127, () -> "data " + first + " " + second);
        bytes += 3;
        switch (status & 0xF0) {
            case 0x80 -> noteOff(first);
            case 0x90 -> noteOn(first, second);
            case 0xB0 -> control(first, second);
            case 0xD0 -> {
                pressure = first;
                bytes--;
                assertEquals(0, second, "the second data byte of a message that has one");
            }
            case 0xE0 -> bend = second << 7 | first;
            default -> throw new AssertionError("status " + status);
        }
    }

    private void noteOn(int key, int with) {
        if (with == 0) {
            noteOff(key);
            return;
        }
        assertTrue(!keys.contains(key), () -> "key " + key + " is on");
        keys.add(key);
        velocity = with;
        notesOn++;
        mostKeys = Math.max(mostKeys, keys.size());
    }

    private void noteOff(int key) {
        keys.remove(Integer.valueOf(key));
    }

    private void control(int number, int value) {
        switch (number) {
            case 6 -> {
                if (parameterHigh == 0 && parameterLow == 0) {
                    rangeSemitones = value;
                }
            }
            case 38 -> {
                if (parameterHigh == 0 && parameterLow == 0) {
                    rangeCents = value;
                }
            }
            case 11 -> {
                expressionHigh = value;
                expressionLow = 0;
            }
            case 43 -> expressionLow = value;
            case 100 -> parameterLow = value;
            case 101 -> parameterHigh = value;
            case 123 -> {
                if (obeysAllNotesOff) {
                    keys.clear();
                }
            }
            default -> throw new AssertionError("controller " + number);
        }
    }

    /** How many notes are on. */
    public int notes() {
        return keys.size();
    }

    /** The most that have been on at once. */
    public int mostNotes() {
        return mostKeys;
    }

    /** How often a note has begun. */
    public int notesBegun() {
        return notesOn;
    }

    /** Key that sounds. */
    public int key() {
        return keys.get(keys.size() - 1);
    }

    /** Velocity of the latest note. */
    public int velocity() {
        return velocity;
    }

    /** What the bend makes of the key, semitones. */
    public double bendSemitones() {
        return (bend - 8192) / 8192.0 * (rangeSemitones + rangeCents / 100.0);
    }

    /** What sounds, key numbers and parts of them. */
    public double pitch() {
        return key() + bendSemitones();
    }

    /** What sounds, Hz: A4 = 440 Hz is key 69. */
    public double pitchHz() {
        return 440 * Math.pow(2, (pitch() - 69) / 12);
    }

    /** Expression in seven bits. */
    public int expression() {
        return expressionHigh;
    }

    /** Pressure. */
    public int pressure() {
        return pressure;
    }

    /** Level of expression in fourteen bits, dB: 40 lg(value / highest), as General MIDI Level 2 recommends. */
    public double fineDb() {
        return 40 * Math.log10((expressionHigh << 7 | expressionLow) / 16_383.0);
    }

    /** Level of expression in seven bits, dB. */
    public double coarseDb() {
        return 40 * Math.log10(expressionHigh / 127.0);
    }

    /** Bend range that it was told of. */
    public double rangeSemitones() {
        return rangeSemitones + rangeCents / 100.0;
    }

    /** Whether data entry would change anything. */
    public boolean hasParameter() {
        return parameterHigh != 127 || parameterLow != 127;
    }

    /** Bytes that came, statuses among them. */
    public long bytes() {
        return bytes;
    }

    /** All messages that came since the last call, each as three numbers to base 16. */
    public List<String> takeLog() {
        List<String> taken = List.copyOf(log);
        log.clear();
        return taken;
    }
}
