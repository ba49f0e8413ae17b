package handspan.outside.osc;

import handspan.outside.osc.packet.OscPacket;
import handspan.outside.osc.packet.OscPacketReader;
import handspan.outside.osc.packet.PacketFraming;
import handspan.outside.osc.packet.ReceivedMessage;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Keeps the packets that come over connections to a port of this machine, taken apart. */
final class StreamEars implements AutoCloseable {
    /**
     * One packet.
     *
     * @param from which connection
     */
    record Heard(InetSocketAddress from, OscPacket packet) {
        /** The first argument of the message whose address ends so. */
        Object argument(String ending) {
            for (ReceivedMessage message : packet.messages()) {
                if (message.address().endsWith(ending)) {
                    return String.valueOf(message.arguments().get(0));
                }
            }
            return "none";
        }

        boolean isSilent() {
            return argument("/hand").equals("0") && argument("/level").equals("0.0");
        }
    }

    private final OscPacketReader reader = new OscPacketReader();
    private final List<Heard> heard = new CopyOnWriteArrayList<>();
    private final StreamPackets packets;

    StreamEars(PacketFraming framing, int port) throws IOException {
        packets = StreamPackets.open(framing, InetAddress.getLoopbackAddress(), port, () -> 0, this::onPacket);
    }

    private void onPacket(ByteBuffer packet, InetSocketAddress from, long timeNanos) {
        heard.add(new Heard(from, reader.read(packet, timeNanos)));
    }

    int port() {
        return packets.address().getPort();
    }

    List<Heard> all() {
        return heard;
    }

    Heard last() {
        return heard.get(heard.size() - 1);
    }

    String trouble() {
        return packets.trouble();
    }

    @Override
    public void close() {
        packets.close();
    }
}
