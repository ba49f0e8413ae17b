package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Direction;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ChanceBandsTest {
    private static final int WIDTH_PX = 1200;
    private static final int HEIGHT_PX = 700;

    private static final Tuning CHROMATIC = Samples.twoOctaves("chromatic", Direction.HIGH_FAR, Snap.FREE);

    private static JFreeChart ladder(double step01, Theme theme) {
        return PitchLadderChart.of(Samples.granary(CHROMATIC), CHROMATIC, Samples.chances(CHROMATIC, step01), theme);
    }

    @ParameterizedTest
    @CsvSource({
        "0, SELDOM",
        "0.0499, SELDOM",
        "0.05, SOMETIMES",
        "0.2, OFTEN",
        "0.499, OFTEN",
        "0.5, MOSTLY",
        "1, MOSTLY"
    })
    void chancesFallIntoClasses(double miss01, MissClass expected) {
        assertEquals(expected, MissClass.of(miss01));
    }

    @Test
    void theLegendHasTheClassesThatOccurAndNoOther() {
        assertEquals(List.of("missed by under 5 %", "5 to 20 %", "20 to 50 %", "over 50 %"), chanceLabels(0.03));
        assertEquals(List.of("missed by under 5 %"), chanceLabels(0.001));
    }

    private static List<String> chanceLabels(double step01) {
        LegendItemCollection items = ladder(step01, Theme.LIGHT).getXYPlot().getFixedLegendItems();
        List<String> labels = new ArrayList<>();
        for (int i = 3; i < items.getItemCount(); i++) {
            labels.add(items.get(i).getLabel());
        }
        return labels;
    }

    /** A cell below the curve, read pixel by pixel: a seldom missed note is plain, the others are striped. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void classesDifferInPatternAndNotInColourAlone(Theme theme) {
        JFreeChart chart = ladder(0.04, theme);
        ChartRenderingInfo info = new ChartRenderingInfo();
        BufferedImage image = chart.createBufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB, info);
        Rectangle2D area = info.getPlotInfo().getDataArea();
        // notes 1, 4, 10 and 20 have chances of 4, 16, 40 and 80 %
        List<Double> shares = new ArrayList<>();
        for (int note : new int[] {1, 4, 10, 20}) {
            shares.add(striped01(image, chart, area, note));
        }
        assertEquals(0, shares.get(0), 0.01, shares::toString);
        for (int i = 1; i < shares.size(); i++) {
            assertTrue(shares.get(i) > shares.get(i - 1) + 0.03, shares::toString);
        }
    }

    /** Share of a patch within a note's cell that is not its ground, clear of curve and figures. */
    private static double striped01(BufferedImage image, JFreeChart chart, Rectangle2D area, int note) {
        double mm = Samples.NEAR_MM + note * 400.0 / 24;
        double centre = chart.getXYPlot()
                .getDomainAxis()
                .valueToJava2D(mm, area, chart.getXYPlot().getDomainAxisEdge());
        // two notes above the curve for the lower half, two below it for the upper
        double key = 57 + note + (note < 12 ? 6.5 : -6.5);
        double middle = chart.getXYPlot()
                .getRangeAxis()
                .valueToJava2D(key, area, chart.getXYPlot().getRangeAxisEdge());
        Map<Integer, Integer> seen = new HashMap<>();
        for (int dx = -6; dx <= 6; dx++) {
            for (int dy = -6; dy <= 6; dy++) {
                seen.merge(image.getRGB((int) centre + dx, (int) middle + dy), 1, Integer::sum);
            }
        }
        return 1 - Collections.max(seen.values()) / 169.0;
    }

    @Test
    void theFootSaysItsUnit() {
        assertTrue(Parts.captions(ladder(0.03, Theme.LIGHT)).contains("missed, in %"));
        assertEquals("<1", new ChanceBands.Cell(1, 0, 0.004).text());
        assertEquals("5", new ChanceBands.Cell(0, 1, 0.05).text());
        assertEquals(0, new ChanceBands.Cell(1, 0, 0.05).from());
    }
}
