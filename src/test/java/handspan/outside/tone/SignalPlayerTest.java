package handspan.outside.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class SignalPlayerTest {
    private final List<String> trouble = new CopyOnWriteArrayList<>();
    private final List<String> calls = new CopyOnWriteArrayList<>();
    private final ByteArrayOutputStream heard = new ByteArrayOutputStream();

    /** A loudspeaker that writes down what it is given, and waits before it takes anything. */
    private SourceDataLine loudspeaker(CountDownLatch mayPlay) {
        return (SourceDataLine) Proxy.newProxyInstance(
                SourceDataLine.class.getClassLoader(),
                new Class<?>[] {SourceDataLine.class},
                (self, method, arguments) -> {
                    calls.add(method.getName());
                    if (method.getName().equals("write")) {
                        mayPlay.await();
                        heard.write((byte[]) arguments[0], (int) arguments[1], (int) arguments[2]);
                        return arguments[2];
                    }
                    return null;
                });
    }

    @Test
    void withoutADeviceItIsSaidOnceAndAllGoesOn() {
        CountDownLatch asked = new CountDownLatch(1);
        SignalPlayer player = SignalPlayer.start(
                format -> {
                    asked.countDown();
                    throw new LineUnavailableException("in use by another");
                },
                trouble::add);
        for (int i = 0; i < 100; i++) {
            player.play(Signal.CAPTURED);
        }
        player.close();
        assertEquals(0, asked.getCount());
        assertEquals(
                List.of("no sound device that could play signals (in use by another): go by the words, or give"
                        + " --no-cues"),
                trouble);
        assertFalse(player.play(Signal.FINISHED));
    }

    /** A machine without any device answers with another exception (javax.sound.sampled.AudioSystem, its Javadoc). */
    @Test
    void withoutAnyMatchingDeviceItIsSaidToo() {
        SignalPlayer player = SignalPlayer.start(
                format -> {
                    throw new IllegalArgumentException("No line matching");
                },
                trouble::add);
        player.close();
        assertEquals(1, trouble.size(), "" + trouble);
        assertTrue(trouble.get(0).contains("(none found)"), trouble.get(0));
    }

    @Test
    void signalsAreHeardInTheirOrderAndTheLastIsLetRingOut() {
        CountDownLatch now = new CountDownLatch(0);
        SignalPlayer player = SignalPlayer.start(format -> loudspeaker(now), trouble::add);
        assertTrue(player.play(Signal.CAPTURED));
        assertTrue(player.play(Signal.FINISHED));
        player.close();
        byte[] first = SignalTones.bytes(Signal.CAPTURED);
        byte[] second = SignalTones.bytes(Signal.FINISHED);
        assertEquals(first.length + second.length, heard.size());
        assertEquals(List.of("write", "write", "drain", "close"), calls);
        assertEquals(List.of(), trouble);
    }

    @Test
    void aLoudspeakerThatStallsDelaysNobody() throws InterruptedException {
        CountDownLatch mayPlay = new CountDownLatch(1);
        CountDownLatch open = new CountDownLatch(1);
        SignalPlayer player = SignalPlayer.start(
                format -> {
                    open.countDown();
                    return loudspeaker(mayPlay);
                },
                trouble::add);
        assertTrue(open.await(5, TimeUnit.SECONDS));
        int taken = 0;
        for (int i = 0; i < 1000; i++) {
            taken += player.play(Signal.REFUSED) ? 1 : 0;
        }
        assertTrue(taken >= 4 && taken <= 5, taken + " of 1000 taken: four in the queue, one on its way");
        mayPlay.countDown();
        player.close();
        assertEquals(taken * SignalTones.bytes(Signal.REFUSED).length, heard.size());
    }
}
