package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.line.LineShape.Matching;
import handspan.instrument.line.LineShape.Slot;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineShapeTest {
    private static final LineShape LABELLED = new LineShape(
            ',',
            false,
            Matching.BY_LABEL,
            3,
            List.of(new Slot("Left Side", "cm", 0), new Slot("2", "", 1), new Slot("", "", 2)));

    /** Case and blanks of a label do not matter; a label wins over a position. */
    @ParameterizedTest
    @CsvSource({
        "Left Side, 0",
        "leftside, 0",
        "LEFT SIDE, 0",
        "1, 0",
        "2, 1",
        "' 3 ', 2",
        "0, -1",
        "4, -1",
        "-1, -1",
        "left, -1",
        "'', -1",
        "1.0, -1"
    })
    void aChannelIsFoundByLabelOrPosition(String channel, int index) {
        assertEquals(index, LABELLED.indexOf(channel));
    }

    @Test
    void aChannelIsNamedByItsLabelElseByItsPosition() {
        assertEquals("Left Side", LABELLED.nameOf(0));
        assertEquals("3", LABELLED.nameOf(2));
        assertEquals("3 numbers with labels parted by commas: Left Side in cm, 2, 3", LABELLED.words());
    }

    @Test
    void plainNumbersHavePositionsFromOne() {
        LineShape shape = LineShape.numbers(';', 3);
        assertEquals("3 numbers a line parted by semicolons: 1, 2, 3", shape.words());
        assertEquals(Matching.BY_FIELD, shape.matching());
        assertEquals(Matching.BY_ORDER, LineShape.numbers(' ', 2).matching());
        assertEquals(
                "2 numbers a line parted by bars: 1, 2",
                LineShape.numbers('|', 2).words());
        assertEquals(
                "2 numbers a line parted by tabs: 1, 2",
                LineShape.numbers('\t', 2).words());
    }

    @Test
    void aShapeThatNoLineCanHaveIsRefused() {
        List<Slot> one = List.of(new Slot("", "", 0));
        List<Slot> most =
                IntStream.range(0, 64).mapToObj(i -> new Slot("", "", i)).toList();
        List<Slot> tooMany =
                IntStream.range(0, 65).mapToObj(i -> new Slot("", "", i)).toList();
        assertEquals(
                64,
                new LineShape(',', false, Matching.BY_FIELD, 64, most).slots().size());
        assertThrows(IllegalArgumentException.class, () -> new LineShape(',', false, Matching.BY_FIELD, 65, tooMany));
        assertThrows(IllegalArgumentException.class, () -> new LineShape(',', false, Matching.BY_FIELD, 0, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new LineShape('/', false, Matching.BY_FIELD, 1, one));
        List<Slot> samePlace = List.of(new Slot("", "", 1), new Slot("", "", 1));
        List<Slot> sameLabel = List.of(new Slot("Left", "", 0), new Slot("le ft", "", 1));
        assertEquals(
                2,
                new LineShape(',', false, Matching.BY_FIELD, 2, sameLabel)
                        .slots()
                        .size());
        for (Matching matching : List.of(Matching.BY_FIELD, Matching.BY_ORDER)) {
            assertThrows(IllegalArgumentException.class, () -> new LineShape(',', false, matching, 3, samePlace));
            assertThrows(IllegalArgumentException.class, () -> new LineShape(',', false, matching, 1, sameLabel));
        }
        assertThrows(IllegalArgumentException.class, () -> new LineShape(',', false, Matching.BY_LABEL, 2, sameLabel));
        assertThrows(IllegalArgumentException.class, () -> new Slot("", "", -1));
        assertThrows(IllegalArgumentException.class, () -> new Slot("", "", 257));
        assertEquals(256, new Slot("", "", 256).position());
    }

    @Test
    void aReaderRemembersItsShape() {
        LineShape shape = LineShape.numbers(',', 2);
        LineReader reader = new LineReader(shape, new Rejections());
        assertEquals(shape, reader.shape());
        Reading reading = Objects.requireNonNull(reader.read(Board.bytes("5,,"), 2, 99));
        assertEquals(99, reading.timeNanos());
        assertTrue(reading.has(0));
        assertFalse(reading.has(1), "absent");
        assertFalse(reading.has(2), "beyond the last");
        assertFalse(reading.has(-1), "before the first");
    }

    @Test
    void theLearnerNeedsTwentyLinesAndOneWithANumber() {
        ShapeLearner learner = new ShapeLearner();
        for (int i = 1; i < 20; i++) {
            assertFalse(Board.offer(learner, "sensor test"));
        }
        assertTrue(Board.offer(learner, "ready"));
        assertTrue(Board.offer(learner, "23"), "one more is not taken");
        assertEquals(20, learner.lines().size());
        assertTrue(!Board.isLearned(learner.learn()));
    }

    @Test
    void whatMostLinesHaveInCommonIsTheShape() {
        ShapeLearner learner = new ShapeLearner();
        String[] first = {"card ready 2", "version 1.7, build 33", "23,567", "24,570", "25,571,9", "26,580"};
        for (String line : first) {
            Board.offer(learner, line);
        }
        assertEquals(
                "2 numbers a line parted by commas: 1, 2",
                Board.shape(learner.learn()).words());
    }

    @Test
    void aLabelSeenOnceIsAMessageAndNoChannel() {
        ShapeLearner learner = new ShapeLearner();
        for (String line : new String[] {"boot: 3", "d: 12", "d: 13 l: 500", "d: 14 l: 510", "d: 15 l: 512"}) {
            Board.offer(learner, line);
        }
        assertEquals(
                "2 numbers with labels parted by blanks: d, l",
                Board.shape(learner.learn()).words());
    }
}
