package handspan.outside.midi;

import handspan.MidiEar;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.ShortMessage;

/** A device that can be missing, vanish and block, with an ear behind it. */
final class FakeDevice implements MidiOpener {
    private final MidiEar ear;
    private volatile boolean there = true;
    private volatile boolean blocks;
    private volatile boolean holds;
    private volatile CountDownLatch free = new CountDownLatch(0);
    private int opened;
    private int closed;

    FakeDevice(MidiEar ear) {
        this.ear = ear;
    }

    /** Plugs it in or pulls it out. */
    void plug(boolean in) {
        there = in;
    }

    /** From now on no message gets through until it is let go on. */
    void block() {
        free = new CountDownLatch(1);
        blocks = true;
    }

    void unblock() {
        blocks = false;
        free.countDown();
    }

    /** Looks at the ear while nothing gets there. */
    synchronized <T> T ear(Function<MidiEar, T> look) {
        return look.apply(ear);
    }

    synchronized int opened() {
        return opened;
    }

    synchronized int closed() {
        return closed;
    }

    @Override
    public Receiver open(String device) throws MidiUnavailableException {
        if (!there) {
            throw new MidiUnavailableException("no MIDI output has '" + device + "' in its name");
        }
        synchronized (this) {
            opened++;
        }
        return new Receiver() {
            @Override
            public void send(MidiMessage message, long timeMicros) {
                hear((ShortMessage) message);
            }

            @Override
            public void close() {
                synchronized (FakeDevice.this) {
                    closed++;
                }
            }
        };
    }

    private void hear(ShortMessage message) {
        if (blocks) {
            awaitFree();
        }
        if (!there) {
            throw new IllegalStateException("receiver closed");
        }
        synchronized (this) {
            ear.send(message.getStatus(), message.getData1(), message.getLength() > 2 ? message.getData2() : 0);
        }
    }

    /** Whether a message waits in it. */
    boolean holds() {
        return holds;
    }

    private void awaitFree() {
        holds = true;
        try {
            free.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
