package handspan.outside.osc.packet;

import java.nio.ByteBuffer;
import java.util.function.Consumer;

/** Takes packets out of a stream of bytes, however the network has cut it. Pure; one stream, one thread. */
public interface PacketSplitter {
    /**
     * Takes the next bytes of the stream.
     *
     * @param bytes read from position to limit
     * @param packets is given each packet that has become whole, valid during the call
     */
    void feed(ByteBuffer bytes, Consumer<ByteBuffer> packets);

    /** Frames that were left out because they break the rules of the framing. */
    long garbled();

    /** Why nothing that follows can be understood, in words; empty while the stream can go on. */
    String defect();
}
