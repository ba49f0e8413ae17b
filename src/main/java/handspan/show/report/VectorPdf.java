package handspan.show.report;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import java.awt.Graphics2D;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A PDF in the making: the one way onto paper. Whatever draws on a {@link Graphics2D} comes out as vectors, and its
 * text as text in an embedded face. Pages are drawn in millimetres from their upper left corner, so that a line of 100
 * is 100 mm on paper.
 *
 * <pre>{@code
 * try (VectorPdf pdf = new VectorPdf("What was measured")) {
 *     pdf.page(Paper.A4.portrait(), page -> {
 *         Pen pen = new Pen(page, pdf.font());
 *         pen.text("The room", 20, 30, 14, Pen.Side.RIGHT_OF);
 *         ChartOnPage.draw(page, new Rectangle2D.Double(20, 40, 170, 100), chart);
 *     });
 *     pdf.write(file);
 * }
 * }</pre>
 *
 * <p>The same drawings make the same bytes: no time and no chance goes in. Viewers are asked to print at full size (ISO
 * 32000-1:2008, 12.2, PrintScaling None; clauses from memory). Not for use by several threads.
 */
public final class VectorPdf implements Closeable {
    /** A point is a 72nd of an inch (ISO 32000-1:2008, 8.3.2.3, default user space; clause from memory). */
    public static final double MM_PER_POINT = 25.4 / 72;

    /** What the file's identifier is made from besides the title; a time unless it is given. */
    private static final long DOCUMENT_ID = 1;

    /** PrintScaling came with this version. */
    private static final float PDF_VERSION = 1.6f;

    private final PDDocument document = new PDDocument();
    private final SheetFont font = SheetFont.load();
    private final EmbeddedText text;

    /** Something to be drawn. */
    public interface Drawing {
        /**
         * Draws.
         *
         * @param page in mm from the upper left corner; gone when this returns
         */
        void on(Graphics2D page);
    }

    /**
     * An empty document.
     *
     * @param title shown by viewers
     */
    public VectorPdf(String title) throws IOException {
        document.setVersion(PDF_VERSION);
        document.setDocumentId(DOCUMENT_ID);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setCreator("Handspan");
        var wishes = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
        wishes.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        wishes.setDisplayDocTitle(true);
        document.getDocumentCatalog().setViewerPreferences(wishes);
        document.getDocumentCatalog().setLanguage("en");
        text = new EmbeddedText(font, font.embedIn(document));
    }

    /** The face in which text will be written, for measuring. */
    SheetFont font() {
        return font;
    }

    /** Adds a page. */
    public void page(PageSize size, Drawing drawing) throws IOException {
        PDRectangle box = new PDRectangle(points(size.widthMm()), points(size.heightMm()));
        PDPage page = new PDPage(box);
        document.addPage(page);
        PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, box);
        try {
            graphics.setFontTextDrawer(text);
            graphics.scale(1 / MM_PER_POINT, 1 / MM_PER_POINT);
            drawing.on(graphics);
        } finally {
            graphics.disposeDanglingChildGraphics();
            graphics.dispose();
        }
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            content.drawForm(graphics.getXFormObject());
        }
    }

    /**
     * Writes the document: first beside the file, then into its place, so that it is there whole or not at all.
     *
     * @param pdf the file, replaced if it is there; its folder must exist
     * @throws IOException when the file cannot be written
     */
    public void write(Path pdf) throws IOException {
        SheetFile.write(pdf, document::save);
    }

    private static float points(double mm) {
        return (float) (mm / MM_PER_POINT);
    }

    @Override
    public void close() throws IOException {
        text.close();
        document.close();
    }
}
