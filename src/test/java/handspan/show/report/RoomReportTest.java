package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Direction;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.LatencyBudget;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoomReportTest {
    private static final double TOLERANCE_HZ = 1e-9;
    private static final double TOLERANCE_MM = 1e-9;

    private static RoomReport hall() throws ProfileException {
        return ReportRooms.report(ReportRooms.hall());
    }

    /** Everything that is said, in its order. */
    static List<String> said(RoomReport report) {
        List<String> words = new ArrayList<>();
        words.add(report.title());
        words.add(report.foot());
        for (ReportPart part : report.parts()) {
            if (part instanceof ReportPart.Heading heading) {
                words.add(heading.words());
            } else if (part instanceof ReportPart.Words paragraph) {
                words.add(paragraph.words());
            } else if (part instanceof ReportPart.Points points) {
                words.addAll(points.sentences());
            } else if (part instanceof ReportPart.Facts facts) {
                facts.facts().forEach(fact -> words.addAll(List.of(fact.name(), fact.words())));
            } else if (part instanceof ReportPart.Grid grid) {
                words.add(grid.caption());
                words.addAll(grid.columns());
                grid.rows().forEach(words::addAll);
            }
        }
        return words;
    }

    private static ReportPart.Grid grid(RoomReport report, String caption) {
        return report.parts().stream()
                .filter(part ->
                        part instanceof ReportPart.Grid grid && grid.caption().startsWith(caption))
                .map(ReportPart.Grid.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static String fact(RoomReport report, String name) {
        return report.parts().stream()
                .filter(ReportPart.Facts.class::isInstance)
                .flatMap(part -> ((ReportPart.Facts) part).facts().stream())
                .filter(fact -> fact.name().equals(name))
                .map(ReportPart.Fact::words)
                .findFirst()
                .orElseThrow();
    }

    /**
     * ISO 16:1975: A4 is 440 Hz. In twelve equal steps key n has 440 * 2^((n - 69) / 12) Hz. The zone of saltmill-hall
     * is 104 to 498 mm for A3 (57) to A5 (81), even: 394 mm / 24 a semitone.
     */
    @Test
    void notesHaveTheFrequenciesOfIso16AndLieEvenlyInTheZone() throws ProfileException {
        // A minor pentatonic over two octaves
        int[] keys = {57, 60, 62, 64, 67, 69, 72, 74, 76, 79, 81};
        List<NoteFigures> notes = hall().notes();
        assertEquals(keys.length, notes.size());
        for (int i = 0; i < keys.length; i++) {
            assertEquals(440 * Math.pow(2, (keys[i] - 69) / 12.0), notes.get(i).hz(), TOLERANCE_HZ);
            assertEquals(104 + 394.0 / 24 * (keys[i] - 57), notes.get(i).atMm(), TOLERANCE_MM);
        }
    }

    /**
     * Cells meet half-way: D4 has C4 two semitones below and E4 two above, so two semitones of 394 / 24 mm; A3 has half
     * of the three up to C4, and goes on beyond the near end.
     */
    @Test
    void aWidthIsHalfTheWayToBothNeighboursAndEndsWithTheZone() throws ProfileException {
        List<NoteFigures> notes = hall().notes();
        assertEquals(2 * 394.0 / 24, notes.get(2).widthMm(), TOLERANCE_MM);
        assertFalse(notes.get(2).open());
        assertEquals(1.5 * 394.0 / 24, notes.get(0).widthMm(), TOLERANCE_MM);
        assertTrue(notes.get(0).open());
        assertEquals(394, notes.stream().mapToDouble(NoteFigures::widthMm).sum(), 1e-6);
    }

    @Test
    void transpositionAndTrimAreInTheFrequencies() {
        Tuning tuning = Samples.tuning("major", "C", Samples.TWELVE, 60, 72, Direction.HIGH_NEAR, 0)
                .shifted(-12, 50);
        NoteFigures low =
                ReportRooms.report(Samples.room(100, 500, tuning)).notes().get(0);
        // C3 of A4 = 442 Hz, half a semitone up; high at the near end, so C lies far
        assertEquals(442 * Math.pow(2, (60 - 12 + 0.5 - 69) / 12), low.hz(), TOLERANCE_HZ);
        assertEquals(500, low.atMm(), TOLERANCE_MM);
    }

    /** 20.39 = 1.96 * 10.40: all degrees of freedom are infinite, so Student's t is the normal distribution's 1.96. */
    @Test
    void theBudgetOfTheWorstNoteSumsInSquares() throws ProfileException {
        ReportPart.Grid budget = grid(hall(), "The worst note");
        double squares = 0;
        for (List<String> row : budget.rows().subList(0, budget.rows().size() - budget.sums())) {
            squares += Math.pow(Double.parseDouble(row.get(1)), 2);
        }
        double together =
                Double.parseDouble(budget.rows().get(budget.rows().size() - 2).get(1));
        double interval =
                Double.parseDouble(budget.rows().get(budget.rows().size() - 1).get(1));
        assertEquals(Math.sqrt(squares), together, 0.02);
        assertEquals(1.96 * together, interval, 0.02);
        assertTrue(said(hall()).stream().anyMatch(words -> words.contains("JCGM 100:2008")));
        assertTrue(said(hall()).stream().anyMatch(words -> words.contains("largest term is the bend of the sensor")));
    }

    @Test
    void theTermsOfTheLagSumUpToItsTotal() throws ProfileException {
        RoomProfile profile = ReportRooms.hall();
        FeelBudget feel = FeelBudget.of(profile.room(), profile.tunings().get(0));
        LatencyBudget latency = LatencyBudget.of(profile.room(), feel);
        double sum = latency.terms().stream()
                .mapToDouble(LatencyBudget.Term::ms)
                .filter(ms -> !Double.isNaN(ms))
                .sum();
        assertEquals(latency.totalMs(), sum, 1e-9);
        // nobody told the program of a timer: it is named, not left out
        assertTrue(grid(hall(), "Lag").rows().contains(List.of("timer of a USB serial chip", "not known")));
    }

    @Test
    void theHeadTellsWhatWasMeasuredWithWhatAndWhen() throws ProfileException {
        RoomReport report = hall();
        assertEquals("Willowreach, revision 1", fact(report, "Instrument"));
        assertEquals(
                "25 November 2026, 09:33 UTC; this report was written on 26 November 2026", fact(report, "Measured"));
        assertTrue(fact(report, "Air").startsWith("20.0 \u00b0C, relative humidity 50 %"));
        assertTrue(fact(report, "Measured by").startsWith("2 holds of the pitch hand, 3 holds of the level hand"));
        assertTrue(fact(report, "Measured by").contains("6.0 mm (assumed)"));
    }

    @Test
    void fiveVerdictsAreSaidInALineEach() throws ProfileException {
        RoomReport report = hall();
        for (String name : List.of("Pitch sensor", "Level sensor", "This room", "This player", "Total lag")) {
            assertTrue(fact(report, name).length() < 110, fact(report, name));
        }
        assertTrue(fact(report, "Pitch sensor").startsWith("less steady than wanted"));
        assertTrue(fact(report, "This room").contains("within 20 cents (95 %)"));
        assertTrue(fact(report, "This player").startsWith("this tuning fits"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-03-14T19:30:00Z      | 14 March 2026, 19:30 UTC",
                "2026-03-14T19:30:00+01:00 | 14 March 2026, 19:30 UTC+01:00",
                "2026-12-01                | 1 December 2026",
                "some time in May          | some time in May",
                "2026-13-45T00:00:00Z      | 2026-13-45T00:00:00Z",
                "May                       | May"
            })
    void daysAreWrittenWithTheirMonthAsAWord(String written, String said) {
        assertEquals(said, ReportDate.withTime(written));
    }

    @Test
    void aRoomWithoutHoldsSaysSoInsteadOfEmptyCharts() {
        Tuning tuning = Samples.tuning("major", "C", Samples.TWELVE, 60, 72, Direction.HIGH_FAR, 0);
        RoomReport report = ReportRooms.report(Samples.room(100, 500, tuning));
        assertTrue(said(report).stream().anyMatch(words -> words.startsWith("The profile keeps no holds")));
        List<String> charts = report.parts().stream()
                .filter(ReportPart.Chart.class::isInstance)
                .map(part -> ((ReportPart.Chart) part).title())
                .toList();
        assertEquals(List.of("Pitch ladder", "Level", "Lag against wobble"), charts);
    }

    /** NIOSH 98-126: 85 dBA for 8 hours, half the time for each 3 dB; WHO-ITU H.870: 80 dBA for 40 hours a week. */
    @Test
    void allCautionsAreThere() throws ProfileException {
        String all = String.join("\n", said(hall()));
        for (String words : List.of(
                "monitors low",
                "ceiling is there to stay",
                "NIOSH 98-126",
                "85 dBA over 8 hours",
                "WHO-ITU H.870",
                "80 dBA over 40 hours a week",
                "venue's and local rules come first",
                "laser or infrared class",
                "No lenses into the emitter",
                "isolated low-voltage supply",
                "Nothing here is rated for mains",
                "no safety device")) {
            assertTrue(all.contains(words), words);
        }
        // 85 dBA, 8 h: each 3 dB halves it
        assertEquals(4, 8 / Math.pow(2, (88 - 85) / 3.0));
        assertEquals(1, 8 / Math.pow(2, (94 - 85) / 3.0));
        assertEquals(15, 60 * 8 / Math.pow(2, (100 - 85) / 3.0));
        assertTrue(all.contains("88 dBA 4 hours, 94 dBA 1 hour, 100 dBA 15 minutes"));
    }

    @Test
    void theOtherTuningsOfARoomAreNamed() throws ProfileException {
        assertTrue(said(hall()).stream().anyMatch(words -> words.startsWith("'hymn': C4 to C5")));
    }

    @Test
    void nothingIsSaidInNumbersThatAreNone() {
        for (RoomReport report : ReportRooms.allReports().values()) {
            for (String words : said(report)) {
                assertFalse(words.contains("NaN") || words.contains("Infinity") || words.contains("null"), words);
            }
        }
    }
}
