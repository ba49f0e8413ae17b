package handspan.outside.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.HeardWav;
import handspan.Waits;
import java.io.ByteArrayOutputStream;
import java.lang.reflect.Proxy;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** The tone through an invented sound device whose clock the test turns, block by block. */
@Timeout(60)
class ListenTargetTest {
    private static final double FULL_RMS_DB = 20 * Math.log10(ToneVoice.FULL_RMS / 32_768);
    private static final double LEVEL_TOLERANCE_DB = 0.2;
    private static final double CLICK_LIMIT_DB = -90;
    private static final int BLOCKS_PER_S = 200;

    private final ByteArrayOutputStream heard = new ByteArrayOutputStream();
    private final Semaphore blocks = new Semaphore(0);
    private final AtomicInteger waiting = new AtomicInteger();
    private final AtomicInteger underway = new AtomicInteger(1);

    private SourceDataLine device() {
        return (SourceDataLine) Proxy.newProxyInstance(
                SourceDataLine.class.getClassLoader(), new Class<?>[] {SourceDataLine.class}, (self, method, given) -> {
                    return switch (method.getName()) {
                        case "write" -> {
                            waiting.incrementAndGet();
                            blocks.acquire();
                            synchronized (heard) {
                                heard.write((byte[]) given[0], (int) given[1], (int) given[2]);
                            }
                            waiting.decrementAndGet();
                            yield given[2];
                        }
                        case "getBufferSize" -> ListenTarget.UNDERWAY_BYTES;
                        case "available" -> ListenTarget.UNDERWAY_BYTES - underway.get();
                        default -> null;
                    };
                });
    }

    private int bytesHeard() {
        synchronized (heard) {
            return heard.size();
        }
    }

    /** Lets the device take blocks, and waits until it has and the next is ready. */
    private void turn(int count) {
        int wanted = bytesHeard() + count * ListenTarget.BLOCK * Pcm.BYTES;
        blocks.release(count);
        Waits.until(() -> bytesHeard() == wanted && waiting.get() == 1);
    }

    private HeardWav soFar() {
        byte[] bytes;
        synchronized (heard) {
            bytes = heard.toByteArray();
        }
        short[] samples = new short[bytes.length / 2];
        for (int i = 0; i < samples.length; i++) {
            samples[i] = (short) ((bytes[2 * i] & 0xFF) | (bytes[2 * i + 1] << 8));
        }
        return HeardWav.of(samples, samples.length);
    }

    private ListenTarget started() {
        ListenTarget target = ListenTarget.start(format -> device());
        Waits.until(() -> waiting.get() == 1);
        return target;
    }

    private void end(ListenTarget target) {
        blocks.release(1000);
        target.close();
    }

    @Test
    void theNewestFrameIsHeard() {
        ListenTarget target = started();
        turn(20);
        assertEquals(Double.NEGATIVE_INFINITY, soFar().peakDb());
        for (int block = 0; block < BLOCKS_PER_S; block++) {
            target.send(Tones.frame(0, 1000, 1), false);
            target.send(Tones.frame(0, 330, 0.5), false);
            turn(1);
        }
        HeardWav sound = soFar();
        assertEquals(330, sound.hz(0.4, 0.9, 0.1), 0.02);
        assertEquals(FULL_RMS_DB - 6.02, sound.rmsDb(0.6, 0.2), LEVEL_TOLERANCE_DB);
        assertEquals(BLOCKS_PER_S, target.status().sent());
        assertEquals(BLOCKS_PER_S, target.status().dropped());
        end(target);
        assertTrue(soFar().clickDb(4000) < CLICK_LIMIT_DB, soFar().clickDb(4000) + " dBFS");
        assertEquals(0, soFar().at(soFar().count() - 1));
    }

    /** 1.5 s of sound, as every receiver should. */
    @Test
    void withoutNewFramesItFadesByItself() {
        ListenTarget target = started();
        target.send(Tones.frame(0, 330, 1), false);
        turn(4 * BLOCKS_PER_S / 2);
        HeardWav sound = soFar();
        assertEquals(FULL_RMS_DB, sound.rmsDb(1.4, 0.1), LEVEL_TOLERANCE_DB);
        for (int i = (int) (1.55 * HeardWav.SAMPLES_PER_S); i < sound.count(); i++) {
            assertEquals(0, sound.at(i), "sample " + i);
        }
        assertTrue(sound.clickDb(4000) < CLICK_LIMIT_DB, sound.clickDb(4000) + " dBFS");
        target.send(Tones.frame(0, 330, 1), false);
        turn(BLOCKS_PER_S / 2);
        assertEquals(FULL_RMS_DB, soFar().rmsDb(2.3, 0.1), LEVEL_TOLERANCE_DB);
        end(target);
    }

    /** Every block a leap of level or pitch. */
    @Test
    void leapsDoNotClick() {
        ListenTarget target = started();
        for (int block = 0; block < BLOCKS_PER_S; block++) {
            target.send(Tones.frame(0, 100 * (1 + block % 5), (block / 3) % 2), false);
            turn(1);
        }
        end(target);
        assertTrue(soFar().clickDb(4000) < CLICK_LIMIT_DB, soFar().clickDb(4000) + " dBFS");
    }

    /** A device that has played all it had: what follows swells from silence. */
    @Test
    void afterADeviceHasRunOutTheToneSwellsAnew() {
        ListenTarget target = started();
        target.send(Tones.frame(0, 330, 1), false);
        turn(40);
        underway.set(0);
        turn(1);
        underway.set(1);
        turn(40);
        assertTrue(target.gaps() >= 1 && target.gaps() <= 2, target.gaps() + " gaps");
        HeardWav sound = soFar();
        boolean anew = false;
        for (int block = 40; block < 45; block++) {
            anew |= sound.at(block * ListenTarget.BLOCK) == 0 && sound.at(block * ListenTarget.BLOCK + 1) == 0;
        }
        assertTrue(anew, "no block begins in silence");
        end(target);
    }

    @Test
    void withoutADeviceItIsSaidAndFramesAreCounted() {
        ListenTarget busy = ListenTarget.start(format -> {
            throw new LineUnavailableException("in use by another");
        });
        Waits.until(() -> !busy.status().trouble().isEmpty());
        busy.send(Tones.frame(0, 440, 1), true);
        busy.close();
        assertEquals(
                "no sound device for the tone (in use by another): playing goes on without it",
                busy.status().trouble());
        assertEquals(1, busy.status().dropped());
        ListenTarget none = ListenTarget.start(format -> {
            throw new IllegalArgumentException("No line matching");
        });
        Waits.until(() -> none.status().trouble().contains("(none found)"));
        none.close();
    }

    /** A line that is closed under it takes fewer bytes than it was given (SourceDataLine.write, its Javadoc). */
    @Test
    void aDeviceThatIsPulledOutIsSaid() {
        ListenTarget target = ListenTarget.start(format -> (SourceDataLine) Proxy.newProxyInstance(
                SourceDataLine.class.getClassLoader(),
                new Class<?>[] {SourceDataLine.class},
                (self, method, given) -> method.getReturnType() == int.class ? 0 : null));
        Waits.until(() -> target.status().trouble().contains("takes no more"));
        target.close();
    }
}
