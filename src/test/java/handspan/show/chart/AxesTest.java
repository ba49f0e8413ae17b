package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Spelling;
import handspan.music.tuning.Tonic;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AxesTest {
    private static final Spelling IN_C = Spelling.of(Tonic.parse("C"), Scales.named("chromatic"));

    /** The table has two decimals: half a unit of the last is under 0.1 cent at 130 Hz and above. */
    private static final double TOLERANCE_KEYS = 0.001;

    private final Graphics2D graphics = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
    private final Locale before = Locale.getDefault();

    @BeforeEach
    void useACommaLocale() {
        Locale.setDefault(Locale.GERMANY);
    }

    @AfterEach
    void restoreTheLocale() {
        Locale.setDefault(before);
        graphics.dispose();
    }

    private List<String> texts(ValueAxis axis, Rectangle2D area, RectangleEdge edge) {
        new XYPlot().setDomainAxis(axis);
        List<?> ticks = axis.refreshTicks(graphics, new AxisState(), area, edge);
        return ticks.stream().map(tick -> ((NumberTick) tick).getText()).toList();
    }

    @Test
    void numbersHaveADecimalPointWhateverTheLocale() {
        ValueAxis axis = ChartSheet.numbers("time (s)", 0, 2, Theme.LIGHT);
        List<String> texts = texts(axis, new Rectangle2D.Double(0, 0, 400, 300), RectangleEdge.BOTTOM);
        assertTrue(texts.contains("1.2"), texts::toString);
        assertTrue(texts.stream().noneMatch(text -> text.contains(",")), texts::toString);
    }

    @Test
    void largeNumbersAreNotGrouped() {
        ValueAxis axis = ChartSheet.numbers("channel 1 (us)", 0, 4000, Theme.LIGHT);
        List<String> texts = texts(axis, new Rectangle2D.Double(0, 0, 400, 300), RectangleEdge.LEFT);
        assertTrue(texts.contains("2000"), texts::toString);
    }

    @ParameterizedTest
    @ValueSource(ints = {60, 150, 400, 1500})
    void marksStayApartByTheHeightOfTheirText(int heightPx) {
        MarkedAxis axis = ChartSheet.marked("pitch (note name)", Marks.keys(IN_C, 36, 96), 36, 96, Theme.LIGHT);
        Rectangle2D area = new Rectangle2D.Double(0, 0, 800, heightPx);
        double[] ys = axis.refreshTicks(graphics, new AxisState(), area, RectangleEdge.LEFT).stream()
                .mapToDouble(tick -> axis.valueToJava2D(tick.getValue(), area, RectangleEdge.LEFT))
                .sorted()
                .toArray();
        double textPx = Theme.LIGHT
                .smallFont()
                .getLineMetrics("C#4", graphics.getFontRenderContext())
                .getHeight();
        assertTrue(ys.length >= 2);
        for (int i = 1; i < ys.length; i++) {
            assertTrue(ys[i] - ys[i - 1] >= textPx, ys[i] + " - " + ys[i - 1]);
        }
    }

    @Test
    void onATallAxisEveryKeyHasItsNameAndOnALowOneTheCsStay() {
        MarkedAxis axis = ChartSheet.marked("pitch (note name)", Marks.keys(IN_C, 48, 72), 48, 72, Theme.LIGHT);
        assertEquals(
                25,
                texts(axis, new Rectangle2D.Double(0, 0, 800, 700), RectangleEdge.LEFT)
                        .size());
        List<String> few = texts(axis, new Rectangle2D.Double(0, 0, 800, 100), RectangleEdge.LEFT);
        assertTrue(few.containsAll(List.of("C3", "C4", "C5")), few::toString);
        assertTrue(few.size() < 10, few::toString);
    }

    // B. H. Suits, Physics of Music - Notes, Michigan Technological University: G3 196.00, B3 246.94, C4 261.63 Hz;
    // so 200 Hz lies 0.35 keys above G3 (12 lg(200/196)/lg 2 = 0.3498), 250 Hz 0.2132 above B3
    @Test
    void frequenciesStandBetweenTheRightKeys() {
        assertEquals(55.3498, hzMark("200"), TOLERANCE_KEYS);
        assertEquals(59.2132, hzMark("250"), TOLERANCE_KEYS);
    }

    private static double hzMark(String text) {
        return Marks.hz(ReferencePitch.A440, 50, 70).stream()
                .filter(mark -> mark.text().equals(text))
                .findFirst()
                .orElseThrow()
                .value();
    }
}
