package handspan.show.chart;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.entity.XYAnnotationEntity;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;

/** Reads drawn charts. */
final class Parts {
    /** A name in a plot. */
    record Name(String hint, Rectangle2D box) {
        String text() {
            return hint.substring(0, hint.indexOf(','));
        }
    }

    private Parts() {}

    static List<XYPlot> plots(JFreeChart chart) {
        if (!(chart.getPlot() instanceof CombinedDomainXYPlot both)) {
            return List.of(chart.getXYPlot());
        }
        List<XYPlot> plots = new ArrayList<>();
        for (Object plot : both.getSubplots()) {
            plots.add((XYPlot) plot);
        }
        return plots;
    }

    static List<ValueAxis> axes(JFreeChart chart) {
        List<ValueAxis> axes = new ArrayList<>();
        axes.add(chart.getXYPlot().getDomainAxis());
        for (XYPlot plot : plots(chart)) {
            for (int i = 0; i < plot.getRangeAxisCount(); i++) {
                if (plot.getRangeAxis(i).isVisible()) {
                    axes.add(plot.getRangeAxis(i));
                }
            }
        }
        return axes;
    }

    static List<Font> fonts(JFreeChart chart) {
        List<Font> fonts = new ArrayList<>();
        fonts.add(chart.getTitle().getFont());
        for (Object subtitle : chart.getSubtitles()) {
            fonts.add(subtitle instanceof LegendTitle legend ? legend.getItemFont() : ((TextTitle) subtitle).getFont());
        }
        for (ValueAxis axis : axes(chart)) {
            fonts.add(axis.getLabelFont());
            fonts.add(axis.getTickLabelFont());
        }
        for (XYPlot plot : plots(chart)) {
            for (Marker marker : markers(plot)) {
                if (marker.getLabel() != null) {
                    fonts.add(marker.getLabelFont());
                }
            }
        }
        return fonts;
    }

    static List<Marker> markers(XYPlot plot) {
        List<Marker> markers = new ArrayList<>();
        for (Layer layer : new Layer[] {Layer.BACKGROUND, Layer.FOREGROUND}) {
            add(plot.getDomainMarkers(layer), markers);
            add(plot.getRangeMarkers(layer), markers);
        }
        return markers;
    }

    private static void add(@org.jspecify.annotations.Nullable Collection<?> some, List<Marker> markers) {
        if (some != null) {
            for (Object marker : some) {
                markers.add((Marker) marker);
            }
        }
    }

    static List<String> labels(XYPlot plot) {
        return markers(plot).stream()
                .map(Marker::getLabel)
                .filter(label -> label != null)
                .toList();
    }

    /** What the captions say, one after another. */
    static String captions(JFreeChart chart) {
        StringBuilder words = new StringBuilder();
        for (Object subtitle : chart.getSubtitles()) {
            if (subtitle instanceof TextTitle line) {
                words.append(line.getText()).append('\n');
            }
        }
        return words.toString();
    }

    /** Draws a chart and gives the names that were placed. */
    static List<Name> names(JFreeChart chart, int widthPx, int heightPx) {
        ChartRenderingInfo info = draw(chart, widthPx, heightPx);
        List<Name> names = new ArrayList<>();
        for (Object entity : info.getEntityCollection().getEntities()) {
            if (entity instanceof XYAnnotationEntity name) {
                names.add(new Name(name.getToolTipText(), name.getArea().getBounds2D()));
            }
        }
        return names;
    }

    static ChartRenderingInfo draw(JFreeChart chart, int widthPx, int heightPx) {
        ChartRenderingInfo info = new ChartRenderingInfo();
        BufferedImage image = chart.createBufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB, info);
        image.flush();
        return info;
    }

    /** Height of a series at an x, between its items where x falls so. */
    static double at(XYDataset data, Comparable<?> series, double x) {
        int index = data.indexOf(series);
        for (int i = 1; i < data.getItemCount(index); i++) {
            double left = data.getXValue(index, i - 1);
            double right = data.getXValue(index, i);
            if (x >= left && x <= right) {
                double share = right == left ? 0 : (x - left) / (right - left);
                return data.getYValue(index, i - 1) * (1 - share) + data.getYValue(index, i) * share;
            }
        }
        throw new AssertionError("nothing at " + x);
    }
}
