package handspan.show.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
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

    /** Breaks a text between words; a word that is too long for a line has one to itself and is cut short. */
    List<String> broken(String text, double widthMm, double points) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && widthMm(longer, points) > widthMm) {
                lines.add(shortened(line, widthMm, points));
                longer = word;
            }
            line = longer;
        }
        lines.add(shortened(line, widthMm, points));
        return lines;
    }

    /** The text if it fits, else as much of its beginning as does, and dots. */
    String shortened(String text, double widthMm, double points) {
        if (widthMm(text, points) <= widthMm) {
            return text;
        }
        int end = text.length();
        while (end > 0 && widthMm(text.substring(0, end) + "...", points) > widthMm) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end) + "...";
    }
}
