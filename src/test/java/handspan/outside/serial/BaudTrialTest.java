package handspan.outside.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.LinkException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A pseudo-terminal takes any speed, so the wire is simulated bit by bit: {@link Uart}. */
class BaudTrialTest {
    private static final double LONG_S = 40;

    /** Line shapes that hobby boards print; the words are invented. */
    private static final List<String> SHAPES = List.of(
            "%d,%d\r\n",
            "%d\r\n",
            "Distance: %d cm\r\n",
            "dist=%d light=%d\n",
            "{\"d\":%d.5,\"l\":%d}\r\n",
            "%d\t%d\r\n",
            "<%d;%d>\r\n",
            "%d\u00b0 %d\r\n");

    private static List<String> lines(String shape, long seed) {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < 500; i++) {
            lines.add(shape.formatted(60 + random.nextInt(500), random.nextInt(1024)));
        }
        return lines;
    }

    @ParameterizedTest
    @ValueSource(ints = {115_200, 9600, 57_600, 38_400, 19_200, 250_000, 74_880})
    void theTrueSpeedIsFoundWhateverTheLinesLookLike(int rate) throws LinkException {
        for (String shape : SHAPES) {
            for (double everyS : new double[] {0.02, 0.1}) {
                // a clock of 16 MHz gives 115200 and 57600 baud 2.1 % off (ATmega328P data sheet, table 19-12)
                for (double off : new double[] {1, 1.021}) {
                    Uart wire = new Uart(rate * off, 1.5, lines(shape, rate), everyS, LONG_S);
                    assertEquals(rate, new BaudTrial(wire).run("x").baud(), shape + " every " + everyS + " s, " + off);
                }
            }
        }
    }

    @Test
    void theWireAtItsOwnSpeedGivesWhatWasSent() {
        Uart wire = new Uart(9600, 0.01, List.of("234,567\r\n"), 0.05, 2);
        wire.baud(9600);
        byte[] buffer = new byte[100];
        int count = wire.collect(buffer, 40);
        assertEquals("234,567\r\n", new String(buffer, 0, count, StandardCharsets.ISO_8859_1));
    }

    @Test
    void aBoardThatSaysNothingIsToldSoAfterTheTimeOfAStart() {
        Uart wire = new Uart(9600, 30, List.of("1,2\r\n"), 0.05, 31);
        LinkException e = assertThrows(LinkException.class, () -> new BaudTrial(wire).run("PORT"));
        assertTrue(String.valueOf(e.getMessage()).contains("nothing came from 'PORT' within 3.5 s"), e.getMessage());
    }

    /** A speed that is not among those tried, or bytes that are no text at any. */
    @Test
    void whereNoSpeedFitsWhatWasSeenIsSaid() {
        Uart unusual = new Uart(500_000, 0.5, lines("%d,%d\r\n", 1), 0.02, LONG_S);
        LinkException e = assertThrows(LinkException.class, () -> new BaudTrial(unusual).run("PORT"));
        assertTrue(String.valueOf(e.getMessage()).contains("at 9600: "), e.getMessage());
        assertTrue(String.valueOf(e.getMessage()).contains("are no text"), e.getMessage());
        Random random = new Random(7);
        List<String> noise = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            StringBuilder bytes = new StringBuilder();
            random.ints(20, 0, 256).forEach(b -> bytes.append((char) b));
            noise.add(bytes.toString());
        }
        Uart binary = new Uart(115_200, 0.5, noise, 0.02, LONG_S);
        assertThrows(LinkException.class, () -> new BaudTrial(binary).run("PORT"));
    }

    /** Start messages at the board's own speed, then lines; boot loaders of some chips print at 74880 first. */
    @Test
    void aStartMessageDoesNotMislead() throws LinkException {
        List<String> lines = lines("%d,%d\r\n", 3);
        lines.set(0, "starting ...\r\nsensor found at 0x29\r\n");
        assertEquals(
                57_600,
                new BaudTrial(new Uart(57_600, 1, lines, 0.03, LONG_S)).run("x").baud());
    }
}
