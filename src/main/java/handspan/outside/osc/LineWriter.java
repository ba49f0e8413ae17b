package handspan.outside.osc;

import static java.util.Objects.requireNonNull;

import handspan.music.send.NumberedAddress;
import handspan.music.send.PlayState;
import handspan.music.send.SendLine;
import handspan.music.send.SendValue;
import handspan.music.send.SoundFrame;
import handspan.music.send.SparingGate;
import handspan.number.units.Figures;
import handspan.outside.osc.packet.OscBytes;
import java.nio.ByteBuffer;
import java.util.EnumMap;
import java.util.Map;

/** Writes the messages of one line. Everything that stays the same is prepared once. One thread only. */
final class LineWriter {
    /** The most a number takes as a text: sign, 16 digits, point, 6 decimals, padded. */
    private static final int TEXT_MAX_BYTES = 28;

    private static final double MOST_TEXT = 1e15;

    private final SendValue value;
    private final SendLine line;
    private final char[] types;
    private final int channel;
    private final SparingGate gate;
    private final byte[][] tags;
    private final byte[] address;
    private final Map<PlayState, byte[]> stateWords = new EnumMap<>(PlayState.class);
    private double first;
    private double second;

    /**
     * A writer.
     *
     * @param channel where the channel values of a frame have this line's; any number for lines of no channel
     */
    LineWriter(SendLine line, int channel) {
        this.line = line;
        this.value = line.value();
        this.types = line.types().toCharArray();
        this.channel = channel;
        this.gate = new SparingGate(line.sparing());
        NumberedAddress where = NumberedAddress.parse(line.address());
        this.address = where.number() == null ? OscBytes.string(where.before()) : new byte[0];
        this.tags = tags(types);
        for (PlayState state : PlayState.values()) {
            stateWords.put(state, OscBytes.string(state.word()));
        }
    }

    /** Type tags for each way in which the values of type T can be true: bit i for the number i. */
    private static byte[][] tags(char[] types) {
        byte[][] all = new byte[1 << types.length][];
        for (int truths = 0; truths < all.length; truths++) {
            StringBuilder tags = new StringBuilder(",");
            for (int i = 0; i < types.length; i++) {
                tags.append(types[i] == 'T' && (truths >> i & 1) == 0 ? 'F' : types[i]);
            }
            all[truths] = OscBytes.string(tags.toString());
        }
        return all;
    }

    SendLine line() {
        return line;
    }

    /** The most bytes of a message after its address. */
    int mostBytes() {
        int bytes = tags[0].length;
        for (char type : types) {
            bytes += switch (type) {
                case 'h', 'd' -> Long.BYTES;
                case 's' -> TEXT_MAX_BYTES;
                case 'T' -> 0;
                default -> Integer.BYTES;
            };
        }
        return bytes;
    }

    /** Its address where it holds no number. */
    byte[] address() {
        return address;
    }

    /**
     * Whether the line goes out with a frame; if so, its values count as sent.
     *
     * @param withState whether the state is due
     */
    boolean takes(SoundFrame frame, boolean withState) {
        if (value == SendValue.STATE && !withState) {
            return false;
        }
        first = sent(frame, 0);
        second = types.length > 1 ? sent(frame, 1) : 0;
        boolean whole = withState || frame.isSilent();
        return !Double.isNaN(first)
                && !Double.isNaN(second)
                && gate.passes(first, second, frame.timeNanos(), whole || (value.sounds() && first == silent()));
    }

    private double sent(SoundFrame frame, int which) {
        return typed(line.scaling().of(value.number(frame, which, channel)), types[which]);
    }

    private double typed(double number, char type) {
        return switch (type) {
            case 'i' -> Double.isNaN(number) ? number : (int) Math.rint(number);
            case 'h' -> Math.rint(number);
            case 'T' -> Double.isNaN(number) ? number : number != 0 ? 1 : 0;
            default -> number;
        };
    }

    /** What is sent for silence, for values that sound. */
    private double silent() {
        return typed(line.scaling().of(value == SendValue.DB ? SendValue.SILENCE_DB : 0), types[0]);
    }

    /** Writes a message of what {@link #takes} has taken, from the type tags on. */
    void putTaken(ByteBuffer packet, SoundFrame frame) {
        if (value == SendValue.STATE && types[0] == 's') {
            packet.put(tags[0]).put(requireNonNull(stateWords.get(frame.state())));
            return;
        }
        put(packet, first, second);
    }

    /** Writes a message that says silence, from the type tags on. */
    void putSilent(ByteBuffer packet) {
        put(packet, silent(), 0);
    }

    private void put(ByteBuffer packet, double one, double two) {
        packet.put(tags[(one != 0 ? 1 : 0) | (types.length > 1 && two != 0 ? 2 : 0)]);
        put(packet, one, types[0]);
        if (types.length > 1) {
            put(packet, two, types[1]);
        }
    }

    private static void put(ByteBuffer packet, double number, char type) {
        switch (type) {
            case 'i' -> packet.putInt((int) number);
            case 'f' -> packet.putFloat((float) number);
            case 'h' -> packet.putLong((long) number);
            case 'd' -> packet.putDouble(number);
            case 's' -> packet.put(OscBytes.string(text(number)));
            default -> {
                // true and false have no bytes but their type tag
            }
        }
    }

    /** In decimals, without an exponent: few receivers read one. */
    private static String text(double number) {
        double bounded = Math.max(-MOST_TEXT, Math.min(MOST_TEXT, number));
        return Figures.shortest(bounded);
    }
}
