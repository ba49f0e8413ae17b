package handspan.outside.osc;

import static java.util.Objects.requireNonNull;

import handspan.music.send.PlayState;
import handspan.music.send.SendLine;
import handspan.music.send.SendValue;
import handspan.music.send.SoundFrame;
import java.nio.ByteBuffer;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Writes sound frames as Open Sound Control 1.0 bundles, one message a line, in the order of the lines. Everything that
 * stays the same is prepared once; a frame costs no new object. One thread only: the buffer is used again for the next
 * frame.
 */
public final class OscEncoder {
    private static final int BODY_MAX_BYTES = 8;

    private final SendValue[] values;
    private final byte[][] heads;
    private final Map<PlayState, byte[]> stateWords = new EnumMap<>(PlayState.class);
    private final ByteBuffer buffer;

    /**
     * Prepares addresses and type tags; lines that are off are left out.
     *
     * @throws IllegalArgumentException if all lines together do not fit into one datagram
     */
    public OscEncoder(List<SendLine> lines) {
        List<SendLine> on = lines.stream().filter(SendLine::on).toList();
        values = new SendValue[on.size()];
        heads = new byte[on.size()][];
        int bytes = OscBytes.BUNDLE_HEAD_BYTES;
        for (int i = 0; i < values.length; i++) {
            SendLine line = on.get(i);
            values[i] = line.value();
            heads[i] = OscBytes.messageHead(line.address(), line.value().types());
            bytes += OscBytes.SIZE_BYTES + heads[i].length + BODY_MAX_BYTES;
        }
        if (bytes > OscBytes.MAX_PACKET_BYTES) {
            throw new IllegalArgumentException("bundle of " + values.length + " lines: " + bytes + " bytes (at most "
                    + OscBytes.MAX_PACKET_BYTES + "): switch lines off or shorten their addresses");
        }
        for (PlayState state : PlayState.values()) {
            stateWords.put(state, OscBytes.string(state.word()));
        }
        buffer = ByteBuffer.allocateDirect(bytes);
    }

    /**
     * Writes a frame.
     *
     * @param timeTag when the receiver should act, see {@link OscTimeTag}
     * @param withState whether the state line goes along
     * @return the bundle from position 0 to its limit; valid until the next call
     */
    public ByteBuffer bundle(SoundFrame frame, long timeTag, boolean withState) {
        buffer.clear();
        OscBytes.putBundleHead(buffer, timeTag);
        for (int i = 0; i < values.length; i++) {
            if (withState || values[i] != SendValue.STATE) {
                putMessage(i, frame);
            }
        }
        return buffer.flip();
    }

    /** Whether a bundle has any message in it: not if every line, or every line but the state, is off. */
    public boolean hasMessages(boolean withState) {
        for (SendValue value : values) {
            if (withState || value != SendValue.STATE) {
                return true;
            }
        }
        return false;
    }

    private void putMessage(int line, SoundFrame frame) {
        int start = buffer.position();
        buffer.putInt(0).put(heads[line]);
        putArguments(values[line], frame);
        buffer.putInt(start, buffer.position() - start - OscBytes.SIZE_BYTES);
    }

    private void putArguments(SendValue value, SoundFrame frame) {
        switch (value) {
            case PITCH -> buffer.putFloat((float) frame.pitchHz());
            case NOTE -> buffer.putInt(frame.key()).putFloat((float) frame.centsFromKey());
            case DEGREE -> buffer.putInt(frame.degree()).putInt(frame.octave());
            case LEVEL -> buffer.putFloat((float) frame.gain01());
            case HAND -> buffer.putInt(frame.hand() ? 1 : 0);
            case PLACE -> buffer.putFloat((float) frame.pitchPlace01()).putFloat((float) frame.levelPlace01());
            case STATE -> buffer.put(requireNonNull(stateWords.get(frame.state())));
        }
    }
}
