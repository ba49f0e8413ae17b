package handspan.outside.take;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DamagedTakeTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "15 no tab here   | line 3: '15 no tab here' has no tab after a time",
                "''               | line 3: '' has no tab after a time",
                "x15~9            | line 3: 'x15?9' does not begin with a time in whole microseconds",
                "~9               | line 3: '?9' does not begin with a time in whole microseconds",
                "-15~9            | line 3: '-15?9' does not begin with a time in whole microseconds",
                "1.5~9            | line 3: '1.5?9' does not begin with a time in whole microseconds",
                "9999999999999999999~9 | line 3: '9999999999999999999?9' does not begin with a time in whole microseconds",
                "9~9              | line 3: its time, 9 microseconds, lies before that of line 2, 10",
                "# step x near    | line 3: '# step x near' is no mark (# step TIME NAME, # captured FROM TO NAME)",
                "# step 15        | line 3: '# step 15' is no mark (# step TIME NAME, # captured FROM TO NAME)",
                "# captured 15 14 a | line 3: '# captured 15 14 a' is no mark (# step TIME NAME, # captured FROM TO NAME)",
                "# captured 15 16 | line 3: '# captured 15 16' is no mark (# step TIME NAME, # captured FROM TO NAME)",
                "# the cat came   | line 3: '# the cat came' is no mark (# step TIME NAME, # captured FROM TO NAME)"
            })
    void aDamagedLineIsSkippedCountedAndNamedAndReadingGoesOn(String damaged, String named) throws IOException {
        Path file = write("# handspan-take/1\n10\ta\n" + damaged.replace('~', '\t') + "\n10\tb\n20\tc\n");
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            assertEquals(List.of("a", "b", "c"), Entries.texts(take));
            assertEquals(3, take.lineCount());
            assertEquals(1, take.damagedLines());
            assertEquals(Optional.of("1 damaged line skipped: " + named), take.damageRemark());
        }
    }

    @Test
    void ofManyDamagedLinesTheFirstIsNamed() throws IOException {
        Path file = write("# handspan-take/1\n10\ta\nbad\nworse\n20\tb\n5\tc\n");
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            assertEquals(List.of("a", "b"), Entries.texts(take));
            assertEquals(
                    Optional.of("3 damaged lines skipped, the first of them line 3: 'bad' has no tab after a time"),
                    take.damageRemark());
        }
    }

    @Test
    void aSoundTakeHasNothingToRemark() throws IOException {
        try (TakeFile take = TakeFile.open(write("# handspan-take/1\n10\ta\n"), OptionalDouble.empty())) {
            assertEquals(1, Entries.all(take).size());
            assertEquals(Optional.empty(), take.damageRemark());
        }
    }

    /** Half a number still looks like a number, so wherever a take is cut, the line that was cut is not used. */
    @Test
    void aTakeCutAnywhereKeepsItsWholeLinesAndNothingElse() throws IOException {
        String header = "# handspan-take/1\n# instrument: reed lamp\n";
        String body = "10\t234,567\n# step 11 near\n20\t235,566\n";
        String whole = header + body;
        for (int length = header.length(); length <= whole.length(); length++) {
            String cut = whole.substring(0, length);
            long wholeLines = cut.chars().filter(c -> c == '\n').count() - 2;
            try (TakeFile take = TakeFile.open(write(cut), OptionalDouble.empty())) {
                assertEquals(wholeLines, Entries.all(take).size(), "entries of a take cut after " + length + " bytes");
                assertEquals(cut.endsWith("\n") ? 0 : 1, take.damagedLines());
                assertEquals("reed lamp", take.header().instrument());
            }
        }
    }

    @Test
    void aHeaderCutInTheMiddleIsNotBelieved() throws IOException {
        try (TakeFile take = TakeFile.open(write("# handspan-take/1\n# instrument: reed la"), OptionalDouble.empty())) {
            assertEquals(0, Entries.all(take).size());
            assertEquals("", take.header().instrument());
            assertEquals(1, take.damagedLines());
        }
    }

    @Test
    void headerLinesOfOtherKeysAndABadBaudBecomeNotes() throws IOException {
        Path file =
                write("# handspan-take/1\n# baud: fast\n# Instrument : reed lamp\n#mood: calm\n# just words\n1\ta\n");
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            assertEquals(
                    new TakeHeader("", "reed lamp", "", 0, List.of("baud: fast", "mood: calm", "just words")),
                    take.header());
            assertEquals(1, Entries.all(take).size());
        }
    }

    @Test
    void aTakeSavedAgainByAnEditorReadsTheSame() throws IOException {
        // byte order mark (RFC 3629 section 6: EF BB BF) and CR LF, as some editors put in
        Path file =
                write("\u00EF\u00BB\u00BF# handspan-take/1\r\n# baud: 9600\r\n10\ta\r\n# step 12 near\r\n20\tb\r\n");
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            assertEquals(TakeKind.TAKE, take.kind());
            assertEquals(9600, take.header().baud());
            List<TakeEntry> entries = Entries.all(take);
            assertEquals(new TakeEntry.Line(10, "a".getBytes(ISO_8859_1)), entries.get(0));
            assertEquals(new TakeEntry.Step(12, "near"), entries.get(1));
            assertEquals(new TakeEntry.Line(20, "b".getBytes(ISO_8859_1)), entries.get(2));
            assertEquals(0, take.damagedLines());
        }
    }

    @Test
    void anEndlessLineIsSkippedWithoutFillingTheMemory() throws IOException {
        String endless = "7".repeat(RawLines.LONGEST_BYTES + 1);
        Path file = write("# handspan-take/1\n10\ta\n15\t" + endless + "\n20\tb\n");
        try (TakeFile take = TakeFile.open(file, OptionalDouble.empty())) {
            assertEquals(List.of("a", "b"), Entries.texts(take));
            assertTrue(take.damageRemark().orElseThrow().contains("line 3: longer than"));
        }
    }

    private Path write(String text) throws IOException {
        return Files.write(folder.resolve("damaged.take"), text.getBytes(ISO_8859_1));
    }
}
