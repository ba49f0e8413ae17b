package handspan.outside.osc;

import com.illposed.osc.BufferBytesReceiver;
import com.illposed.osc.OSCBundle;
import com.illposed.osc.OSCMessage;
import com.illposed.osc.OSCPacket;
import com.illposed.osc.OSCSerializeException;
import com.illposed.osc.OSCSerializerAndParserBuilder;
import com.illposed.osc.argument.OSCTimeTag64;
import handspan.music.send.SendLine;
import handspan.music.send.SendValue;
import handspan.music.send.SoundFrame;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;

/** The same packets as another encoder, JavaOSC 0.8, writes them. */
final class Oracle {
    private static final int ROOM_BYTES = 65_507;

    private Oracle() {}

    static byte[] bundle(List<SendLine> lines, SoundFrame frame, long timeTag, boolean withState) {
        List<OSCPacket> messages = new ArrayList<>();
        for (SendLine line : lines) {
            if (line.on() && (withState || line.value() != SendValue.STATE)) {
                messages.add(new OSCMessage(line.address(), arguments(line.value(), frame)));
            }
        }
        return write(new OSCBundle(messages, OSCTimeTag64.valueOf(timeTag)));
    }

    static byte[] write(OSCPacket packet) {
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

    private static List<Object> arguments(SendValue value, SoundFrame frame) {
        return switch (value) {
            case PITCH -> List.of((float) frame.pitchHz());
            case NOTE -> List.of(frame.key(), (float) frame.centsFromKey());
            case DEGREE -> List.of(frame.degree(), frame.octave());
            case LEVEL -> List.of((float) frame.gain01());
            case HAND -> List.of(frame.hand() ? 1 : 0);
            case PLACE -> List.of((float) frame.pitchPlace01(), (float) frame.levelPlace01());
            case STATE -> List.of(frame.state().word());
        };
    }

    /** The bytes between position and limit; both stay. */
    static byte[] bytes(ByteBuffer buffer) {
        byte[] bytes = new byte[buffer.remaining()];
        buffer.duplicate().get(bytes);
        return bytes;
    }

    /** Bytes written as hexadecimal digits, blanks allowed. */
    static byte[] hex(String digits) {
        return HexFormat.of().parseHex(digits.replace(" ", ""));
    }
}
