package handspan.show.window;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import handspan.show.chart.Theme;
import handspan.show.scene.Tone;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;

/** Colours, letters and lengths of the window, in the scale that the toolkit has. */
final class Looks {
    private static final String MORE = " ...";

    private final LookFile file;
    private final Theme theme;
    private final float scale;

    private Looks(LookFile file, Theme theme, float scale) {
        this.file = file;
        this.theme = theme;
        this.scale = scale;
    }

    /** Has the toolkit look so from now on; what it made before keeps its look. */
    static Looks wear(boolean dark) {
        LookFile file = LookFile.of(dark);
        FlatLaf.setGlobalExtraDefaults(file.toolkit());
        if (dark) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        return new Looks(file, dark ? Theme.DARK : Theme.LIGHT, UIScale.getUserScaleFactor());
    }

    /** Of charts on a page. */
    Theme theme() {
        return theme;
    }

    /**
     * How much larger charts are here than on paper, where a point is a px: no letters smaller than those of a button.
     */
    double chartScale() {
        return px(Letters.CONTROL) / Theme.SMALLEST_TEXT_POINTS;
    }

    Color ink(Ink ink) {
        return file.ink(ink);
    }

    /** Of a mark beside words; the words themselves keep the colour of text, so that all can read them. */
    Color mark(Tone tone) {
        return ink(
                switch (tone) {
                    case PLAIN, QUIET -> Ink.LINES;
                    case GOOD -> Ink.GOOD;
                    case LOOK -> Ink.LOOK;
                    case BAD -> Ink.BAD;
                });
    }

    Color text(Tone tone) {
        return ink(tone == Tone.QUIET ? Ink.QUIET_TEXT : Ink.TEXT);
    }

    /** A sign that says by form what the colour says. */
    static String sign(Tone tone) {
        return switch (tone) {
            case PLAIN, QUIET -> "";
            case GOOD -> "\u2713";
            case LOOK -> "!";
            case BAD -> "\u00d7";
        };
    }

    /** A length at 100 %, in the scale of the window. */
    int px(int usualPx) {
        return Math.round(usualPx * scale);
    }

    Font font(int style, Letters letters) {
        return sized(style, px(letters));
    }

    /** Height of letters, px. */
    float px(Letters letters) {
        return file.size(letters) * scale;
    }

    /** Letters as large as there is room for, but no smaller than the smallest. */
    Font atLeastSmall(int style, float sizePx) {
        return sized(style, Math.max(px(Letters.CONTROL), sizePx));
    }

    private static Font sized(int style, float sizePx) {
        return new Font(Font.SANS_SERIF, style, 12).deriveFont(sizePx);
    }

    /** Words as far as there is room for them. */
    static String cut(FontMetrics metrics, String words, int widthPx) {
        if (metrics.stringWidth(words) <= widthPx) {
            return words;
        }
        int end = words.length();
        while (end > 0 && metrics.stringWidth(words.substring(0, end) + MORE) > widthPx) {
            end--;
        }
        return words.substring(0, end) + MORE;
    }

    static Graphics2D smooth(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return pen;
    }
}
