package handspan.show.window;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The program's sign: five fingers over a dimension line, their span. */
final class Emblem {
    private static final Color GROUND = new Color(0x16191D);
    private static final Color FINGERS = new Color(0x56B4E9);
    private static final Color SPAN = new Color(0xE69F00);

    /** Where a finger stands, and where it ends, in hundredths of the sign's side. */
    private static final double[][] TIPS = {{20, 52}, {35, 30}, {50, 22}, {65, 28}, {80, 44}};

    private static final double FOOT = 58;
    private static final double SPAN_AT = 79;
    private static final int[] SIDES_PX = {16, 32, 48, 128, 256};

    private Emblem() {}

    /** The sizes that desktops ask for. */
    static List<Image> pictures() {
        return IntStream.of(SIDES_PX).mapToObj(side -> (Image) picture(side)).toList();
    }

    /**
     * The sign as a picture.
     *
     * @param sidePx of the square
     */
    static BufferedImage picture(int sidePx) {
        BufferedImage picture = new BufferedImage(sidePx, sidePx, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = picture.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.scale(sidePx / 100.0, sidePx / 100.0);
        g.setColor(GROUND);
        g.fill(new RoundRectangle2D.Double(0, 0, 100, 100, 24, 24));
        g.setStroke(new BasicStroke(7, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(FINGERS);
        Arrays.stream(TIPS).forEach(tip -> g.draw(new Line2D.Double(tip[0], tip[1], tip[0], FOOT)));
        g.setColor(SPAN);
        g.draw(new Line2D.Double(20, SPAN_AT, 80, SPAN_AT));
        for (double end : new double[] {20, 80}) {
            g.draw(new Line2D.Double(end, SPAN_AT - 7, end, SPAN_AT + 7));
        }
        g.dispose();
        return picture;
    }
}
