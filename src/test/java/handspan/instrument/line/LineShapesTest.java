package handspan.instrument.line;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The line shapes that boards were seen to print, two hundred lines of each, in the words that a player would get. */
class LineShapesTest {
    private static final int LINES = 200;

    static Stream<Row> rows() {
        return Stream.of(
                        PlainRows.plain(),
                        PlainRows.labelled(),
                        KeyedRows.keyed(),
                        KeyedRows.framed(),
                        OddRows.severalParts(),
                        OddRows.odd(),
                        TroubledRows.nothingToTell(),
                        TroubledRows.besides())
                .flatMap(rows -> rows);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyLineIsReadInFull(Row row) {
        Board board = Board.learnedFrom(row.line());
        assertEquals(row.words(), board.shape.words());
        for (int i = 0; i < LINES; i++) {
            String line = row.line().apply(i);
            @Nullable Double @Nullable [] expected = row.values().apply(i);
            if (expected == null) {
                assertNull(board.read(line, i), line);
            } else {
                assertArrayEquals(expected, board.values(line, i), i + ": " + line);
            }
        }
        assertEquals(row.rejections(), board.rejections.byReason());
    }
}
