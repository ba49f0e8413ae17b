package handspan.show.chart;

import java.awt.Color;
import java.awt.Font;

/**
 * Colours and fonts of a chart. Lines are told apart by colour and by form; their colours come from
 * {@link ChartPalette}, of which each theme takes those that stand out from its ground.
 */
public enum Theme {
    /** Dark on white: print and daylight. */
    LIGHT,
    /** Light on black: the dark of a stage. */
    DARK;

    /** Smallest text on any chart, points (one point is one pixel of the picture). */
    public static final int SMALLEST_TEXT_POINTS = 12;

    private static final String FAMILY = Font.SANS_SERIF;

    /** Around the plot. */
    public Color background() {
        return pick(new Color(0xFFFFFF), new Color(0x16191D));
    }

    /** Behind the data. */
    public Color plot() {
        return pick(new Color(0xFBFBFC), new Color(0x1D2126));
    }

    /** Grid and note lines. */
    public Color grid() {
        return pick(new Color(0xDCDFE3), new Color(0x383E46));
    }

    /** A translucent tint for bands, so that the grid shows through. */
    public Color band() {
        return pick(new Color(40, 70, 110, 22), new Color(170, 200, 240, 26));
    }

    /** Titles and labels. */
    public Color text() {
        return pick(new Color(0x1B1F24), new Color(0xF0F2F4));
    }

    /** Captions and numbers at the axes. */
    public Color quietText() {
        return pick(new Color(0x525962), new Color(0xB4BBC4));
    }

    /** What the chart is about. */
    public Color line() {
        return pick(ChartPalette.BLUE, ChartPalette.SKY_BLUE);
    }

    /** What stands against it or wants a look. */
    public Color mark() {
        return pick(ChartPalette.VERMILLION, ChartPalette.ORANGE);
    }

    /** Ends and limits. */
    public Color edge() {
        return pick(ChartPalette.BLUISH_GREEN, ChartPalette.YELLOW);
    }

    /** What moves: the live hand. */
    public Color live() {
        return ChartPalette.REDDISH_PURPLE;
    }

    private Color pick(Color light, Color dark) {
        return this == LIGHT ? light : dark;
    }

    /** Of the title. */
    public Font titleFont() {
        return new Font(FAMILY, Font.BOLD, 19);
    }

    /** Of captions, legend and axis labels. */
    public Font labelFont() {
        return new Font(FAMILY, Font.PLAIN, 13);
    }

    /** Of numbers at the axes and names in the plot. */
    public Font smallFont() {
        return new Font(FAMILY, Font.PLAIN, SMALLEST_TEXT_POINTS);
    }
}
