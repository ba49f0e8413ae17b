package handspan.show.report;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;

/**
 * What a page of a PDF really draws, read back operator by operator: all in mm from its upper left corner, by the
 * definition of the point as a 72nd of an inch (ISO 32000-1:2008, 8.3.2.3) and of the inch as 25.4 mm.
 */
final class PrintedPage extends PDFGraphicsStreamEngine {
    private static final double MM = 25.4 / 72;

    /** Ascent of capitals and descent of letters over the size, in this face: 1409 and 431 of 2048 units. */
    private static final double CAPITAL = 1409.0 / 2048;

    private static final double DESCENT = 431.0 / 2048;

    final List<Stroke> strokes = new ArrayList<>();
    final List<Words> words = new ArrayList<>();
    final List<PDFont> fonts = new ArrayList<>();
    int images;
    int fills;
    final double widthMm;
    final double heightMm;

    private final List<Stroke> path = new ArrayList<>();
    private Point2D current = new Point2D.Double();
    private Point2D start = new Point2D.Double();

    /** A straight line. */
    record Stroke(double x1, double y1, double x2, double y2, double thickMm, boolean dashed, boolean black) {
        boolean isVertical() {
            return Math.abs(x1 - x2) < 1e-3;
        }

        boolean isHorizontal() {
            return Math.abs(y1 - y2) < 1e-3;
        }

        double top() {
            return Math.min(y1, y2);
        }

        double bottom() {
            return Math.max(y1, y2);
        }

        double length() {
            return Math.hypot(x2 - x1, y2 - y1);
        }
    }

    /** Text drawn in one go. */
    record Words(String text, double points, boolean upright, Rectangle2D box) {
        double middle() {
            return box.getCenterX();
        }
    }

    private PrintedPage(PDPage page) throws IOException {
        super(page);
        widthMm = page.getMediaBox().getWidth() * MM;
        heightMm = page.getMediaBox().getHeight() * MM;
        processPage(page);
    }

    static List<PrintedPage> all(Path pdf) throws IOException {
        List<PrintedPage> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            for (PDPage page : document.getPages()) {
                pages.add(new PrintedPage(page));
            }
        }
        return pages;
    }

    // what a note strip has on every sheet

    /** The two long thin level lines to cut along. */
    private Stream<Stroke> cuts() {
        return strokes.stream().filter(s -> s.isHorizontal() && s.length() > 40 && Math.abs(s.thickMm - 0.15) < 0.01);
    }

    double frameTop() {
        return cuts().mapToDouble(Stroke::top).min().orElseThrow();
    }

    double frameBottom() {
        return cuts().mapToDouble(Stroke::top).max().orElseThrow();
    }

    double frameLeft() {
        return cuts().mapToDouble(s -> Math.min(s.x1, s.x2)).min().orElseThrow();
    }

    double frameRight() {
        return cuts().mapToDouble(s -> Math.max(s.x1, s.x2)).max().orElseThrow();
    }

    /** Lines that rise from the lower cut and are longer than the grey marks between the notes. */
    List<Stroke> noteLines() {
        double bottom = frameBottom();
        return strokes.stream()
                .filter(s -> s.isVertical() && s.black && !s.dashed && Math.abs(s.bottom() - bottom) < 0.01)
                .filter(s -> s.length() > 5 && s.length() < 40)
                .toList();
    }

    /** Where the dashes run, from left to right. */
    List<Double> joins() {
        return strokes.stream()
                .filter(s -> s.isVertical() && s.dashed)
                .map(s -> Math.rint(s.x1 * 1e4) / 1e4)
                .distinct()
                .sorted()
                .toList();
    }

    @Override
    public void showTextString(byte[] string) throws IOException {
        Matrix from = getTextMatrix().multiply(getGraphicsState().getCurrentTransformationMatrix());
        PDFont font = getGraphicsState().getTextState().getFont();
        double size = getGraphicsState().getTextState().getFontSize();
        StringBuilder text = new StringBuilder();
        shown = text;
        super.showTextString(string);
        Matrix to = getTextMatrix().multiply(getGraphicsState().getCurrentTransformationMatrix());
        double points = size * Math.hypot(from.getScaleY(), from.getShearX());
        boolean upright = Math.abs(from.getShearY()) < 1e-6;
        fonts.add(font);
        words.add(new Words(text.toString(), points, upright, box(from, to, points * MM, upright)));
    }

    private StringBuilder shown = new StringBuilder();

    @Override
    protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement) throws IOException {
        shown.append(font.toUnicode(code));
    }

    private Rectangle2D box(Matrix from, Matrix to, double sizeMm, boolean upright) {
        double x1 = from.getTranslateX() * MM;
        double y1 = heightMm - from.getTranslateY() * MM;
        double x2 = to.getTranslateX() * MM;
        double y2 = heightMm - to.getTranslateY() * MM;
        if (upright) {
            return new Rectangle2D.Double(x1, y1 - CAPITAL * sizeMm, x2 - x1, (CAPITAL + DESCENT) * sizeMm);
        }
        boolean upwards = y2 < y1;
        double left = x1 - (upwards ? CAPITAL : DESCENT) * sizeMm;
        return new Rectangle2D.Double(left, Math.min(y1, y2), (CAPITAL + DESCENT) * sizeMm, Math.abs(y1 - y2));
    }

    @Override
    public void moveTo(float x, float y) {
        current = new Point2D.Double(x, y);
        start = current;
    }

    @Override
    public void lineTo(float x, float y) {
        Point2D next = new Point2D.Double(x, y);
        var line = getGraphicsState();
        AffineTransform scale = line.getCurrentTransformationMatrix().createAffineTransform();
        boolean black;
        try {
            black = line.getStrokingColor().toRGB() == 0;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        path.add(new Stroke(
                current.getX() * MM,
                heightMm - current.getY() * MM,
                next.getX() * MM,
                heightMm - next.getY() * MM,
                line.getLineWidth() * Math.sqrt(Math.abs(scale.getDeterminant())) * MM,
                line.getLineDashPattern().getDashArray().length > 0,
                black));
        current = next;
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        current = new Point2D.Double(x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return current;
    }

    @Override
    public void closePath() {
        current = start;
    }

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void strokePath() {
        strokes.addAll(path);
        path.clear();
    }

    @Override
    public void fillPath(int windingRule) {
        fills++;
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        fills++;
        strokePath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo((float) p0.getX(), (float) p0.getY());
    }

    @Override
    public void drawImage(PDImage image) {
        images++;
    }

    @Override
    public void clip(int windingRule) {
        // whatever is cut off is looked for by its place on the page
    }

    @Override
    public void shadingFill(COSName name) {
        fills++;
    }

    /** Whether the file itself carries the font. */
    static boolean isEmbedded(PDFont font) {
        PDFontDescriptor descriptor = font.getFontDescriptor();
        return font.isEmbedded() && descriptor != null && descriptor.getFontFile2() != null;
    }
}
