package handspan.show.chart;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import org.jfree.chart.ChartUtils;
import org.jfree.chart.JFreeChart;

/** Writes charts as pictures. Works without a screen. */
public final class ChartFile {
    /** Usual width of a picture, px. */
    public static final int USUAL_WIDTH_PX = 1200;

    /** Usual height of a picture, px. */
    public static final int USUAL_HEIGHT_PX = 700;

    private static final int LEAST_PX = 100;
    private static final int MOST_PX = 10_000;

    private ChartFile() {}

    /**
     * Writes a chart as PNG: first beside the file, then into its place, so that a picture is there whole or not at
     * all.
     *
     * @param chart what to draw
     * @param png the file, replaced if it is there; its folder must exist
     * @param widthPx 100..10000
     * @param heightPx 100..10000
     * @throws IOException when the file cannot be written
     */
    public static void write(JFreeChart chart, Path png, int widthPx, int heightPx) throws IOException {
        if (Math.min(widthPx, heightPx) < LEAST_PX || Math.max(widthPx, heightPx) > MOST_PX) {
            throw new IllegalArgumentException(
                    "picture of " + widthPx + " x " + heightPx + " px (" + LEAST_PX + ".." + MOST_PX + " each way)");
        }
        BufferedImage picture = chart.createBufferedImage(widthPx, heightPx);
        WholeFile.write(png, out -> ChartUtils.writeBufferedImageAsPNG(out, picture));
    }
}
