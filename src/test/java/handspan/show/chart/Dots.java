package handspan.show.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;

/** Looks at drawn pictures dot by dot. */
final class Dots {
    /** Size at which charts stand in a window. */
    static final int WIDTH = 900;

    static final int HEIGHT = 420;

    private static final int NEAR = 24;

    /** Farther from a colour than this, a dot has none of it. */
    private static final double MIXED = 100;

    private Dots() {}

    static BufferedImage picture(LiveChart chart, Theme theme) {
        return picture(chart, theme, 1);
    }

    static BufferedImage picture(LiveChart chart, Theme theme, double scale) {
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(scale * WIDTH), (int) Math.ceil(scale * HEIGHT), BufferedImage.TYPE_INT_RGB);
        Graphics2D g2 = image.createGraphics();
        g2.scale(scale, scale);
        chart.draw(g2, WIDTH, HEIGHT, theme);
        g2.dispose();
        return image;
    }

    static boolean isNear(int rgb, Color color) {
        Color seen = new Color(rgb);
        return Math.abs(seen.getRed() - color.getRed()) < NEAR
                && Math.abs(seen.getGreen() - color.getGreen()) < NEAR
                && Math.abs(seen.getBlue() - color.getBlue()) < NEAR;
    }

    static int count(BufferedImage image, Color color, int fromX, int toX) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = fromX; x < toX; x++) {
                count += isNear(image.getRGB(x, y), color) ? 1 : 0;
            }
        }
        return count;
    }

    /** The part of a picture above a row. */
    static BufferedImage above(BufferedImage image, int heightPx) {
        return image.getSubimage(0, 0, image.getWidth(), heightPx);
    }

    /** Middle of all squares of a colour that are so wide and high: of a dot, not of lines and letters. */
    static Point2D middleOfDot(BufferedImage image, Color color, int sizePx) {
        double sumX = 0;
        double sumY = 0;
        int count = 0;
        for (int y = 0; y + sizePx <= image.getHeight(); y++) {
            for (int x = 0; x + sizePx <= image.getWidth(); x++) {
                if (isFull(image, color, x, y, sizePx)) {
                    sumX += x + sizePx / 2.0;
                    sumY += y + sizePx / 2.0;
                    count++;
                }
            }
        }
        if (count == 0) {
            throw new AssertionError("no dot of " + color);
        }
        return new Point2D.Double(sumX / count, sumY / count);
    }

    private static boolean isFull(BufferedImage image, Color color, int fromX, int fromY, int sizePx) {
        for (int y = fromY; y < fromY + sizePx; y++) {
            for (int x = fromX; x < fromX + sizePx; x++) {
                if (!isNear(image.getRGB(x, y), color)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Middle, between two rows of a column, of all that stands out from a ground: of a line across. */
    static double row(BufferedImage image, Color ground, int x, int fromY, int toY) {
        double sum = 0;
        double weights = 0;
        for (int y = fromY; y <= toY; y++) {
            Color seen = new Color(image.getRGB(x, y));
            int apart = Math.abs(seen.getRed() - ground.getRed()) + Math.abs(seen.getBlue() - ground.getBlue());
            sum += apart * (y + 0.5);
            weights += apart;
        }
        if (weights < NEAR) {
            throw new AssertionError("nothing in column " + x + " from " + fromY + " to " + toY);
        }
        return sum / weights;
    }

    /** The column nearest to the given one where a colour is met, looked for both ways, in some row of a few. */
    static double column(BufferedImage image, Color color, int y, int fromX, int mostPx) {
        for (int away = 0; away < mostPx; away++) {
            for (int x : new int[] {fromX - away, fromX + away}) {
                for (int row = y - 12; row <= y && x >= 0 && x < image.getWidth(); row++) {
                    if (isNear(image.getRGB(x, row), color)) {
                        return middle(image, color, x, row);
                    }
                }
            }
        }
        throw new AssertionError("nothing of " + color + " near column " + fromX);
    }

    /** Middle of the run of a colour in a row, edges that are mixed with the ground weighed in. */
    private static double middle(BufferedImage image, Color color, int x, int y) {
        int first = x;
        int last = x;
        while (isNear(image.getRGB(first - 1, y), color)) {
            first--;
        }
        while (isNear(image.getRGB(last + 1, y), color)) {
            last++;
        }
        return (first + last + 1) / 2.0;
    }

    /**
     * Mean height of a colour in a part of the picture, dots that are mixed with the ground weighed less: of a line.
     */
    static double line(BufferedImage image, Color color, int fromX, int toX, int fromY, int toY) {
        double sum = 0;
        double weights = 0;
        for (int y = fromY; y <= toY; y++) {
            for (int x = fromX; x <= toX; x++) {
                Color seen = new Color(image.getRGB(x, y));
                int apart = Math.max(
                        Math.abs(seen.getRed() - color.getRed()),
                        Math.max(
                                Math.abs(seen.getGreen() - color.getGreen()),
                                Math.abs(seen.getBlue() - color.getBlue())));
                double weight = Math.max(0, 1 - apart / MIXED);
                sum += weight * (y + 0.5);
                weights += weight;
            }
        }
        if (weights < 1) {
            throw new AssertionError("nothing of " + color + " from row " + fromY + " to " + toY);
        }
        return sum / weights;
    }
}
