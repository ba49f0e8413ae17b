package handspan.show.report;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.FontMetrics;
import java.io.IOException;
import java.io.InputStream;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;

/**
 * Text that is drawn becomes text in the PDF, in the one face that is embedded, whatever font was asked for; only its
 * size counts. Text with characters the face lacks is drawn as shapes by whatever font the machine has for them.
 */
final class EmbeddedText extends PdfBoxGraphics2DFontTextDrawer {
    private final SheetFont face;
    private final PDFont embedded;
    private @Nullable Font measuring;

    EmbeddedText(SheetFont face, PDFont embedded) {
        this.face = face;
        this.embedded = embedded;
    }

    @Override
    public boolean canDrawText(AttributedCharacterIterator iterator, IFontTextDrawerEnv env) {
        StringBuilder text = new StringBuilder();
        for (char c = iterator.first(); c != CharacterIterator.DONE; c = iterator.next()) {
            text.append(c);
        }
        return face.canWrite(text.toString());
    }

    /** Measures by the face that will be written, so that charts leave their labels the room they take. */
    @Override
    public FontMetrics getFontMetrics(Font font, IFontTextDrawerEnv env) throws IOException, FontFormatException {
        return super.getFontMetrics(measuring().deriveFont(Font.PLAIN, font.getSize2D()), env);
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
        return embedded;
    }

    private Font measuring() throws IOException, FontFormatException {
        Font known = measuring;
        if (known == null) {
            try (InputStream in = SheetFont.resource()) {
                known = Font.createFont(Font.TRUETYPE_FONT, in);
            }
            measuring = known;
        }
        return known;
    }
}
