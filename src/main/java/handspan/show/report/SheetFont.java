package handspan.show.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one face on all sheets, Liberation Sans, whatever fonts the machine has: what it can write, how wide that is, and
 * its embedding in a document. It comes with the PDF library, under the SIL Open Font License 1.1.
 */
final class SheetFont {
    /** Where the face lies in the PDF library. */
    static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private static final double MM_PER_POINT = VectorPdf.MM_PER_POINT;

    private final TrueTypeFont face;
    private final CmapLookup glyphs;
    private final double unitsPerEm;

    private SheetFont(TrueTypeFont face) throws IOException {
        this.face = face;
        this.glyphs = face.getUnicodeCmapLookup();
        this.unitsPerEm = face.getUnitsPerEm();
    }

    /** Reads the face. */
    static SheetFont load() {
        try (InputStream in = resource()) {
            return new SheetFont(new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes())));
        } catch (IOException e) {
            throw new UncheckedIOException("the face " + RESOURCE + " cannot be read", e);
        }
    }

    /** The face's file. */
    static InputStream resource() throws IOException {
        InputStream in = PDDocument.class.getResourceAsStream(RESOURCE);
        if (in == null) {
            throw new IOException(RESOURCE + " is not in the PDF library");
        }
        return in;
    }

    /** Puts the face into a document: those of its glyphs that get used. */
    PDType0Font embedIn(PDDocument document) throws IOException {
        return PDType0Font.load(document, face, true);
    }

    /** Whether it has a glyph for each character. */
    boolean canWrite(String text) {
        return text.codePoints().allMatch(character -> glyphs.getGlyphId(character) != 0);
    }

    /**
     * How far a text runs. Characters it has no glyph for count as wide as the letters are high.
     *
     * @param points size of the letters
     */
    double widthMm(String text, double points) {
        double units = text.codePoints().mapToDouble(this::advance).sum();
        return units / unitsPerEm * points * MM_PER_POINT;
    }

    private double advance(int character) {
        int glyph = glyphs.getGlyphId(character);
        try {
            return glyph == 0 ? unitsPerEm : face.getAdvanceWidth(glyph);
        } catch (IOException e) {
            throw new UncheckedIOException("the face " + RESOURCE + " cannot be read", e);
        }
    }
}
