package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The line shapes that boards were seen to print, two hundred lines of each, in the words that a player would get. */
class LineShapesTest {
    private static final int LINES = 200;

    static Stream<Row> rows() {
        return Stream.of(PlainRows.plain(), PlainRows.labelled(), KeyedRows.keyed(), KeyedRows.framed())
                .flatMap(rows -> rows);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyLineIsReadInFull(Row row) {
        Board board = Board.learnedFrom(row.line());
        assertEquals(row.words(), board.shape.words());
        for (int i = 0; i < LINES; i++) {
            String line = row.line().apply(i);
            assertArrayEquals(row.values().apply(i), board.values(line), line);
        }
        assertEquals(Map.of(), board.rejections.byReason());
    }
}
