package handspan.outside.midi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.MidiEar;
import handspan.Waits;
import handspan.music.send.MidiForm;
import handspan.music.send.MidiTarget;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class MidiOutTargetTest {
    private static final double BEND_CENTS = 0.0123;
    private static final long LOOK_AGAIN = 3 * Nanos.PER_SECOND;

    /** The path has 5 ms for a frame and all its targets; a machine under load is given more. */
    private static final double MOST_SEND_MS = 100;

    private final FakeDevice device = new FakeDevice(new MidiEar(1, false));

    /** Moved by the tests alone; the thread looks at it when it is woken by a frame. */
    private final AtomicLong now = new AtomicLong(Nanos.PER_SECOND);

    private MidiOutTarget target = start();
    private long given;

    private MidiOutTarget start() {
        return MidiOutTarget.start(new MidiTarget("moth"), MidiForm.USUAL, device, now::get);
    }

    @AfterEach
    void end() {
        device.unblock();
        target.close();
    }

    private void send(double hz, double gain01) {
        now.addAndGet(20 * Nanos.PER_MS);
        given++;
        target.send(Sounds.of(hz, gain01, now.get()), false);
    }

    private void sendAndAwait(double hz, double gain01) {
        send(hz, gain01);
        awaitTaken();
    }

    private void awaitTaken() {
        Waits.until(() -> target.status().sent() + target.status().dropped() == given, () -> target.status() + "");
    }

    private void awaitOpen() {
        Waits.until(
                () -> target.status().trouble().isEmpty(), () -> target.status().trouble());
    }

    private int notes() {
        return device.ear(MidiEar::notes);
    }

    private double pitchHz() {
        return device.ear(MidiEar::pitchHz);
    }

    @Test
    void framesAreHeardAndCounted() {
        awaitOpen();
        sendAndAwait(442, 0.5);
        assertEquals(0, Cents.between(442, pitchHz()), BEND_CENTS);
        sendAndAwait(442, 0);
        assertEquals(0, notes());
        assertEquals(2, target.status().sent());
        assertEquals(0, target.status().dropped());
        assertEquals("midi:moth", target.status().target());
    }

    @Test
    void theEndEndsTheNote() {
        awaitOpen();
        sendAndAwait(442, 0.5);
        target.close();
        assertEquals(0, notes());
        assertEquals(0, device.ear(MidiEar::expression));
        assertEquals(device.opened(), device.closed());
    }

    @Test
    void whatWaitedForTheCableIsPlayedWithoutAnotherFrame() {
        awaitOpen();
        sendAndAwait(440, 0.5);
        // no time has passed: the cable still carries the note
        target.send(Sounds.of(450, 0.5, now.get()), false);
        given++;
        awaitTaken();
        assertEquals(0, Cents.between(440, pitchHz()), BEND_CENTS);
        now.addAndGet(20 * Nanos.PER_MS);
        Waits.until(() -> Math.abs(Cents.between(450, pitchHz())) < BEND_CENTS, () -> pitchHz() + " Hz");
    }

    @Test
    void aMissingDeviceIsSaidAndLookedForAgainEveryThreeSeconds() {
        target.close();
        device.plug(false);
        target = start();
        Waits.until(() -> target.status().trouble().startsWith("no MIDI output"));
        sendAndAwait(440, 0.5);
        assertEquals(1, target.status().dropped());
        device.plug(true);
        sendAndAwait(440, 0.5);
        assertEquals(2, target.status().dropped(), "not before the three seconds are over");
        now.addAndGet(LOOK_AGAIN);
        sendAndAwait(440, 0.5);
        assertEquals("", target.status().trouble());
        now.addAndGet(Nanos.PER_SECOND);
        sendAndAwait(440, 0.5);
        assertEquals(1, notes());
        assertEquals(2, target.status().sent());
    }

    @Test
    void aNoteThatWasOnWhenTheDeviceVanishedEndsWhenItComesBack() {
        awaitOpen();
        sendAndAwait(440, 0.5);
        device.plug(false);
        sendAndAwait(450, 0.5);
        String trouble = target.status().trouble();
        assertTrue(trouble.startsWith("midi:moth is gone (receiver closed)"), trouble);
        assertEquals(1, notes(), "nobody could tell it");
        // the hand has left meanwhile
        sendAndAwait(450, 0);
        device.plug(true);
        now.addAndGet(LOOK_AGAIN);
        sendAndAwait(450, 0);
        assertEquals(0, notes());
        assertEquals("", target.status().trouble());
        assertEquals(2, target.status().dropped());
        assertEquals(2, target.status().sent());
        assertEquals(1, device.closed(), "the one that vanished was let go");
    }

    @Test
    void aNoteThatWasOnWhenTheDeviceVanishedEndsAtTheEndToo() {
        awaitOpen();
        sendAndAwait(440, 0.5);
        device.plug(false);
        sendAndAwait(450, 0.5);
        device.plug(true);
        target.close();
        assertEquals(0, notes());
    }

    @Test
    void aDeviceThatBlocksHoldsThePathUpByNothingAndMissesNoSilence() {
        awaitOpen();
        sendAndAwait(440, 0.5);
        device.block();
        sendAndBlock();
        double longestMs = 0;
        for (int i = 0; i < 1000; i++) {
            long before = System.nanoTime();
            send(440 + i / 100.0, i == 500 ? 0 : 0.5);
            longestMs = Math.max(longestMs, Nanos.toMs(System.nanoTime() - before));
        }
        assertTrue(longestMs < MOST_SEND_MS, longestMs + " ms");
        now.addAndGet(Nanos.PER_SECOND);
        device.unblock();
        awaitTaken();
        now.addAndGet(Nanos.PER_SECOND);
        sendAndAwait(449.99, 0.5);
        assertEquals(0, Cents.between(449.99, pitchHz()), BEND_CENTS, "the newest");
        // all these pitches lie within the bend of the first note
        assertEquals(2, device.ear(MidiEar::notesBegun), "the silence between was heard, so the note began anew");
        assertEquals(999, target.status().dropped(), "all but the newest");
    }

    /** A frame whose messages block the thread. */
    private void sendAndBlock() {
        send(450, 0.5);
        Waits.until(device::holds);
    }

    @Test
    void theEndWaitsForABlockedDeviceNotForEverAndStillEndsTheNote() {
        awaitOpen();
        sendAndAwait(440, 0.5);
        device.block();
        sendAndBlock();
        target.close();
        assertEquals(1, notes());
        device.unblock();
        Waits.until(() -> notes() == 0 && device.closed() == 1);
    }
}
