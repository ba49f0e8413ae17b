package handspan.outside.take;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WideTableTest {
    @TempDir
    Path folder;

    /**
     * The dimensions of a real recording of a light cell (High-Voltage-PV-Powered-Gesture-Detection-System, MIT): 28
     * rows of 3000 voltages at 500 a second under a number and a time, CR LF at the ends; the values here are made up.
     */
    @Test
    void rowsAreUnrolledIntoOneLinePerValueInOrder() throws IOException {
        int rows = 28;
        int values = 3000;
        StringBuilder text = new StringBuilder("SessionID,Timestamp,")
                .append(heading("V", 0, values, ","))
                .append("\r\n");
        for (int row = 0; row < rows; row++) {
            text.append(row + 1).append(',').append(15206 + 9000 * row);
            for (int i = 0; i < values; i++) {
                text.append(",").append(values * row + i);
            }
            text.append("\r\n");
        }
        try (TakeFile table = TakeFile.open(write(text.toString()), OptionalDouble.of(500))) {
            assertEquals(TakeKind.WIDE_TABLE, table.kind());
            List<TakeEntry> entries = Entries.all(table);
            assertEquals(rows * values, entries.size());
            for (int i = 0; i < entries.size(); i++) {
                // 500 a second: 2 ms each
                assertEquals(line(2000L * i, Integer.toString(i)), entries.get(i));
            }
            assertEquals(Optional.of("28 rows of 3,000 values of V, unrolled"), table.tableRemark());
            assertEquals(84_000, table.lineCount());
            assertEquals(0, table.damagedLines());
        }
    }

    @Test
    void theRateIsRequired() throws IOException {
        Path file = write(heading("V", 0, 50, ",") + "\n" + row("1", 50, ",") + "\n");
        assertEquals(
                file + " is a table of 50 values of V a row, without a time for each: give --rate PER_SECOND",
                assertThrows(TakeException.class, () -> TakeFile.open(file, OptionalDouble.empty()))
                        .getMessage());
    }

    @Test
    void fewerOrUnevenlyNumberedColumnsAreAPlainLog() {
        assertEquals(new WideColumns(',', 0, 50, "V"), WideColumns.of(heading("V", 0, 50, ",")));
        assertEquals(null, WideColumns.of(heading("V", 0, 49, ",")));
        assertEquals(new WideColumns(',', 1, 50, "V"), WideColumns.of("time," + heading("V", 1, 50, ",")));
        // the run ends at the last column, so a column after it, a gap or a change of name leaves no run of fifty
        assertEquals(null, WideColumns.of(heading("V", 0, 50, ",") + ",time"));
        assertEquals(null, WideColumns.of(heading("V", 0, 30, ",") + "," + heading("V", 31, 30, ",")));
        assertEquals(null, WideColumns.of(heading("V", 0, 30, ",") + "," + heading("W", 30, 30, ",")));
        // V9 belongs to another run than V11 and on
        assertEquals(new WideColumns(',', 1, 50, "V"), WideColumns.of("V9," + heading("V", 11, 50, ",")));
        assertEquals(null, WideColumns.of(heading("", 0, 60, ",")));
        assertEquals(null, WideColumns.of(""));
    }

    @Test
    void otherSeparatorsQuotesAndAnEmptyLastCellAreUnderstood() throws IOException {
        assertEquals(new WideColumns(';', 1, 50, "V_"), WideColumns.of("id;" + heading("V_", 0, 50, ";") + ";"));
        String quoted = IntStream.range(0, 50).mapToObj(i -> "\"ch " + i + "\"").collect(Collectors.joining("\t"));
        assertEquals(new WideColumns('\t', 0, 50, "ch"), WideColumns.of(quoted));

        Path file = write("who;" + heading("V", 0, 50, ";") + ";\npalm; \"1,5\" ;" + row("2", 49, ";") + ";\n");
        try (TakeFile table = TakeFile.open(file, OptionalDouble.of(1))) {
            List<String> texts = Entries.texts(table);
            assertEquals(50, texts.size());
            assertEquals("1,5", texts.get(0));
            assertEquals("2", texts.get(49));
            assertEquals(Optional.of("1 row of 50 values of V, unrolled"), table.tableRemark());
        }
    }

    @Test
    void aRowOfAnotherLengthIsSkippedCountedAndNamedAndAnEmptyCellKeepsItsMoment() throws IOException {
        Path file = write("Fs,500\nid," + heading("V", 0, 50, ",")
                + "\n1," + row("5", 50, ",")
                + "\n2," + row("6", 49, ",")
                + "\n\n3," + row("7", 51, ",")
                + "\n4,," + row("8", 49, ","));
        try (TakeFile table = TakeFile.open(file, OptionalDouble.of(500))) {
            assertEquals(OptionalDouble.of(500), table.statedRatePerS());
            List<TakeEntry> entries = Entries.all(table);
            assertEquals(100, entries.size());
            assertEquals(line(98_000, "5"), entries.get(49));
            assertEquals(line(100_000, ""), entries.get(50));
            assertEquals(line(102_000, "8"), entries.get(51));
            assertEquals(2, table.damagedLines());
            assertEquals(
                    Optional.of("2 damaged lines skipped, the first of them line 4: 50 cells where the heading has 51"),
                    table.damageRemark());
        }
    }

    private static String heading(String name, int first, int count, String separator) {
        return IntStream.range(first, first + count).mapToObj(i -> name + i).collect(Collectors.joining(separator));
    }

    private static String row(String value, int count, String separator) {
        return String.join(separator, Collections.nCopies(count, value));
    }

    private static TakeEntry.Line line(long micros, String text) {
        return new TakeEntry.Line(micros, text.getBytes(ISO_8859_1));
    }

    private Path write(String text) throws IOException {
        return Files.write(folder.resolve("table.csv"), text.getBytes(ISO_8859_1));
    }
}
