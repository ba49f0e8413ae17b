package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.music.passage.Comparison;
import handspan.music.passage.Moment;
import handspan.music.passage.PassageFigures;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of passages that were made by hand. */
class PassageReportTest {
    private static final int COLUMNS = 400;
    private static final Tuning TUNING = Tuning.usual();

    /** Notes of a second and a half, a rest of half a second after each. */
    private static PassageFigures passage(double vibratoCents, double... keys) {
        List<Moment> moments = new ArrayList<>();
        double atS = 1;
        for (double key : keys) {
            for (int i = 0; i < 300; i++) {
                double here = key + vibratoCents / 100 * Math.sin(2 * Math.PI * 6 * i * 0.005);
                moments.add(new Moment(Nanos.ofSeconds(atS + i * 0.005), here, here, 0.25, true, false));
            }
            moments.add(new Moment(Nanos.ofSeconds(atS + 1.5), key, key, 0, false, false));
            atS += 2;
        }
        return PassageFigures.of(moments, TUNING, LevelCurve.USUAL);
    }

    private static String text(PassageFigures figures, Tuning tuning) {
        return String.join("\n", ReportText.lines(new PassageReport("x.take", figures, tuning, 0.02).parts(), COLUMNS));
    }

    @Test
    void eachFigureIsSaidWithItsUnit() {
        String text = text(passage(0, 69.08, 72.08, 76.08), TUNING);
        assertTrue(text.contains("mean +8.0 cents, rms 8.0; within 10 cents 100 % of the time"), text);
        assertTrue(text.contains("no vibrato found in 3 notes of a second and more"), text);
        assertTrue(text.contains("in 2 rests"), text);
        assertTrue(text.contains("2.0 % of the lines under the hand had no pitch reading"), text);
        assertTrue(text.contains("the same: nothing is snapped"), text);
        assertTrue(text.contains("A4    440.0"), text);
    }

    @Test
    void aVibratoIsSaidWithItsRateAndWidth() {
        String text = text(passage(25, 69, 72), TUNING);
        assertTrue(text.contains("6.0 Hz, 25 cents either way, in 2 of 2 notes of a second and more"), text);
        assertTrue(text.contains("can't be told: no note was held for 0.7 s without vibrato"), text);
    }

    @Test
    void theHandAloneIsSaidWhereItWasSnapped() {
        String text = text(passage(0, 69), TUNING.withSnap(Snap.STEPS));
        assertTrue(text.contains("(before snapping, steps)"), text);
    }

    @Test
    void ofNothingNothingIsMadeUp() {
        String text = text(passage(0), TUNING);
        assertTrue(text.contains("nothing to measure"), text);
        assertFalse(text.contains("NaN"), text);
    }

    @Test
    void twoPassagesAreSaidWithTheirDifference() {
        PassageFigures low = passage(0, 69.01, 72.02, 76.00, 77.02, 69.02);
        PassageFigures high = passage(0, 69.21, 72.22, 76.20, 77.22, 69.23);
        ComparisonReport report = new ComparisonReport(
                new PassageReport("low.take", low, TUNING, Double.NaN),
                new PassageReport("high.take", high, TUNING, Double.NaN),
                Comparison.ofTwo(low, high),
                List.of("the same instrument"));
        assertTrue(report.verdict().startsWith("B is sharper than A by 20."), report.verdict());
        String text = String.join("\n", ReportText.lines(report.parts(), COLUMNS));
        assertTrue(text.contains("beyond chance"), text);
        assertFalse(text.contains("NaN"), text);
        assertEquals(
                List.of("A", "B"), report.layers().stream().map(it -> it.name()).toList());
    }

    @Test
    void tooFewNotesAreSaidToBeTooFew() {
        PassageFigures one = passage(0, 69);
        ComparisonReport report = new ComparisonReport(
                new PassageReport("a", one, TUNING, 0),
                new PassageReport("b", one, TUNING, 0),
                Comparison.ofTwo(one, one),
                List.of());
        assertTrue(report.verdict().startsWith("too few notes"), report.verdict());
    }
}
