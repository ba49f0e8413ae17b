package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.path.LineTap;
import handspan.number.units.Nanos;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LinkDoubtsTest {
    private static final long READING = 20 * Nanos.PER_MS;

    private final List<String> doubts = new ArrayList<>();
    private long now = Nanos.PER_SECOND;
    private final Engine engine = new Engine(
            new Engine.Plugs(null, List.of(), LineTap.NONE, event -> {
                if (event.what() instanceof Event.LinkDoubt doubt) {
                    doubts.add(doubt.words());
                }
            }),
            now);

    private void give(byte[] bytes) {
        now += READING;
        Replay.tickUntil(engine, now);
        engine.onBytes(bytes, bytes.length, now);
    }

    private void give(String text) {
        give(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private void start() {
        engine.onLinkUp(now);
        engine.onCommand(new Command.Watch(), now);
    }

    /**
     * What one of two readers gets: a system gives the bytes that are there to whoever asks first, so each piece of a
     * few bytes goes to one or the other by chance.
     */
    private void shared(int lines, IntFunction<String> line, long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < lines; i++) {
            String text = line.apply(i);
            StringBuilder mine = new StringBuilder();
            int at = 0;
            while (at < text.length()) {
                int to = Math.min(text.length(), at + 1 + random.nextInt(text.length()));
                if (random.nextBoolean()) {
                    mine.append(text, at, to);
                }
                at = to;
            }
            give(mine.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"%d,%d\r\n", "Distance: %d cm\r\n", "dist=%d light=%d\n", "{\"d\":%d,\"l\":%d}\r\n"})
    void piecesOfLinesRaiseTheQuestionWhoElseReads(String shape) {
        start();
        for (int i = 0; i < 100; i++) {
            give(shape.formatted(200 + i % 9, 500 + i % 7));
        }
        assertEquals(List.of(), doubts);
        shared(400, i -> shape.formatted(200 + i % 9, 500 + i % 7), 1);
        assertEquals(1, doubts.size(), "" + doubts);
        assertTrue(doubts.get(0).contains("does another program read this port, too?"), doubts.get(0));
    }

    /** Near misses: boards that print other lines between, or lines of several forms. */
    @Test
    void otherLinesBetweenAreNoPieces() {
        start();
        for (int i = 0; i < 600; i++) {
            give((200 + i % 9) + "," + (500 + i % 7) + "\r\n");
            if (i % 2 == 0) {
                give("state: near\r\n");
            }
            if (i % 3 == 0) {
                give("" + i % 10 + "\r\n");
            }
            if (i % 5 == 0) {
                give("LOOP 12 took 3 ms\r\n");
            }
        }
        assertEquals(List.of(), doubts);
    }

    @Test
    void labelsOnLinesOfTheirOwnAreNoPieces() {
        start();
        for (int i = 0; i < 600; i++) {
            give("distance:" + (200 + i % 9) + "\r\n");
            give("light:" + (500 + i % 7) + "\r\n");
            give("\r\n");
        }
        assertEquals(List.of(), doubts);
    }

    @Test
    void aPieceIsAStartAnEndOrBothOfTheWholeLine() {
        assertTrue(LinkDoubts.isPiece("9", "9,9"));
        assertTrue(LinkDoubts.isPiece(",9", "9,9"));
        assertTrue(LinkDoubts.isPiece("9,9,9", "9,9"));
        assertTrue(LinkDoubts.isPiece("Dist cm", "Distance: 9 cm"));
        assertFalse(LinkDoubts.isPiece("state: near", "9,9"));
        assertFalse(LinkDoubts.isPiece("9,9", "9,9"));
        assertFalse(LinkDoubts.isPiece("LOOP 9", "9,9"));
    }

    @Test
    void bytesThatAreNoTextRaiseTheQuestionOfTheSpeedOnceAMinute() {
        start();
        Random random = new Random(5);
        for (int i = 0; i < 50 * 50; i++) {
            byte[] noise = new byte[12];
            random.nextBytes(noise);
            give(noise);
        }
        assertEquals(1, doubts.size(), "" + doubts);
        assertTrue(doubts.get(0).matches("wrong baud rate\\? \\d+ % of what came is no text; try --baud auto"));
        for (int i = 0; i < 50 * 20; i++) {
            byte[] noise = new byte[12];
            random.nextBytes(noise);
            give(noise);
        }
        assertEquals(2, doubts.size(), "" + doubts);
    }

    /** One byte in four is no text: a sign of degrees in short lines. */
    @Test
    void aSignThatIsNoTextInEachLineIsNoWrongSpeed() {
        start();
        for (int i = 0; i < 200; i++) {
            give((20 + i % 9) + "\u00b0\r\n");
        }
        assertEquals(List.of(), doubts);
    }
}
