package handspan.outside.osc;

import handspan.music.send.NumberedAddress;
import handspan.music.send.Packing;
import handspan.music.send.PlayState;
import handspan.music.send.SendLine;
import handspan.music.send.SendPlan;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.outside.osc.packet.OscBytes;
import handspan.outside.osc.packet.OscTimeTag;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Writes sound frames as Open Sound Control 1.0: a bundle a frame, or each message in a packet of its own. Everything
 * that stays the same is prepared once; a frame costs no new object but for numbers as text. One thread only: the
 * buffer is used again for the next packet.
 *
 * <p>Which lines go out with a frame is the business of each {@link LineWriter}; a frame that says silence is said
 * whole.
 */
public final class OscEncoder {
    private final Packing packing;
    private final WallTime wall;
    private final LineWriter[] writers;
    private final @Nullable NumberedLine[] numbered;
    private final ByteBuffer buffer;
    private final int[] silences;

    // the messages of the frame that was begun: which line, to which of its addresses, and whether only silence
    private final int[] dueLine;
    private final int[] dueAddress;
    private final boolean[] dueSilence;
    private int dueCount;
    private int dueNext;
    private SoundFrame frame = new SoundFrame(0, 0, 0, 0, 0, 0, 0, false, 0, 0, PlayState.AWAY);

    /** An encoder for bundles that are acted on at once. */
    public OscEncoder(List<SendLine> lines) {
        this(new SendPlan(lines, List.of()), nanos -> Instant.EPOCH);
    }

    /**
     * Prepares what a plan sends; lines that are off are left out.
     *
     * @param wall for time tags
     * @throws IllegalArgumentException if all lines together do not fit into one datagram
     */
    public OscEncoder(SendPlan plan, WallTime wall) {
        this.packing = plan.packing();
        this.wall = wall;
        List<SendLine> on = plan.lines().stream().filter(SendLine::on).toList();
        List<LineWriter> made = new ArrayList<>();
        numbered = new NumberedLine[on.size()];
        int bytes = OscBytes.BUNDLE_HEAD_BYTES;
        int messages = 0;
        int mostSilences = 0;
        for (int i = 0; i < on.size(); i++) {
            LineWriter writer =
                    new LineWriter(on.get(i), plan.channels().indexOf(on.get(i).channel()));
            made.add(writer);
            NumberedLine addresses = numbered(on.get(i));
            numbered[i] = addresses;
            int silent = addresses == null ? 0 : addresses.mostSilences();
            int addressBytes = addresses == null ? writer.address().length : addresses.mostBytes();
            bytes += (1 + silent) * (OscBytes.SIZE_BYTES + addressBytes + writer.mostBytes());
            messages += 1 + silent;
            mostSilences = Math.max(mostSilences, silent);
        }
        if (bytes > OscBytes.MAX_PACKET_BYTES) {
            throw new IllegalArgumentException("bundle of " + on.size() + " lines: " + bytes + " bytes (at most "
                    + OscBytes.MAX_PACKET_BYTES + "): switch lines off or shorten their addresses");
        }
        writers = made.toArray(new LineWriter[0]);
        silences = new int[mostSilences];
        int most = packing.bundled() ? messages : 2 * messages;
        dueLine = new int[most];
        dueAddress = new int[most];
        dueSilence = new boolean[most];
        buffer = ByteBuffer.allocateDirect(bytes);
    }

    private static @Nullable NumberedLine numbered(SendLine line) {
        NumberedAddress address = NumberedAddress.parse(line.address());
        NumberedAddress.Part number = address.number();
        return number == null
                ? null
                : new NumberedLine(address, number, line.value().sounds());
    }

    /**
     * A frame is to be sent: {@link #next} gives its packets.
     *
     * @param withState whether the state line goes along
     */
    public void begin(SoundFrame begun, boolean withState) {
        frame = begun;
        dueCount = 0;
        dueNext = 0;
        for (int i = 0; i < writers.length; i++) {
            gather(i, withState);
        }
    }

    private void gather(int line, boolean withState) {
        NumberedLine addresses = numbered[line];
        int address = addresses == null ? 0 : addresses.move(frame);
        if (writers[line].takes(frame, withState)) {
            due(line, address, false);
            if (addresses != null && !frame.isSilent()) {
                addresses.use();
            }
        }
        int count = addresses == null ? 0 : addresses.silences(silences, frame.isSilent());
        for (int i = 0; i < count; i++) {
            due(line, silences[i], true);
        }
    }

    private void due(int line, int address, boolean silence) {
        // silence that travels in packets of its own is said twice in a row: a network that loses packets in step with
        // their number must not lose the same line at each repeat
        int times = frame.isSilent() && !packing.bundled() ? 2 : 1;
        for (int i = 0; i < times; i++) {
            dueLine[dueCount] = line;
            dueAddress[dueCount] = address;
            dueSilence[dueCount++] = silence;
        }
    }

    /**
     * The next packet of the frame that was begun; valid until the next call.
     *
     * @return from position 0 to its limit; null when there is no more
     */
    public @Nullable ByteBuffer next() {
        if (dueNext >= dueCount) {
            return null;
        }
        buffer.clear();
        if (!packing.bundled()) {
            putMessage(dueNext++);
            return buffer.flip();
        }
        OscBytes.putBundleHead(buffer, timeTag());
        while (dueNext < dueCount) {
            int start = buffer.position();
            buffer.putInt(0);
            putMessage(dueNext++);
            buffer.putInt(start, buffer.position() - start - OscBytes.SIZE_BYTES);
        }
        return buffer.flip();
    }

    private void putMessage(int message) {
        LineWriter writer = writers[dueLine[message]];
        NumberedLine addresses = numbered[dueLine[message]];
        buffer.put(addresses == null ? writer.address() : addresses.bytes(dueAddress[message]));
        if (dueSilence[message]) {
            writer.putSilent(buffer);
        } else {
            writer.putTaken(buffer, frame);
        }
    }

    private long timeTag() {
        return packing.isTimed()
                ? OscTimeTag.of(wall.at(frame.timeNanos() + Nanos.ofMs(packing.latencyMs())))
                : OscTimeTag.IMMEDIATELY;
    }
}
