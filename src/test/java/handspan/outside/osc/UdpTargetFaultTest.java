package handspan.outside.osc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.music.send.NetworkTarget;
import java.io.IOException;
import java.net.ConnectException;
import java.net.PortUnreachableException;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.nio.ByteBuffer;
import java.nio.channels.UnresolvedAddressException;
import java.nio.channels.WritableByteChannel;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** On a network that fails when told to. */
class UdpTargetFaultTest {
    private static final NetworkTarget TARGET = new NetworkTarget(NetworkTarget.Protocol.UDP, "stage", 9000);
    private static final long FRAME_NANOS = 100_000_000;

    private final Deque<Exception> openingFaults = new ArrayDeque<>();
    private final List<FaultyChannel> opened = new ArrayList<>();
    private final UdpTarget target;
    private long timeNanos;

    UdpTargetFaultTest() {
        openingFaults.add(new UnknownHostException("stage"));
        target = UdpTarget.open(TARGET, new OscEncoder(Frames.ALL_LINES), this::open);
    }

    private WritableByteChannel open(NetworkTarget asked) throws IOException {
        assertEquals(TARGET, asked);
        throwIfAny(openingFaults.poll());
        FaultyChannel channel = new FaultyChannel();
        opened.add(channel);
        return channel;
    }

    private static void throwIfAny(@Nullable Exception fault) throws IOException {
        if (fault instanceof IOException e) {
            throw e;
        }
        if (fault instanceof RuntimeException e) {
            throw e;
        }
    }

    private void sendFrames(int count) {
        for (int i = 0; i < count; i++) {
            target.send(Frames.at(timeNanos += FRAME_NANOS), false);
        }
    }

    private FaultyChannel channel() {
        return opened.get(opened.size() - 1);
    }

    /** Counts datagrams; fails once for each fault. */
    private static final class FaultyChannel implements WritableByteChannel {
        private final Deque<Exception> faults = new ArrayDeque<>();
        private boolean full;
        private boolean open = true;
        private int datagrams;

        @Override
        public int write(ByteBuffer packet) throws IOException {
            throwIfAny(faults.poll());
            if (full) {
                return 0;
            }
            int bytes = packet.remaining();
            packet.position(packet.limit());
            datagrams++;
            return bytes;
        }

        @Override
        public boolean isOpen() {
            return open;
        }

        @Override
        public void close() throws IOException {
            open = false;
            throw new IOException("closing fails as well");
        }
    }

    @Test
    void aHostThatBecomesKnownGetsTheNextFrame() {
        sendFrames(3);
        assertEquals(3, target.status().dropped());
        assertTrue(target.status().trouble().startsWith("host 'stage' is not known: "));
        assertTrue(target.reopen());
        assertEquals("", target.status().trouble());
        sendFrames(2);
        assertEquals(2, channel().datagrams);
        assertEquals(2, target.status().sent());
        assertEquals(3, target.status().dropped());
    }

    @Test
    void whateverGoesWrongAtOpeningIsToldInWords() {
        openingFaults.add(new ConnectException("Network is unreachable"));
        openingFaults.add(new UnresolvedAddressException());
        assertFalse(target.reopen());
        assertEquals(
                "udp:stage:9000 can't be opened (Network is unreachable): check the network",
                target.status().trouble());
        assertFalse(target.reopen());
        assertEquals(
                "udp:stage:9000 can't be opened (UnresolvedAddressException): check the network",
                target.status().trouble());
    }

    @Test
    void aReopeningThatFailsLeavesWhatWorks() {
        target.reopen();
        sendFrames(1);
        openingFaults.add(new UnknownHostException("stage"));
        assertFalse(target.reopen());
        sendFrames(1);
        assertEquals(2, target.status().sent());
        assertEquals("", target.status().trouble());
    }

    @Test
    void aReopenedTargetLeavesTheOldChannelAndItsTrouble() {
        target.reopen();
        sendFrames(1);
        channel().faults.add(new SocketException("Network is unreachable"));
        sendFrames(1);
        assertFalse(target.status().trouble().isEmpty());
        target.reopen();
        assertTrue(opened.get(0).open, "the path may still be writing to it");
        sendFrames(1);
        assertFalse(opened.get(0).open);
        assertEquals(1, opened.get(1).datagrams);
        assertEquals("", target.status().trouble());
    }

