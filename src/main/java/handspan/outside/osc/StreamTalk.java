package handspan.outside.osc;

import handspan.music.send.NetworkTarget;
import handspan.music.send.SoundFrame;
import handspan.outside.osc.packet.PacketFraming;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.function.Consumer;

/** What one receiver is told from the beginning to the end of its connection. One thread only. */
final class StreamTalk {
    private final PacketFraming framing;
    private final OscEncoder encoder;
    private final StreamConnection out;
    private final Consumer<String> trouble;
    private final String slowTrouble;
    private final SendTrouble sending = new SendTrouble();
    private ByteBuffer framed = ByteBuffer.allocateDirect(1024);

    /**
     * The beginning.
     *
     * @param encoder has said nothing yet
     * @param trouble told with each frame whether the receiver is too slow, in words; empty when it is not
     */
    StreamTalk(NetworkTarget target, OscEncoder encoder, StreamConnection out, Consumer<String> trouble) {
        this.framing = PacketFraming.of(target.protocol());
        this.encoder = encoder;
        this.out = out;
        this.trouble = trouble;
        this.slowTrouble = TargetWords.tooSlow(target);
    }

    /**
     * Writes a frame, all its packets in one go.
     *
     * @return whether there was anything to write
     */
    boolean say(SoundFrame frame, boolean withState) throws IOException {
        framed.clear();
        encoder.begin(frame, withState);
        for (ByteBuffer packet = encoder.next(); packet != null; packet = encoder.next()) {
            makeRoom(framing.mostBytes(packet.remaining()));
            framing.put(packet, framed);
        }
        if (framed.position() == 0) {
            return false;
        }
        if (out.write(framed.flip())) {
            sending.onSuccess(frame.timeNanos());
            trouble.accept(sending.words());
        } else {
            sending.onFailure(frame.timeNanos(), slowTrouble);
            trouble.accept(sending.words());
            out.finish(framed);
        }
        return true;
    }

    private void makeRoom(int bytes) {
        if (framed.remaining() < bytes) {
            ByteBuffer larger = ByteBuffer.allocateDirect(2 * (framed.position() + bytes));
            framed = larger.put(framed.flip());
        }
    }
}
