package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TextMeterTest {
    private final TextMeter meter = new TextMeter();
    private long now;

    private void second(byte[] chunk) {
        for (int i = 0; i < 50; i++) {
            now += 20 * Nanos.PER_MS;
            meter.accept(chunk, chunk.length, now);
        }
    }

    @Test
    void randomBytesAreNoTextAndLinesWithAUnitAre() {
        byte[] random = new byte[40];
        new Random(3).nextBytes(random);
        second(random);
        // of 256 bytes 128 lie beyond ASCII, 33 are controls; line ends and tab are none of them, nor is the escape
        assertTrue(meter.garbled01(now) > TextMeter.GARBLED01 && meter.garbled01(now) < 0.9, "" + meter.garbled01(now));
        second("echo: 512 \u00b5s\r\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(1.0 / 14, meter.garbled01(now), 1e-9);
        now += 2 * Nanos.PER_SECOND;
        assertEquals(0, meter.garbled01(now), "nothing came for long");
    }

    @Test
    void aFewOddBytesAreNotJudged() {
        byte[] few = {1, 2, 3};
        meter.accept(few, 3, now);
        assertEquals(0, meter.garbled01(now));
    }

    @Test
    void bytesWithoutALineEndAreCounted() {
        second(new byte[] {1, 2, 3, 4});
        assertEquals(200, meter.sinceLineEnd());
        second(new byte[] {1, '\n'});
        assertEquals(0, meter.sinceLineEnd());
    }
}
