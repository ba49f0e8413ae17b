package handspan.show.report;

import handspan.number.units.Figures;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.FontMetrics;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Draws charts as SVG to stand within an HTML page (SVG 1.1): vectors and text, no pictures. Letters are measured by
 * the face that is embedded in PDFs, as wide as the usual faces of browsers.
 */
final class ChartSvg {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final int DECIMALS = 2;

    private final SheetFont face = SheetFont.load();
    private final Font font;

    /** Reads the face. */
    ChartSvg() {
        try (InputStream in = SheetFont.resource()) {
            font = Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (FontFormatException | IOException e) {
            throw new UncheckedIOException(new IOException("the face of all sheets cannot be read", e));
        }
    }

    /**
     * Draws.
     *
     * @param chart what
     * @param place of the drawing
     */
    String draw(JFreeChart chart, Place place) {
        Document document = document();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(DECIMALS);
        context.setIDGenerator(new Names(place.id()));
        SVGGraphics2D graphics = new OneFace(context, font);
        chart.draw(graphics, new Rectangle2D.Double(0, 0, place.widthUnits(), place.heightUnits()));
        Element root = graphics.getRoot();
        fix(root, 0);
        // an empty one that bears the same name in every drawing
        Node common = root.getElementsByTagName("defs").item(0);
        if (common instanceof Element defs && !defs.hasChildNodes()) {
            defs.getParentNode().removeChild(defs);
        }
        root.setAttribute("viewBox", "0 0 " + Math.round(place.widthUnits()) + " " + Math.round(place.heightUnits()));
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", place.id() + "-title " + place.id() + "-words");
        root.setAttribute("class", place.theme());
        said(document, root, "desc", place.id() + "-words", place.words());
        said(document, root, "title", place.id() + "-title", place.title());
        return text(root);
    }

    /**
     * A place for a drawing.
     *
     * @param id told apart from those of all other drawings of the page
     * @param theme class of the drawing
     * @param widthUnits how wide it takes its place to be; its letters have 12 units and more
     * @param heightUnits how high
     * @param title for those who can't see it, a few words
     * @param words what it shows
     */
    record Place(String id, String theme, double widthUnits, double heightUnits, String title, String words) {}

    private static Document document() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(SVG, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java makes no XML", e);
        }
    }

    private static void said(Document document, Element root, String name, String id, String words) {
        Element element = document.createElementNS(SVG, name);
        element.setAttribute("id", id);
        element.setTextContent(words);
        root.insertBefore(element, root.getFirstChild());
    }

    private static String text(Element root) {
        try {
            Transformer transformer = TransformerFactory.newInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            StringWriter out = new StringWriter();
            transformer.transform(new DOMSource(root), new StreamResult(out));
            return out.toString();
        } catch (TransformerException e) {
            throw new IllegalStateException("a drawing that can't be written", e);
        }
    }

    /** Ties each text to the width it was measured with, so that it fits whatever face a browser writes it in. */
    private void fix(Element element, double inheritedSize) {
        String size = element.getAttribute("font-size");
        double own = size.isEmpty() ? inheritedSize : Double.parseDouble(size.replace("px", ""));
        if (element.getTagName().equals("text") && !element.getTextContent().isBlank()) {
            String words = element.getTextContent().stripTrailing();
            element.setTextContent(words);
            double width = face.widthMm(words, own) / VectorPdf.MM_PER_POINT;
            element.setAttribute("textLength", Figures.text(width, DECIMALS));
            element.setAttribute("lengthAdjust", "spacingAndGlyphs");
        }
        NodeList children = element.getChildNodes();
        for (int i = 0; i < children.getLength(); i++) {
            if (children.item(i) instanceof Element child) {
                fix(child, own);
            }
        }
    }

    /** Names that begin with the drawing's own. */
    private static final class Names extends SVGIDGenerator {
        private final String id;
        private int count;

        Names(String id) {
            this.id = id;
        }

        @Override
        public String generateID(String prefix) {
            count++;
            return id + "-" + prefix + count;
        }
    }

    /** Writes in one face, whatever is asked for; only the size counts. */
    private static final class OneFace extends SVGGraphics2D {
        private final Font font;

        OneFace(SVGGeneratorContext context, Font font) {
            super(context, false);
            this.font = font;
        }

        private OneFace(OneFace other) {
            super(other);
            this.font = other.font;
        }

        @Override
        public java.awt.Graphics create() {
            return new OneFace(this);
        }

        @Override
        public void setFont(Font asked) {
            super.setFont(font.deriveFont(asked.getSize2D()));
        }

        @Override
        public FontMetrics getFontMetrics(Font asked) {
            return super.getFontMetrics(font.deriveFont(asked.getSize2D()));
        }
    }
}
