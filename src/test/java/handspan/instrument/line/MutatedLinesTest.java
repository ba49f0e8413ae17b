package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a bad cable, a wrong speed or a board gone mad may send. */
class MutatedLinesTest {
    private static final int LINES = 100_000;

    private static final long MOST_BYTES_A_LINE = 1000;

    private static final String[] LINES_OF_BOARDS = {
        "23.47",
        "234,567",
        "12;340;-3",
        "23,4;567",
        "Distance: 23.47 cm",
        "dist=23.4 light=567",
        "Light:567,Dist:23",
        "{\"d\":23.4,\"l\":567}",
        "Timestamp (ms): 81234 | Light: 567",
        "1: 123\t2: 8190 TIMEOUT",
        "-1.5e3,+7,.5,nan",
        "x".repeat(256),
        "1,".repeat(64),
    };

    private static byte[] mutated(Random random, String line) {
        byte[] bytes = Board.bytes(line);
        int changes = 1 + random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            byte[] liked = Board.bytes(":=,;|\t .-+eE0123456789nanifcmus\"{}<>\u00b5\u0080\u00ff");
            int at = random.nextInt(bytes.length);
            bytes[at] = random.nextInt(3) == 0 ? (byte) random.nextInt(256) : liked[random.nextInt(liked.length)];
        }
        return bytes;
    }

    @Test
    void noMutatedLineThrowsOrLetsAnythingButAFiniteNumberThrough() {
        Random random = new Random(75);
        long read = 0;
        for (String line : LINES_OF_BOARDS) {
            Board board = line.startsWith("x") ? Board.learnedFrom("7") : Board.learnedFrom(line);
            LineReader reader = new LineReader(board.shape, new Rejections());
            for (int i = 0; i < LINES / LINES_OF_BOARDS.length; i++) {
                byte[] bytes = mutated(random, line);
                Reading reading = reader.read(bytes, 1 + random.nextInt(bytes.length), i);
                if (reading != null) {
                    read++;
                    for (int slot = 0; slot < reading.size(); slot++) {
                        assertTrue(Double.isFinite(reading.value(slot)), line);
                    }
                }
            }
        }
        assertTrue(read > LINES / 10 && read < LINES * 9 / 10, read + " were read");
    }

    @Test
    void noMutatedLinesMakeTheLearnerThrow() {
        Random random = new Random(76);
        int learned = 0;
        for (int i = 0; i < 2000; i++) {
            String line = LINES_OF_BOARDS[random.nextInt(LINES_OF_BOARDS.length)];
            ShapeLearner learner = new ShapeLearner();
            byte[] bytes;
            do {
                bytes = mutated(random, line);
            } while (!learner.offer(bytes, bytes.length));
            learned += Board.isLearned(learner.learn()) ? 1 : 0;
        }
        assertTrue(learned > 1000, learned + " were learned");
    }

    /** A number now and then in what is garbled is no shape, and its bytes are nothing that the board said. */
    @Test
    void oneNumberAmongGarbageMakesNoShape() {
        ShapeLearner learner = new ShapeLearner();
        int i = 0;
        while (!Board.offer(learner, i++ % 7 == 0 ? "\u00d07\u00c3" : "\u0001\u0005x\u00f8!")) {}
        assertTrue(learner.learn() instanceof Learning.Nothing, "3 lines of 20");
        assertEquals(Rejection.NOT_TEXT, learner.reason(Board.bytes("\u0001\u0005x")));
        assertEquals(Rejection.OTHER_LABEL, learner.reason(Board.bytes("\u00d07\u00c3")));
        assertEquals(Rejection.NO_NUMBER, learner.reason(Board.bytes("hello")));
        assertTrue(LineText.hasWord(Board.bytes("1 boot"), 6) && !LineText.hasWord(Board.bytes("x!\u00c3ok-"), 6));
    }

    /** At the wrong speed letters and digits come as if thrown: every number with another label. */
    @Test
    void garbageOfManyLabelsMakesNoShape() {
        Random random = new Random(78);
        ShapeLearner learner = new ShapeLearner();
        StringBuilder line = new StringBuilder();
        do {
            line.setLength(0);
            for (int i = 0; i < 10; i++) {
                line.append((char) ('a' + random.nextInt(26)))
                        .append((char) (128 + random.nextInt(128)))
                        .append((char) ('a' + random.nextInt(26)))
                        .append(random.nextInt(10))
                        .append(' ');
            }
        } while (!Board.offer(learner, line.toString()));
        assertTrue(!Board.isLearned(learner.learn()));
    }

    @Test
    void aLineTakesLessThanAKilobyteOfHeap() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        for (String line : new String[] {"234,567", "Light:567,Dist:23.4", "Distance: 23.47 cm", "hello"}) {
            Board board = Board.learnedFrom("hello".equals(line) ? "7" : line);
            LineReader reader = new LineReader(board.shape, new Rejections());
            byte[] bytes = Board.bytes(line);
            long before = 0;
            for (int i = -20_000; i < LINES; i++) {
                if (i == 0) {
                    before = threads.getThreadAllocatedBytes(
                            Thread.currentThread().getId());
                }
                reader.read(bytes, bytes.length, i);
            }
            long took = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
            assertTrue(took < MOST_BYTES_A_LINE * LINES, line + " takes " + took / LINES + " bytes");
        }
    }

    @Test
    void linesAreReadAlikeWhereADecimalCommaIsUsual() {
        Locale usual = Locale.getDefault();
        try {
            for (String tag : new String[] {"de-DE", "tr-TR", "ar-EG-u-nu-arab"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                Board board = Board.learnedFrom("DISTANCE: 23.47 IN", "DISTANCE: 25.00 IN");
                assertEquals("1 number with labels: DISTANCE in IN", board.shape.words());
                assertEquals(23.47, board.values("distance: 23.47 in")[0]);
                assertEquals(0, board.shape.indexOf("Distance"));
            }
        } finally {
            Locale.setDefault(usual);
        }
    }
}
