package handspan.show.window;

import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.List;
import java.util.Map;

/** Draws through to another, and notes all letters: which, how large, and where. */
final class LetterNet extends Graphics2D {
    /**
     * Letters that were drawn.
     *
     * @param text which
     * @param sizePx of their font, as they come out
     * @param box around them, from their first to their last and from the line they stand on to the height of a capital
     */
    record Written(String text, double sizePx, Rectangle2D box) {}

    /** Of a letter's size; capitals of usual faces have some 0.72 of it. */
    private static final double CAPITAL = 0.7;

    private final Graphics2D pen;
    private final List<Written> written;

    LetterNet(Graphics2D pen, List<Written> written) {
        this.pen = pen;
        this.written = written;
    }

    private void note(String text, Font font, double widthPx, double x, double y) {
        if (!text.isBlank()) {
            double tall = CAPITAL * font.getSize2D();
            Rectangle2D box = new Rectangle2D.Double(x, y - tall, widthPx, tall);
            AffineTransform transform = pen.getTransform();
            written.add(new Written(
                    text,
                    font.getSize2D() * transform.getScaleY(),
                    transform.createTransformedShape(box).getBounds2D()));
        }
    }

    @Override
    public Graphics create() {
        return new LetterNet((Graphics2D) pen.create(), written);
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(String text, float x, float y) {
        note(text, pen.getFont(), pen.getFontMetrics().stringWidth(text), x, y);
        pen.drawString(text, x, y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        note("attributed", pen.getFont(), 0, x, y);
        pen.drawString(text, x, y);
    }

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
        note("glyphs", glyphs.getFont(), glyphs.getLogicalBounds().getWidth(), x, y);
        pen.drawGlyphVector(glyphs, x, y);
    }

    @Override
    public void addRenderingHints(Map<?, ?> p0) {
        pen.addRenderingHints(p0);
    }

    @Override
    public void clearRect(int p0, int p1, int p2, int p3) {
        pen.clearRect(p0, p1, p2, p3);
    }

    @Override
    public void clipRect(int p0, int p1, int p2, int p3) {
        pen.clipRect(p0, p1, p2, p3);
    }

    @Override
    public void clip(Shape p0) {
        pen.clip(p0);
    }

    @Override
    public void copyArea(int p0, int p1, int p2, int p3, int p4, int p5) {
        pen.copyArea(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public void dispose() {
        pen.dispose();
    }

    @Override
    public void drawArc(int p0, int p1, int p2, int p3, int p4, int p5) {
        pen.drawArc(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public boolean drawImage(Image p0, AffineTransform p1, ImageObserver p2) {
        return pen.drawImage(p0, p1, p2);
    }

    @Override
    public boolean drawImage(Image p0, int p1, int p2, Color p3, ImageObserver p4) {
        return pen.drawImage(p0, p1, p2, p3, p4);
    }

    @Override
    public boolean drawImage(Image p0, int p1, int p2, int p3, int p4, Color p5, ImageObserver p6) {
        return pen.drawImage(p0, p1, p2, p3, p4, p5, p6);
    }

    @Override
    public boolean drawImage(
            Image p0, int p1, int p2, int p3, int p4, int p5, int p6, int p7, int p8, Color p9, ImageObserver p10) {
        return pen.drawImage(p0, p1, p2, p3, p4, p5, p6, p7, p8, p9, p10);
    }

    @Override
    public boolean drawImage(
            Image p0, int p1, int p2, int p3, int p4, int p5, int p6, int p7, int p8, ImageObserver p9) {
        return pen.drawImage(p0, p1, p2, p3, p4, p5, p6, p7, p8, p9);
    }

    @Override
    public boolean drawImage(Image p0, int p1, int p2, int p3, int p4, ImageObserver p5) {
        return pen.drawImage(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public boolean drawImage(Image p0, int p1, int p2, ImageObserver p3) {
        return pen.drawImage(p0, p1, p2, p3);
    }

    @Override
    public void drawImage(BufferedImage p0, BufferedImageOp p1, int p2, int p3) {
        pen.drawImage(p0, p1, p2, p3);
    }

    @Override
    public void drawLine(int p0, int p1, int p2, int p3) {
        pen.drawLine(p0, p1, p2, p3);
    }

    @Override
    public void drawOval(int p0, int p1, int p2, int p3) {
        pen.drawOval(p0, p1, p2, p3);
    }

    @Override
    public void drawPolygon(int[] p0, int[] p1, int p2) {
        pen.drawPolygon(p0, p1, p2);
    }

    @Override
    public void drawPolyline(int[] p0, int[] p1, int p2) {
        pen.drawPolyline(p0, p1, p2);
    }

    @Override
    public void drawRenderableImage(RenderableImage p0, AffineTransform p1) {
        pen.drawRenderableImage(p0, p1);
    }

    @Override
    public void drawRenderedImage(RenderedImage p0, AffineTransform p1) {
        pen.drawRenderedImage(p0, p1);
    }

    @Override
    public void drawRoundRect(int p0, int p1, int p2, int p3, int p4, int p5) {
        pen.drawRoundRect(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public void draw(Shape p0) {
        pen.draw(p0);
    }

    @Override
    public void fillArc(int p0, int p1, int p2, int p3, int p4, int p5) {
        pen.fillArc(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public void fillOval(int p0, int p1, int p2, int p3) {
        pen.fillOval(p0, p1, p2, p3);
    }

    @Override
    public void fillPolygon(int[] p0, int[] p1, int p2) {
        pen.fillPolygon(p0, p1, p2);
    }

    @Override
    public void fillRect(int p0, int p1, int p2, int p3) {
        pen.fillRect(p0, p1, p2, p3);
    }

    @Override
    public void fillRoundRect(int p0, int p1, int p2, int p3, int p4, int p5) {
        pen.fillRoundRect(p0, p1, p2, p3, p4, p5);
    }

    @Override
    public void fill(Shape p0) {
        pen.fill(p0);
    }

    @Override
    public Color getBackground() {
        return pen.getBackground();
    }

    @Override
    public Rectangle getClipBounds() {
        return pen.getClipBounds();
    }

    @Override
    public Shape getClip() {
        return pen.getClip();
    }

    @Override
    public Color getColor() {
        return pen.getColor();
    }

    @Override
    public Composite getComposite() {
        return pen.getComposite();
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return pen.getDeviceConfiguration();
    }

    @Override
    public FontMetrics getFontMetrics(Font p0) {
        return pen.getFontMetrics(p0);
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return pen.getFontRenderContext();
    }

    @Override
    public Font getFont() {
        return pen.getFont();
    }

    @Override
    public Paint getPaint() {
        return pen.getPaint();
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key p0) {
        return pen.getRenderingHint(p0);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return pen.getRenderingHints();
    }

    @Override
    public Stroke getStroke() {
        return pen.getStroke();
    }

    @Override
    public AffineTransform getTransform() {
        return pen.getTransform();
    }

    @Override
    public boolean hit(Rectangle p0, Shape p1, boolean p2) {
        return pen.hit(p0, p1, p2);
    }

    @Override
    public void rotate(double p0, double p1, double p2) {
        pen.rotate(p0, p1, p2);
    }

    @Override
    public void rotate(double p0) {
        pen.rotate(p0);
    }

    @Override
    public void scale(double p0, double p1) {
        pen.scale(p0, p1);
    }

    @Override
    public void setBackground(Color p0) {
        pen.setBackground(p0);
    }

    @Override
    public void setClip(int p0, int p1, int p2, int p3) {
        pen.setClip(p0, p1, p2, p3);
    }

    @Override
    public void setClip(Shape p0) {
        pen.setClip(p0);
    }

    @Override
    public void setColor(Color p0) {
        pen.setColor(p0);
    }

    @Override
    public void setComposite(Composite p0) {
        pen.setComposite(p0);
    }

    @Override
    public void setFont(Font p0) {
        pen.setFont(p0);
    }

    @Override
    public void setPaintMode() {
        pen.setPaintMode();
    }

    @Override
    public void setPaint(Paint p0) {
        pen.setPaint(p0);
    }

    @Override
    public void setRenderingHint(RenderingHints.Key p0, Object p1) {
        pen.setRenderingHint(p0, p1);
    }

    @Override
    public void setRenderingHints(Map<?, ?> p0) {
        pen.setRenderingHints(p0);
    }

    @Override
    public void setStroke(Stroke p0) {
        pen.setStroke(p0);
    }

    @Override
    public void setTransform(AffineTransform p0) {
        pen.setTransform(p0);
    }

    @Override
    public void setXORMode(Color p0) {
        pen.setXORMode(p0);
    }

    @Override
    public void shear(double p0, double p1) {
        pen.shear(p0, p1);
    }

    @Override
    public void transform(AffineTransform p0) {
        pen.transform(p0);
    }

    @Override
    public void translate(double p0, double p1) {
        pen.translate(p0, p1);
    }

    @Override
    public void translate(int p0, int p1) {
        pen.translate(p0, p1);
    }
}
