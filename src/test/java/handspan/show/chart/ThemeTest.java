package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ThemeTest {
    /** The contrast of mid grey is published to two decimals. */
    private static final double RATIO_TOLERANCE = 0.005;

    private static final double LEAST_TEXT_CONTRAST = 4.5;
    private static final double LEAST_LINE_CONTRAST = 3;

    // M. Okabe, K. Ito, Color Universal Design, 2002 (rev. 2008), palette table, as its public copies print it in
    // hexadecimal
    @Test
    void thePaletteIsThePublishedOne() {
        assertEquals(0xE69F00, rgb(ChartPalette.ORANGE));
        assertEquals(0x56B4E9, rgb(ChartPalette.SKY_BLUE));
        assertEquals(0x009E73, rgb(ChartPalette.BLUISH_GREEN));
        assertEquals(0xF0E442, rgb(ChartPalette.YELLOW));
        assertEquals(0x0072B2, rgb(ChartPalette.BLUE));
        assertEquals(0xD55E00, rgb(ChartPalette.VERMILLION));
        assertEquals(0xCC79A7, rgb(ChartPalette.REDDISH_PURPLE));
    }

    private static int rgb(Color color) {
        return color.getRGB() & 0xFFFFFF;
    }

    // Web Content Accessibility Guidelines 2.1 (W3C, 2018), success criteria 1.4.3 (text) and 1.4.11 (graphics)
    @ParameterizedTest
    @EnumSource(Theme.class)
    void textAndLinesStandOutFromTheirGround(Theme theme) {
        for (Color ground : List.of(theme.background(), theme.plot(), over(theme.band(), theme.plot()))) {
            for (Color text : List.of(theme.text(), theme.quietText())) {
                assertTrue(contrast(text, ground) >= LEAST_TEXT_CONTRAST, () -> text + " on " + ground);
            }
        }
        for (Color ground : List.of(theme.background(), theme.plot())) {
            for (Color line : List.of(theme.line(), theme.mark(), theme.edge())) {
                assertTrue(contrast(line, ground) >= LEAST_LINE_CONTRAST, () -> line + " on " + ground);
            }
        }
    }

    // the ends of the scale are given in the definition of contrast ratio; #767676 on white = 4.54 is the usual
    // example of the darkest grey that is just enough (from memory)
    @Test
    void theContrastOfThisTestIsTheOneOfTheGuidelines() {
        assertEquals(21, contrast(Color.WHITE, Color.BLACK), RATIO_TOLERANCE);
        assertEquals(1, contrast(Color.WHITE, Color.WHITE), RATIO_TOLERANCE);
        assertEquals(4.54, contrast(new Color(0x767676), Color.WHITE), RATIO_TOLERANCE);
    }

    private static Color over(Color tint, Color ground) {
        double share = tint.getAlpha() / 255.0;
        return new Color(
                mixed(tint.getRed(), ground.getRed(), share),
                mixed(tint.getGreen(), ground.getGreen(), share),
                mixed(tint.getBlue(), ground.getBlue(), share));
    }

    private static int mixed(int upper, int lower, double share) {
        return (int) Math.rint(share * upper + (1 - share) * lower);
    }

    private static double contrast(Color one, Color other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
