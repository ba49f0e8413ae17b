package handspan.outside.osc.packet;

import java.nio.ByteBuffer;
import java.util.function.Consumer;

/**
 * Takes packets out of a stream with END after each, and maybe before. Nothing between two ENDs is no packet. A frame
 * that breaks the rules is left out and counted; the next END begins anew.
 */
final class SlipSplitter implements PacketSplitter {
    private final PacketBuffer packet = new PacketBuffer();
    private boolean escaped;
    private boolean bad;
    private long garbled;

    @Override
    public void feed(ByteBuffer bytes, Consumer<ByteBuffer> packets) {
        while (bytes.hasRemaining()) {
            byte next = bytes.get();
            if (next == Slip.END) {
                end(packets);
            } else if (escaped) {
                escaped = false;
                addEscaped(next);
            } else if (next == Slip.ESC) {
                escaped = true;
            } else {
                add(next);
            }
        }
    }

    private void end(Consumer<ByteBuffer> packets) {
        if (bad || escaped) {
            garbled++;
        } else if (packet.size() > 0) {
            packets.accept(packet.whole());
        }
        packet.clear();
        escaped = false;
        bad = false;
    }

    private void addEscaped(byte next) {
        if (next == Slip.ESC_END) {
            add(Slip.END);
        } else if (next == Slip.ESC_ESC) {
            add(Slip.ESC);
        } else {
            bad = true;
        }
    }

    private void add(byte next) {
        if (packet.size() == PacketFraming.MOST_PACKET_BYTES) {
            bad = true;
        }
        if (!bad) {
            packet.add(next);
        }
    }

    @Override
    public long garbled() {
        return garbled;
    }

    /** There is always a next END to begin anew at. */
    @Override
    public String defect() {
        return "";
    }
}