    @Test
    void aFullNetworkIsCountedAndTried() {
        target.reopen();
        channel().full = true;
        sendFrames(4);
        assertEquals(4, target.status().dropped());
        assertTrue(
                target.status().trouble().contains("too slow"), target.status().trouble());
        channel().full = false;
        sendFrames(1);
        assertEquals(1, target.status().sent());
    }

    @Test
    void everyFaultIsCountedInItsPlaceAndNoneLeaves() {
        target.reopen();
        channel().faults.add(new PortUnreachableException());
        channel().faults.add(new SocketException("No buffer space available"));
        channel().faults.add(new IllegalStateException());
        sendFrames(1);
        assertEquals(1, target.status().refused());
        assertTrue(target.status().trouble().startsWith("nobody listens at udp:stage:9000: "));
        sendFrames(1);
        assertTrue(target.status().trouble().contains("(No buffer space available)"));
        sendFrames(1);
        assertTrue(target.status().trouble().contains("(IllegalStateException)"));
        sendFrames(99);
        assertFalse(target.status().trouble().isEmpty(), "99 good frames");
        sendFrames(1);
        assertEquals("", target.status().trouble(), "100 good frames in 10 s");
        assertEquals(2, target.status().dropped());
        assertEquals(100, target.status().sent());
    }

    @Test
    void closingEndsBothTheChannelInUseAndTheOneThatWaits() {
        target.reopen();
        sendFrames(1);
        target.reopen();
        target.close();
        assertEquals(2, opened.size());
        assertTrue(opened.stream().noneMatch(FaultyChannel::isOpen));
        assertFalse(target.reopen(), "closed for good");
        assertEquals(2, opened.size());
        sendFrames(1);
        assertEquals(1, target.status().dropped());
    }

    @Test
    void aChannelThatIsReplacedBeforeItsFirstFrameIsClosed() {
        target.reopen();
        target.reopen();
        assertFalse(opened.get(0).open);
        assertTrue(opened.get(1).open);
    }

    private static DatagramOpener after(CountDownLatch answer, WritableByteChannel found) {
        return asked -> {
            try {
                answer.await();
                return found;
            } catch (InterruptedException e) {
                throw new IOException(e);
            }
        };
    }

    /** A resolver that hangs, as it does without a network: other threads play on meanwhile. */
    @Test
    void whileANameIsLookedUpFramesAreDroppedAndNobodyWaits() throws InterruptedException {
        CountDownLatch answer = new CountDownLatch(1);
        UdpTarget slow = UdpTarget.later(TARGET, new OscEncoder(Frames.ALL_LINES), after(answer, new FaultyChannel()));
        Thread care = new Thread(slow::reopen);
        care.start();
        Waits.until(() -> care.getState() == Thread.State.WAITING);
        slow.send(Frames.at(FRAME_NANOS), true);
        assertEquals(1, slow.status().dropped());
        assertEquals("looking up stage for udp:stage:9000", slow.status().trouble());
        answer.countDown();
        care.join();
        slow.send(Frames.at(2 * FRAME_NANOS), false);
        assertEquals(1, slow.status().sent());
        assertEquals("", slow.status().trouble());
        slow.close();
    }

    /** The program ends while a resolver still hangs: what it finds later must not stay open. */
    @Test
    void aTargetClosedWhileItIsLookedUpStaysClosed() throws InterruptedException {
        CountDownLatch answer = new CountDownLatch(1);
        FaultyChannel late = new FaultyChannel();
        UdpTarget slow = UdpTarget.later(TARGET, new OscEncoder(Frames.ALL_LINES), after(answer, late));
        Thread care = new Thread(slow::reopen);
        care.start();
        Waits.until(() -> care.getState() == Thread.State.WAITING);
        slow.close();
        answer.countDown();
        care.join();
        assertFalse(late.open);
    }
}
