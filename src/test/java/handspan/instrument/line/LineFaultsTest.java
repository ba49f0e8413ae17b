package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines that say nothing, in part or in full. */
class LineFaultsTest {
    private static final @Nullable Double NOTHING = null;

    private static Board threeColumns() {
        return Board.learnedFrom("23.4,567,12", "24.1,570,13");
    }

    private static Board distanceInCm() {
        return Board.learnedFrom("Distance: 23 cm", "Distance: 41 cm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"nan", "NaN", "NAN", "inf", "-inf", "INF", "Infinity", "ovf", "null", "none", "1e999", ""})
    void aColumnWithoutANumberIsAbsentAndTheOthersStay(String hole) {
        Board board = threeColumns();
        assertArrayEquals(new @Nullable Double[] {NOTHING, 567.0, 12.0}, board.values(hole + ",567,12"));
        assertArrayEquals(new @Nullable Double[] {23.4, NOTHING, 12.0}, board.values("23.4," + hole + ",12"));
        assertArrayEquals(new @Nullable Double[] {23.4, NOTHING, 12.0}, board.values("23.4, " + hole + " ,12"));
        assertArrayEquals(new @Nullable Double[] {23.4, 567.0, NOTHING}, board.values("23.4,567," + hole));
        assertEquals(Map.of(), board.rejections.byReason());
    }

    @Test
    void aLabelledHoleIsAbsent() {
        Board board = Board.learnedFrom("dist=23.4 light=567", "dist=23.9 light=560");
        assertArrayEquals(new @Nullable Double[] {NOTHING, 567.0}, board.values("dist=nan light=567"));
        assertArrayEquals(new @Nullable Double[] {23.4, NOTHING}, board.values("dist=23.4 light=ovf"));
        assertArrayEquals(new @Nullable Double[] {23.4, NOTHING}, board.values("dist=23.4"));
    }

    /** A line that says that there is nothing to tell is a reading without a number; a remark is none. */
    @ParameterizedTest
    @ValueSource(strings = {"Out of range", " out of range ", "Out of range...", "OUT", "---", "No echo!"})
    void aLineThatSaysNothingIsAReadingWithoutANumber(String line) {
        assertArrayEquals(new @Nullable Double[] {NOTHING}, distanceInCm().values(line));
        assertArrayEquals(
                new @Nullable Double[] {NOTHING, NOTHING, NOTHING},
                threeColumns().values(line));
        assertArrayEquals(
                new @Nullable Double[] {NOTHING, NOTHING, NOTHING},
                threeColumns().values(",,"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tick...", "[STATE] near", "ready", "mode: auto", "r: Dr to hand"})
    void aRemarkIsCountedAsSuch(String line) {
        assertEquals("NO_NUMBER", distanceInCm().rejection(line));
        assertEquals("NO_NUMBER", threeColumns().rejection(line));
    }

    @ParameterizedTest
    @ValueSource(strings = {"BUSY  lo:37  hi: 880  thr: 248     871", "Range: 23 cm", "23", "Probe 2: 12 cm", "v1.2"})
    void aLineWithOtherLabelsIsCountedAsSuch(String line) {
        assertEquals("OTHER_LABEL", distanceInCm().rejection(line));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "7,56            | OTHER_COUNT",
                "23.4,567        | OTHER_COUNT",
                "23.4,567,12,3   | OTHER_COUNT",
                "3.4,567,12      | READ",
                "23.4,d567,12    | OTHER_LABEL",
                "ready 3,567,12  | OTHER_LABEL"
            })
    void columnsMustHaveTheirNumberAndNoLabel(String line, String outcome) {
        assertEquals(outcome, threeColumns().rejection(line));
    }

    /** Two lines in one, and a line cut short and glued to the next. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Level now:Level now: 0.00 | OTHER_LABEL",
                "Level nLevel now: 12.5    | OTHER_LABEL",
                "r: Dr to hand             | NO_NUMBER",
                "evel now: 12.5            | OTHER_LABEL",
                "Level now: 12.5           | READ",
                "LEVELNOW : 12.5           | READ"
            })
    void cutLinesFailTheirLabel(String line, String outcome) {
        assertEquals(
                outcome,
                Board.learnedFrom("Level now: 12.50", "Level now: 13.00").rejection(line));
    }

    /** A cut number that still looks right: only what stands before the first line end can be dropped. */
    @Test
    void aNumberCutByTheStartOfListeningNeverArrives() {
        Board board = threeColumns();
        LineSplitter splitter = new LineSplitter();
        StringBuilder seen = new StringBuilder();
        byte[] bytes = Board.bytes("3.47,567,12\r\n123.47,570,13\r\n12");
        splitter.accept(bytes, bytes.length, new LineSplitter.Lines() {
            @Override
            public void line(byte[] line, int length) {
                String text = new String(line, 0, length, java.nio.charset.StandardCharsets.ISO_8859_1);
                seen.append(board.values(text)[0]).append(' ');
            }

            @Override
            public void tooLong() {
                seen.append("too long");
            }
        });
        assertEquals("123.47 ", seen.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"23\u0017", "\u0000\u0001\u0002", "Distance: 2\u00073 cm"})
    void controlCharactersAreNoText(String line) {
        assertEquals("NOT_TEXT", distanceInCm().rejection(line));
        assertEquals("NOT_TEXT", Board.learnedFrom("23", "24").rejection(line));
    }

    @Test
    void aLineLeavesNothingBehindForTheNext() {
        Board board = threeColumns();
        assertEquals("NOT_TEXT", board.rejection("Probe:\u0007"));
        assertEquals("READ", board.rejection("23.4,567,12"));
        assertEquals("NO_NUMBER", board.rejection("Probe"));
        assertEquals("READ", board.rejection("23.4,567,12"));
    }

    @Test
    void aSeparatorAtTheEndDoesNotMatter() {
        assertArrayEquals(
                new @Nullable Double[] {23.4, 567.0, 12.0}, threeColumns().values("23.4,567,12, "));
        assertEquals("OTHER_COUNT", threeColumns().rejection("23.4,567,12,,"));
    }

    /** The third field was never a number while the shape was learned. */
    @Test
    void aNumberInAFieldOfWordsIsPassedOver() {
        Board board = Board.learnedFrom("23,567,ok", "24,570,ok");
        assertArrayEquals(new @Nullable Double[] {23.0, 567.0}, board.values("23,567,9"));
    }

    @Test
    void moreNumbersThanALineCanHoldAreRejected() {
        assertEquals("OTHER_COUNT", threeColumns().rejection("1 ".repeat(65)));
        assertEquals("OTHER_COUNT", threeColumns().rejection("1 ".repeat(64)));
    }

    @Test
    void rejectionsAreCountedByReasonAndHaveWords() {
        Board board = threeColumns();
        for (int i = 0; i < 5; i++) {
            board.rejection("hello");
            board.rejection("1,2");
        }
        board.rejection("\u0007");
        assertEquals(
                Map.of(Rejection.NO_NUMBER, 5L, Rejection.OTHER_COUNT, 5L, Rejection.NOT_TEXT, 1L),
                board.rejections.byReason());
        assertEquals("no number", Rejection.NO_NUMBER.words());
        assertEquals(
                Rejection.values().length,
                java.util.Arrays.stream(Rejection.values())
                        .map(Rejection::words)
                        .distinct()
                        .count());
    }
}
