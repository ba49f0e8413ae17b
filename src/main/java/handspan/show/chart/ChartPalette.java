package handspan.show.chart;

import java.awt.Color;

/**
 * Colours that people with any of the usual colour vision deficiencies can tell apart.
 *
 * <p>Source: M. Okabe, K. Ito, Color Universal Design (CUD): how to make figures and presentations that are friendly to
 * colorblind people, 2002, revised 2008, table of the colour-blind-safe palette (RGB, 0..255).
 */
public final class ChartPalette {
    /** Orange. */
    public static final Color ORANGE = new Color(230, 159, 0);
    /** Sky blue. */
    public static final Color SKY_BLUE = new Color(86, 180, 233);
    /** Bluish green. */
    public static final Color BLUISH_GREEN = new Color(0, 158, 115);
    /** Yellow. */
    public static final Color YELLOW = new Color(240, 228, 66);
    /** Blue. */
    public static final Color BLUE = new Color(0, 114, 178);
    /** Vermillion. */
    public static final Color VERMILLION = new Color(213, 94, 0);
    /** Reddish purple. */
    public static final Color REDDISH_PURPLE = new Color(204, 121, 167);

    private ChartPalette() {}
}
