package handspan.outside.osc.packet;

import handspan.music.send.NetworkTarget.Protocol;
import java.nio.ByteBuffer;

/** How packets are told apart on a stream of bytes. Pure. */
public enum PacketFraming {
    /** The length before each packet, a 32-bit number (Open Sound Control 1.0, M. Wright, 2002, "OSC Packets"). */
    LENGTH {
        @Override
        public int mostBytes(int packetBytes) {
            return OscBytes.SIZE_BYTES + packetBytes;
        }

        @Override
        public void put(ByteBuffer packet, ByteBuffer framed) {
            framed.putInt(packet.remaining()).put(packet);
        }

        @Override
        public PacketSplitter splitter() {
            return new LengthSplitter();
        }
    },

    /**
     * END before and after each packet; END and ESC within it written as two bytes (RFC 1055, J. Romkey, 1988; the END
     * before as well: A. Freed and A. Schmeder, "Features and Future of Open Sound Control version 1.1", NIME 2009,
     * section 4).
     */
    SLIP {
        @Override
        public int mostBytes(int packetBytes) {
            return 2 + 2 * packetBytes;
        }

        @Override
        public void put(ByteBuffer packet, ByteBuffer framed) {
            framed.put(Slip.END);
            while (packet.hasRemaining()) {
                byte next = packet.get();
                if (next == Slip.END) {
                    framed.put(Slip.ESC).put(Slip.ESC_END);
                } else if (next == Slip.ESC) {
                    framed.put(Slip.ESC).put(Slip.ESC_ESC);
                } else {
                    framed.put(next);
                }
            }
            framed.put(Slip.END);
        }

        @Override
        public PacketSplitter splitter() {
            return new SlipSplitter();
        }
    };

    /** The longest packet that is taken from a stream, bytes; a datagram could hold a sixteenth of it. */
    static final int MOST_PACKET_BYTES = 1 << 20;

    /**
     * The framing of a way over the network.
     *
     * @throws IllegalArgumentException if its packets are datagrams
     */
    public static PacketFraming of(Protocol protocol) {
        return switch (protocol) {
            case TCP -> LENGTH;
            case TCP_SLIP -> SLIP;
            default ->
                throw new IllegalArgumentException(protocol.word() + " carries datagrams: framing is for "
                        + Protocol.TCP.word() + " and " + Protocol.TCP_SLIP.word());
        };
    }

    /** The most bytes that a packet may need in its frame. */
    public abstract int mostBytes(int packetBytes);

    /**
     * Writes a packet in its frame.
     *
     * @param packet read from its position to its limit
     * @param framed has room for {@link #mostBytes}
     */
    public abstract void put(ByteBuffer packet, ByteBuffer framed);

    /** For one stream, from its beginning. */
    public abstract PacketSplitter splitter();
}
