package handspan.outside.osc;

import com.illposed.osc.BufferBytesReceiver;
import com.illposed.osc.OSCBundle;
import com.illposed.osc.OSCMessage;
import com.illposed.osc.OSCPacket;
import com.illposed.osc.OSCSerializeException;
import com.illposed.osc.OSCSerializerAndParserBuilder;
import com.illposed.osc.argument.OSCTimeTag64;
import handspan.music.send.PlayState;
import handspan.music.send.Scaling;
import handspan.music.send.SendLine;
import handspan.music.send.SendValue;
import handspan.music.send.SoundFrame;
import java.nio.ByteBuffer;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;

/** The same packets as another encoder, JavaOSC 0.8, writes them. */
public final class Oracle {
    private static final int ROOM_BYTES = 65_507;

    private Oracle() {}

    public static byte[] bundle(List<SendLine> lines, SoundFrame frame, long timeTag, boolean withState) {
        List<OSCPacket> messages = new ArrayList<>();
        for (SendLine line : lines) {
            if (line.on() && (withState || line.value() != SendValue.STATE)) {
                messages.add(new OSCMessage(
                        line.address().replace("{key}", Integer.toString(frame.key())), arguments(line, frame)));
            }
        }
        return write(new OSCBundle(messages, OSCTimeTag64.valueOf(timeTag)));
    }

    public static byte[] write(OSCPacket packet) {
        ByteBuffer buffer = ByteBuffer.allocate(ROOM_BYTES);
        try {
            new OSCSerializerAndParserBuilder()
                    .buildSerializer(new BufferBytesReceiver(buffer))
                    .write(packet);
        } catch (OSCSerializeException e) {
            throw new AssertionError(e);
        }
        return Arrays.copyOf(buffer.array(), buffer.position());
    }

    /** What a line carries, worked out from the frame by hand and left to the library to write. */
    private static List<Object> arguments(SendLine line, SoundFrame frame) {
        List<Object> arguments = new ArrayList<>();
        List<Double> numbers = numbers(line, frame);
        for (int i = 0; i < numbers.size(); i++) {
            Scaling by = line.scaling();
            double share = (numbers.get(i) - by.fromLow()) / (by.fromHigh() - by.fromLow());
            double scaled = by.toLow() + share * (by.toHigh() - by.toLow());
            if (by.clip()) {
                scaled = Math.min(
                        Math.max(scaled, Math.min(by.toLow(), by.toHigh())), Math.max(by.toLow(), by.toHigh()));
            }
            arguments.add(typed(line, i, by.equals(Scaling.NONE) ? numbers.get(i) : scaled, frame));
        }
        return arguments;
    }

    private static Object typed(SendLine line, int which, double number, SoundFrame frame) {
        return switch (line.types().charAt(which)) {
            case 'i' -> (int) Math.rint(number);
            case 'h' -> (long) Math.rint(number);
            case 'd' -> number;
            case 'T' -> number != 0;
            case 's' ->
                line.value() == SendValue.STATE
                        ? frame.state().word()
                        : new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(number);
            default -> (float) number;
        };
    }

    private static List<Double> numbers(SendLine line, SoundFrame frame) {
        return switch (line.value()) {
            case PITCH -> List.of(frame.pitchHz());
            case NOTE -> List.of((double) frame.key(), frame.centsFromKey());
            case DEGREE -> List.of((double) frame.degree(), (double) frame.octave());
            case LEVEL -> List.of(frame.gain01());
            case HAND -> List.of(frame.hand() ? 1.0 : 0.0);
            case PLACE -> List.of(frame.pitchPlace01(), frame.levelPlace01());
            case STATE ->
                List.of((double) List.of(PlayState.AWAY, PlayState.PLAYING, PlayState.MUTED, PlayState.LOST)
                        .indexOf(frame.state()));
            case KEY -> List.of(frame.key() + frame.centsFromKey() / 100);
            case CENTS -> List.of(frame.centsFromKey());
            case DB -> List.of(frame.gain01() < 1e-6 ? -120 : 20 * Math.log10(frame.gain01()));
            case PITCH_PLACE -> List.of(frame.pitchPlace01());
            case LEVEL_PLACE -> List.of(frame.levelPlace01());
            case RAW -> List.of(frame.channels().raw(0));
            case PHYSICAL -> List.of(frame.channels().physical(0));
        };
    }

    /** The bytes between position and limit; both stay. */
    public static byte[] bytes(ByteBuffer buffer) {
        byte[] bytes = new byte[buffer.remaining()];
        buffer.duplicate().get(bytes);
        return bytes;
    }

    /** Bytes written as hexadecimal digits, blanks allowed. */
    public static byte[] hex(String digits) {
        return HexFormat.of().parseHex(digits.replace(" ", ""));
    }
}
