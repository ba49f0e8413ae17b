package handspan.show.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;

/**
 * Draws black on white in millimetres from a page's upper left corner. Letters are measured in points, as is usual.
 *
 * @param page what is drawn on
 * @param face of all text
 */
record Pen(Graphics2D page, SheetFont face) {
    /** Cut edges and other lines that only guide. */
    static final double FINE_MM = 0.15;

    /** Height of a capital letter over the size of the letters: 1409 of 2048 units in this face. */
    private static final double CAPITAL = 1409.0 / 2048;

    /** From one line of text to the next, over the size of the letters. */
    private static final double LEADING = 1.3;

    /** Where a text stands from its point. */
    enum Side {
        /** It begins there. */
        RIGHT_OF,
        /** It has its middle there. */
        AROUND,
        /** It ends there. */
        LEFT_OF
    }

    /** Height of a capital letter. */
    static double capitalMm(double points) {
        return CAPITAL * points * VectorPdf.MM_PER_POINT;
    }

    /** From one line of text to the next. */
    static double leadingMm(double points) {
        return LEADING * points * VectorPdf.MM_PER_POINT;
    }

    double widthMm(String text, double points) {
        return face.widthMm(text, points);
    }

    /** A line with square ends. */
    void line(double fromX, double fromY, double toX, double toY, double thickMm) {
        line(fromX, fromY, toX, toY, thickMm, Color.BLACK);
    }

    /** A line of a colour. */
    void line(double fromX, double fromY, double toX, double toY, double thickMm, Color color) {
        stroke(new BasicStroke((float) thickMm, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER), color);
        page.draw(new Line2D.Double(fromX, fromY, toX, toY));
    }

    /** A dashed line. */
    void dashes(double fromX, double fromY, double toX, double toY) {
        float[] dash = {2, 1.5f};
        stroke(
                new BasicStroke((float) FINE_MM, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0),
                Color.BLACK);
        page.draw(new Line2D.Double(fromX, fromY, toX, toY));
    }

    private void stroke(BasicStroke stroke, Color color) {
        page.setPaint(color);
        page.setStroke(stroke);
    }

    /** A filled arrow head. */
    void head(double tipX, double tipY, double backX, double backY) {
        double halfX = -(backY - tipY) / 2;
        double halfY = (backX - tipX) / 2;
        Path2D.Double path = new Path2D.Double();
        path.moveTo(tipX, tipY);
        path.lineTo(backX + halfX, backY + halfY);
        path.lineTo(backX - halfX, backY - halfY);
        path.closePath();
        page.setPaint(Color.BLACK);
        page.fill(path);
    }

    /** Text on a base line. */
    void text(String text, double x, double baseY, double points, Side side) {
        text(text, x, baseY, points, side, Color.BLACK);
    }

    /** Text of a colour. */
    void text(String text, double x, double baseY, double points, Side side, Color color) {
        double width = widthMm(text, points);
        double left = switch (side) {
            case RIGHT_OF -> x;
            case AROUND -> x - width / 2;
            case LEFT_OF -> x - width;
        };
        page.setPaint(color);
        page.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) (points * VectorPdf.MM_PER_POINT)));
        page.drawString(text, (float) left, (float) baseY);
    }

    /** Text that runs upwards from a point on its base line. */
    void upwards(String text, double baseX, double y, double points) {
        AffineTransform before = page.getTransform();
        page.rotate(-Math.PI / 2, baseX, y);
        text(text, baseX, y, points, Side.RIGHT_OF);
        page.setTransform(before);
    }

    /**
     * Lines of text, broken between words.
     *
     * @return the base line after the last
     */
    double paragraph(String text, double x, double baseY, double widthMm, double points) {
        double y = baseY;
        for (String line : broken(text, widthMm, points)) {
            text(line, x, y, points, Side.RIGHT_OF);
            y += leadingMm(points);
        }
        return y;
    }

    /** Breaks a text between words; a word that is too long for a line has one to itself and is cut short. */
    List<String> broken(String text, double widthMm, double points) {
        return face.broken(text, widthMm, points);
    }

    /** The text if it fits, else as much of its beginning as does, and dots. */
    String shortened(String text, double widthMm, double points) {
        return face.shortened(text, widthMm, points);
    }
}
