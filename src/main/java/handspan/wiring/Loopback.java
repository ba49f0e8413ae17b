package handspan.wiring;

import handspan.music.send.NetworkTarget;
import handspan.music.send.SendLine;
import handspan.outside.osc.OscReceiver;
import java.io.IOException;
import java.util.List;

/** A receiver on this machine that decodes and counts what is sent to it, and remembers pitch and level. */
public final class Loopback implements AutoCloseable {
    private static final int LOOK_MS = 5;
    private static final int LOOKS = 200;

    private final ReceivedSound sound;
    private final OscReceiver receiver;

    private Loopback(ReceivedSound sound, OscReceiver receiver) {
        this.sound = sound;
        this.receiver = receiver;
    }

    /**
     * Listens on any free port.
     *
     * @param lines what will be sent; pitch and level must be among them
     */
    public static Loopback open(List<SendLine> lines) throws IOException {
        ReceivedSound sound = new ReceivedSound(lines);
        return new Loopback(sound, OscReceiver.open(0, Rigs.CLOCK, sound::onMessage));
    }

    /** Where to send. */
    public NetworkTarget target() {
        return new NetworkTarget(NetworkTarget.Protocol.UDP, "127.0.0.1", receiver.port());
    }

    /** Waits up to a second for packets still under way. */
    public void await(long packets) {
        try {
            for (int look = 0; look < LOOKS && receiver.status().packets() < packets; look++) {
                Thread.sleep(LOOK_MS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Packets received. */
    public long packets() {
        return receiver.status().packets();
    }

    /** Messages in them. */
    public long messages() {
        return receiver.status().messages();
    }

    /** Packets that could not be decoded. */
    public long malformed() {
        return receiver.status().malformed();
    }

    /** Goes on to a later moment of what was heard. */
    public void moveTo(long timeNanos) {
        sound.moveTo(timeNanos);
    }

    /** Frequency heard last before that moment; 0 before the first. */
    public double pitchHz() {
        return sound.pitchHz();
    }

    /** Gain heard last before that moment. */
    public double gain01() {
        return sound.gain01();
    }

    @Override
    public void close() {
        receiver.close();
    }
}
