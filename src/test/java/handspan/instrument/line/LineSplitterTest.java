package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineSplitterTest {
    /** Notes what comes. */
    private static final class Seen implements LineSplitter.Lines {
        private final List<String> lines = new ArrayList<>();

        @Override
        public void line(byte[] bytes, int length) {
            lines.add(new String(bytes, 0, length, StandardCharsets.ISO_8859_1));
        }

        @Override
        public void tooLong() {
            lines.add("(too long)");
        }
    }

    private final LineSplitter splitter = new LineSplitter();

    private final Seen seen = new Seen();

    private List<String> split(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        splitter.accept(bytes, bytes.length, seen);
        return seen.lines;
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r", "\r\n", "\n\r", "\r\r\n"})
    void everyKindOfLineEndParts(String end) {
        assertEquals(List.of("23", "24.5,x", " 25"), split("cut" + end + "23" + end + "24.5,x" + end + " 25" + end));
    }

    @Test
    void blankLinesVanish() {
        assertEquals(List.of("1", "2"), split("\n\n\r\n1\n\n\n\r\r2\r\n\r\n"));
    }

    /** A break on the line or a buffer that is printed whole. */
    @Test
    void zerosAroundALineVanishAndThoseWithinItStay() {
        byte[] bytes = "1\n\0\0002\0\0\r\n\0\n3\0004\0\n\0".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(2, splitter.linesIn(bytes, bytes.length));
        assertEquals(List.of("2", "3\0004"), split(new String(bytes, StandardCharsets.ISO_8859_1)));
    }

    @Test
    void whatStandsBeforeTheFirstLineEndIsDropped() {
        assertEquals(List.of(), split("7,567"));
        assertEquals(List.of("23.4,567"), split("\r\n23.4,567\r\n"));
    }

    @Test
    void anUnfinishedLineWaitsForItsEnd() {
        assertEquals(List.of(), split("\n12"));
        assertEquals(List.of(), split("3.4"));
        assertEquals(List.of("123.4"), split("\n"));
    }

    @Test
    void afterARestartTheHalfLineAndTheRestOfTheNextAreGone() {
        split("\n12");
        splitter.restart();
        assertEquals(List.of("5"), split("34\n5\n"));
    }

    /** 256 bytes are the longest line that makes sense of a board. */
    @Test
    void aLineOf256BytesIsKeptAndOneOf257IsDroppedAndCountedOnce() {
        String longest = "1".repeat(256);
        assertEquals(List.of(longest), split("\n" + longest + "\n"));
        assertEquals(List.of(longest, "(too long)", "2"), split(longest + "3\n2\n"));
        assertEquals(List.of(longest, "(too long)", "2", "(too long)", "4"), split("1".repeat(9000) + "\r\n4\r\n"));
    }

    @Test
    void aLongTailBeforeTheFirstLineEndCountsForNothing() {
        assertEquals(List.of("1"), split("9".repeat(600) + "\n1\n"));
    }

    @Test
    void aRestartForgetsAnOverlongLine() {
        split("\n" + "1".repeat(300));
        splitter.restart();
        assertEquals(List.of("2"), split("\n2\n"));
    }

    @Test
    void onlyTheBytesThatCameAreTaken() {
        byte[] buffer = "\n1\n2\n".getBytes(StandardCharsets.ISO_8859_1);
        splitter.accept(buffer, 3, seen);
        assertEquals(List.of("1"), seen.lines);
    }

    /** However a stream is cut into chunks, byte by byte or at random, the lines are the same. */
    @Test
    void chunksDoNotMatter() {
        Random random = new Random(71);
        StringBuilder stream = new StringBuilder();
        String[] ends = {"\n", "\r\n", "\r", "\n\r"};
        for (int i = 0; i < 500; i++) {
            int length = random.nextInt(20) == 0 ? 250 + random.nextInt(12) : random.nextInt(30);
            for (int j = 0; j < length; j++) {
                stream.append((char) (' ' + random.nextInt(200)));
            }
            stream.append(ends[random.nextInt(ends.length)]);
        }
        byte[] bytes = stream.toString().getBytes(StandardCharsets.ISO_8859_1);
        List<String> whole = List.copyOf(split(stream.toString()));
        for (int largest : new int[] {1, 2, 7, 64, 1000}) {
            LineSplitter other = new LineSplitter();
            Seen pieces = new Seen();
            int at = 0;
            while (at < bytes.length) {
                int count = Math.min(bytes.length - at, 1 + random.nextInt(largest));
                other.accept(Arrays.copyOfRange(bytes, at, at + count), count, pieces);
                at += count;
            }
            assertEquals(whole, pieces.lines, "chunks of up to " + largest);
        }
    }
}
