package handspan.show.chart;

import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.RenderingHints;
import java.awt.TexturePaint;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/**
 * A small sample of a class's colour and pattern for a legend.
 *
 * @param missClass which
 * @param theme of the chart
 */
record Swatch(MissClass missClass, Theme theme) {
    private static final int TILES = 2;

    Paint paint() {
        int tile = missClass.stripePx() == 0 ? 4 : missClass.stripePx();
        int size = TILES * tile;
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g2 = image.createGraphics();
        g2.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g2.setPaint(ChanceBands.alpha(missClass.color(theme), 70));
        g2.fillRect(0, 0, size, size);
        g2.setPaint(ChanceBands.alpha(missClass.color(theme), 200));
        for (int x = -size; missClass.stripePx() > 0 && x <= 2 * size; x += tile) {
            g2.drawLine(x, size, x + size, 0);
            if (missClass.crossed()) {
                g2.drawLine(x, 0, x + size, size);
            }
        }
        g2.dispose();
        return new TexturePaint(image, new Rectangle2D.Double(0, 0, size, size));
    }
}
