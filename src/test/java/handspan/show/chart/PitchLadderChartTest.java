package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Direction;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.awt.font.FontRenderContext;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PitchLadderChartTest {
    /** The table has two decimals and cuts E5 off instead of rounding it. */
    private static final double TABLE_TOLERANCE_HZ = 0.0075;

    private static final double TOLERANCE_MM = 1e-9;

    /** Text is set on whole pixels. */
    private static final double TOLERANCE_PX = 1.5;

    private static JFreeChart map(Tuning tuning) {
        return PitchLadderChart.of(Samples.granary(tuning), tuning, Theme.LIGHT);
    }

    private static double hz(JFreeChart map, double mm) {
        double key = Parts.at(map.getXYPlot().getDataset(), PitchLadderChart.SOUNDS, mm);
        return 440 * Math.pow(2, (key - 69) / 12);
    }

    // Zone 100..500 mm for A3..A5, so 1/24 of 400 mm for a semitone. Frequencies: B. H. Suits, Physics of Music -
    // Notes, Michigan Technological University (A4 = 440 Hz, two decimals)
    @ParameterizedTest
    @CsvSource({"0, 220.00", "3, 261.63", "7, 329.63", "12, 440.00", "15, 523.25", "19, 659.25", "24, 880.00"})
    void theCurveRunsThroughThePublishedFrequencies(int semitonesUp, double publishedHz) {
        double upMm = semitonesUp * 400.0 / 24;
        JFreeChart highFar = map(Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE));
        JFreeChart highNear = map(Samples.twoOctaves("chromatic", Direction.HIGH_NEAR, Snap.FREE));
        assertEquals(publishedHz, hz(highFar, 100 + upMm), TABLE_TOLERANCE_HZ);
        assertEquals(publishedHz, hz(highNear, 500 - upMm), TABLE_TOLERANCE_HZ);
    }

    // A minor pentatonic: A C D E G. Between A3 (100 mm) and C4 (150 mm) the cells meet at 125 mm. Same table.
    @Test
    void withStepsOnlyTheNotesOfTheScaleSound() {
        JFreeChart map = map(Samples.twoOctaves("minor-pentatonic", Direction.HIGH_FAR, Snap.STEPS));
        assertEquals(220.00, hz(map, 124), TABLE_TOLERANCE_HZ);
        assertEquals(261.63, hz(map, 126), TABLE_TOLERANCE_HZ);
        assertEquals(261.63, hz(map, 166), TABLE_TOLERANCE_HZ);
        assertEquals(293.66, hz(map, 167.5), TABLE_TOLERANCE_HZ);
    }

    // the same table an octave up; 50 cents above A4 lies sqrt(440 * 466.16) Hz = 452.89 Hz
    @Test
    void transpositionAndTrimAreInTheCurve() {
        Tuning shifted = new Tuning(
                "up", ReferencePitch.A440, Scales.named("chromatic"), 9, 57, 81, Direction.HIGH_FAR, Snap.FREE, 12, 0);
        Tuning trimmed = new Tuning(
                "trim",
                ReferencePitch.A440,
                Scales.named("chromatic"),
                9,
                57,
                81,
                Direction.HIGH_FAR,
                Snap.FREE,
                0,
                50);
        assertEquals(523.25, hz(map(shifted), 150), TABLE_TOLERANCE_HZ);
        assertEquals(452.89, hz(map(trimmed), 300), TABLE_TOLERANCE_HZ);
        assertTrue(Parts.captions(map(shifted)).contains("A4 to A6"));
        assertTrue(Parts.captions(map(trimmed)).contains("trim 50.0 cents"));
    }

    @Test
    void beyondTheEndsTheEndPitchStays() {
        JFreeChart map = map(Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE));
        XYDataset data = map.getXYPlot().getDataset();
        int beyond = data.indexOf(PitchLadderChart.BEYOND);
        assertTrue(data.getXValue(beyond, 0) < 100);
        assertEquals(57, data.getYValue(beyond, 0));
        assertTrue(data.getXValue(beyond, 4) > 500);
        assertEquals(81, data.getYValue(beyond, 4));
        assertTrue(Double.isNaN(data.getYValue(beyond, 2)));
    }

    // same table as above; places by hand from the zone
    @Test
    void everyNameTellsFrequencyAndPlace() {
        JFreeChart map = map(Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE));
        List<String> hints =
                Parts.names(map, 1200, 700).stream().map(Parts.Name::hint).toList();
        assertEquals(25, hints.size());
        assertTrue(hints.contains("C4, 261.63 Hz, at 150.0 mm"), hints::toString);
        assertTrue(hints.contains("A4, 440.00 Hz, at 300.0 mm"), hints::toString);
        assertTrue(hints.contains("G#5, 830.61 Hz, at 483.3 mm"), hints::toString);
    }

    @ParameterizedTest
    @CsvSource({"1200, 700", "900, 500", "640, 400"})
    void namesNeverTouchOneAnotherAndStayInThePlot(int widthPx, int heightPx) {
        for (Direction direction : Direction.values()) {
            Tuning wide = new Tuning(
                    "w", ReferencePitch.A440, Scales.named("chromatic"), 0, 36, 96, direction, Snap.FREE, -2, 12.5);
            JFreeChart map = map(wide);
            List<Parts.Name> names = Parts.names(map, widthPx, heightPx);
            Rectangle2D plot = Parts.draw(map, widthPx, heightPx).getPlotInfo().getDataArea();
            assertTrue(names.size() >= 8 && names.size() < 61, () -> names.size() + " names");
            for (int i = 0; i < names.size(); i++) {
                Rectangle2D box = names.get(i).box();
                assertTrue(plot.contains(box));
                assertTextFits(names.get(i));
                for (int j = 0; j < i; j++) {
                    assertFalse(box.intersects(names.get(j).box()), names.get(i) + " and " + names.get(j));
                }
            }
        }
    }

    /** The box has to be as large as the text, measured by another way than the chart's. */
    private static void assertTextFits(Parts.Name name) {
        Rectangle2D text = Theme.LIGHT
                .smallFont()
                .createGlyphVector(new FontRenderContext(null, true, true), name.text())
                .getLogicalBounds();
        assertTrue(name.box().getWidth() >= text.getWidth() - TOLERANCE_PX, () -> name + " holds " + text);
        assertTrue(name.box().getHeight() >= text.getHeight() - TOLERANCE_PX, () -> name + " holds " + text);
    }

    @Test
    void whereNamesCrowdTheTonicsStay() {
        Tuning wide = new Tuning(
                "w", ReferencePitch.A440, Scales.named("chromatic"), 0, 36, 96, Direction.HIGH_FAR, Snap.FREE, 0, 0);
        List<String> texts =
                Parts.names(map(wide), 640, 400).stream().map(Parts.Name::text).toList();
        assertTrue(texts.containsAll(List.of("C3", "C4", "C5", "C6")), texts::toString);
        assertFalse(texts.containsAll(List.of("C4", "C#4", "D4")), texts::toString);
    }

    // zone of 400 mm, 24 semitones: the cells of the ends are half a semitone, 8.33 mm; by hand
    @Test
    void everyOtherNoteIsShadedFromBoundaryToBoundary() {
        List<IntervalMarker> bands =
                bands(map(Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE)), Theme.LIGHT);
        assertEquals(13, bands.size());
        assertEquals(100, bands.get(0).getStartValue(), TOLERANCE_MM);
        assertEquals(100 + 400 / 48.0, bands.get(0).getEndValue(), TOLERANCE_MM);
        assertEquals(100 + 3 * 400 / 48.0, bands.get(1).getStartValue(), TOLERANCE_MM);
        assertEquals(500, bands.get(12).getEndValue(), TOLERANCE_MM);
    }

    private static List<IntervalMarker> bands(JFreeChart map, Theme theme) {
        return Parts.markers(map.getXYPlot()).stream()
                .filter(marker -> marker.getPaint().equals(theme.band()))
                .map(IntervalMarker.class::cast)
                .toList();
    }

    // standard uncertainties of the sample zone: 0.4 and 1.1 mm; twice that is about 95 % (JCGM 100:2008, 6.3.3)
    @Test
    void bothHoldsShowTheirUncertainty() {
        JFreeChart map = map(Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE));
        List<String> labels = Parts.labels(map.getXYPlot());
        assertTrue(labels.contains("near hold 100.0 \u00b1 0.8 mm"), labels::toString);
        assertTrue(labels.contains("far hold 500.0 \u00b1 2.2 mm"), labels::toString);
    }

    // 2400 cents over 400 mm. A minor pentatonic: D lies two semitones from C and from E, so its cell is two semitones
    // wide, of 16.67 mm each; all others have a neighbour three semitones away
    @Test
    void theCaptionSaysCentsPerMm() {
        String words = Parts.captions(map(Samples.twoOctaves("minor-pentatonic", Direction.HIGH_FAR, Snap.STEPS)));
        assertTrue(words.contains("6.00 cents per mm"), words);
        assertTrue(words.contains("narrowest note is 33.3 mm wide"), words);
    }

    @Test
    void aSensorWithoutTrueMmGetsPlacesInstead() {
        Tuning tuning = Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE);
        JFreeChart map = PitchLadderChart.of(Samples.shed(tuning), tuning, Theme.DARK);
        assertEquals(
                "place of the pitch hand (0 = near, 1 = far)",
                map.getXYPlot().getDomainAxis().getLabel());
        assertEquals(440.00, hz(map, 0.5), TABLE_TOLERANCE_HZ);
        assertFalse(Parts.captions(map).contains(" mm"), Parts.captions(map));
        // 0.4 mm of a nominal 200 mm, twice
        assertTrue(Parts.labels(map.getXYPlot()).contains("near hold 0.000 \u00b1 0.004 of the zone"));
    }
}
