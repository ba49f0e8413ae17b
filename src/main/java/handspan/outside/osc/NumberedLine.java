package handspan.outside.osc;

import handspan.music.send.NumberedAddress;
import handspan.music.send.SoundFrame;
import handspan.outside.osc.packet.OscBytes;
import org.jspecify.annotations.Nullable;

/**
 * The addresses of a line that has a number in its address. A line that sounds leaves an address behind when the number
 * changes: whoever listens there is told of silence, several times, since datagrams get lost; and at the end of sound
 * all addresses that were ever used are. Pure. One thread only.
 */
final class NumberedLine {
    /** Keys, degrees and octaves lie well within; what lies beyond is sent as the nearest. */
    private static final int LEAST = -64;

    private static final int MOST = 191;

    /** As often as the end of sound is said quickly. */
    private static final int REPEATS = 5;

    private final NumberedAddress address;
    private final NumberedAddress.Part number;
    private final boolean sounds;
    private final byte[] @Nullable [] bytes = new byte[MOST - LEAST + 1][];
    private final boolean[] used = new boolean[MOST - LEAST + 1];
    private final int[] repeats = new int[MOST - LEAST + 1];
    private int usedCount;
    private int leavingCount;
    private int current = -1;

    /**
     * Addresses.
     *
     * @param sounds whether an address that is left has to be told of silence
     */
    NumberedLine(NumberedAddress address, NumberedAddress.Part number, boolean sounds) {
        this.address = address;
        this.number = number;
        this.sounds = sounds;
    }

    /** The most bytes of an address. */
    int mostBytes() {
        return OscBytes.string(address.with(LEAST)).length + Integer.BYTES;
    }

    /** The most addresses that a frame can say silence to. */
    int mostSilences() {
        return sounds ? bytes.length : 0;
    }

    /** A frame comes: which address is it for. */
    int move(SoundFrame frame) {
        int next = Math.max(LEAST, Math.min(MOST, number.of(frame))) - LEAST;
        if (sounds && next != current) {
            if (current >= 0) {
                leavingCount += repeats[current] == 0 ? 1 : 0;
                repeats[current] = REPEATS;
            }
            leavingCount -= repeats[next] > 0 ? 1 : 0;
            repeats[next] = 0;
        }
        current = next;
        return next;
    }

    /** The current address has been sent something that sounds. */
    void use() {
        if (sounds && !used[current]) {
            used[current] = true;
            usedCount++;
        }
    }

    /**
     * The addresses besides the current one that are to be told of silence with this frame.
     *
     * @param into takes them
     * @param all whether sound is over, so that all that were used are told
     * @return how many
     */
    int silences(int[] into, boolean all) {
        if (all ? usedCount == 0 : leavingCount == 0) {
            return 0;
        }
        int count = 0;
        for (int i = 0; i < used.length; i++) {
            if (i != current && used[i] && (all || repeats[i] > 0)) {
                into[count++] = i;
            }
            if (repeats[i] > 0 && --repeats[i] == 0) {
                leavingCount--;
            }
        }
        return count;
    }

    /** An address as it is written into packets. */
    byte[] bytes(int index) {
        byte[] made = bytes[index];
        if (made == null) {
            made = OscBytes.string(address.with(index + LEAST));
            bytes[index] = made;
        }
        return made;
    }
}
