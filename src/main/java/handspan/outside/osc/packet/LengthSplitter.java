package handspan.outside.osc.packet;

import java.nio.ByteBuffer;
import java.util.function.Consumer;

/**
 * Takes packets out of a stream in which each has its length before it. Where a length can't be true, the place of all
 * that follows is lost: the stream has a defect and is read no further.
 */
final class LengthSplitter implements PacketSplitter {
    private final PacketBuffer packet = new PacketBuffer();
    private int lengthBytes;
    private int length;
    private long garbled;
    private String defect = "";

    @Override
    public void feed(ByteBuffer bytes, Consumer<ByteBuffer> packets) {
        while (bytes.hasRemaining() && defect.isEmpty()) {
            if (lengthBytes < OscBytes.SIZE_BYTES) {
                length = length << 8 | (bytes.get() & 0xff);
                lengthBytes++;
                check();
            } else {
                packet.add(bytes, Math.min(bytes.remaining(), length - packet.size()));
            }
            if (lengthBytes == OscBytes.SIZE_BYTES && packet.size() == length) {
                give(packets);
            }
        }
    }

    private void check() {
        if (lengthBytes == OscBytes.SIZE_BYTES && (length < 0 || length > PacketFraming.MOST_PACKET_BYTES)) {
            garbled++;
            defect = "a packet's length is given as " + length + " bytes (0.." + PacketFraming.MOST_PACKET_BYTES
                    + "): the sender puts no length before its packets, maybe END around them (tcp-slip)";
            length = -1;
        }
    }

    private void give(Consumer<ByteBuffer> packets) {
        if (length > 0) {
            packets.accept(packet.whole());
        }
        packet.clear();
        lengthBytes = 0;
        length = 0;
    }

    @Override
    public long garbled() {
        return garbled;
    }

    @Override
    public String defect() {
        return defect;
    }
}
