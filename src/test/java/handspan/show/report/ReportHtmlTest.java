package handspan.show.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Figures;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Reports as HTML, read back as the XML that they are as well; the files stay in {@code target/pictures}. */
class ReportHtmlTest {
    private static final Path FOLDER = Path.of("target", "pictures");

    /** Whatever makes a browser ask for something else (HTML Living Standard; SVG 1.1; CSS url() and import). */
    private static final Pattern LOADS = Pattern.compile(
            "<(script|link|img|iframe|object|embed|image|use|base)\\b|\\b(src|href|srcset|action|xlink:href)=|@import"
                    + "|url\\((?!#|&quot;#)|javascript:");

    private static final List<Written> WRITTEN = writeAll();

    /** A report that was written. */
    record Written(String name, RoomReport report, String html) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static List<Written> writeAll() {
        try {
            Files.createDirectories(FOLDER);
            List<Written> written = new ArrayList<>();
            for (var room : ReportRooms.allReports().entrySet()) {
                Path file = FOLDER.resolve("report-" + room.getKey().replaceAll("[^A-Za-z0-9]+", "-") + ".html");
                RoomReport report = room.getValue();
                assertEquals(1, ReportFile.of(file).write(report, Paper.A4));
                written.add(new Written(room.getKey(), report, Files.readString(file)));
            }
            return written;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static List<Written> written() {
        return WRITTEN;
    }

    private static Document parsed(Written written) throws IOException {
        try {
            DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            return builder.parse(
                    new ByteArrayInputStream(written.html.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        } catch (SAXException | ParserConfigurationException e) {
            throw new AssertionError(written.name, e);
        }
    }

    private static List<Element> all(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    @ParameterizedTest
    @MethodSource("written")
    void aPageTellsItsLanguageAndItsTitle(Written written) throws IOException {
        Document page = parsed(written);
        assertEquals("en", page.getDocumentElement().getAttribute("lang"));
        assertEquals(
                "Handspan report: " + written.report.title(),
                all(page, "title").get(0).getTextContent());
        assertTrue(written.html.startsWith("<!DOCTYPE html>\n"));
    }

    @ParameterizedTest
    @MethodSource("written")
    void nothingIsLoadedAndNothingRuns(Written written) {
        Matcher load = LOADS.matcher(written.html);
        assertFalse(load.find(), () -> "loads: " + load.group());
        // what is left of addresses are names of XML languages
        assertFalse(written.html
                .replaceAll("xmlns(:[a-z]+)?=\"http://www\\.w3\\.org/[^\"]*\"", "")
                .contains("http"));
    }

    @ParameterizedTest
    @MethodSource("written")
    void allThatIsSaidIsThere(Written written) throws IOException {
        String text = parsed(written).getDocumentElement().getTextContent();
        for (String words : RoomReportTest.said(written.report)) {
            assertTrue(text.contains(words), words);
        }
    }

    /** Rows of the table of notes against the figures themselves, rounded as said in the heads. */
    @ParameterizedTest
    @MethodSource("written")
    void theTableOfNotesHasTheFiguresOfTheNotes(Written written) throws IOException {
        Element table = all(parsed(written), "table").get(0);
        NodeList rows = ((Element) table.getElementsByTagName("tbody").item(0)).getElementsByTagName("tr");
        assertEquals(written.report.notes().size(), rows.getLength());
        for (int i = 0; i < rows.getLength(); i++) {
            NoteFigures note = written.report.notes().get(i);
            Element row = (Element) rows.item(i);
            Element name = (Element) row.getElementsByTagName("th").item(0);
            NodeList cells = row.getElementsByTagName("td");
            assertEquals("row", name.getAttribute("scope"));
            assertEquals(note.name(), name.getTextContent());
            assertEquals(Figures.text(note.hz(), 2), cells.item(0).getTextContent());
            assertEquals(Figures.text(note.atMm(), 1), cells.item(1).getTextContent());
            assertEquals(note.widthMm(), number(cells.item(2).getTextContent()), 0.0501);
            assertEquals(note.standardCents(), number(cells.item(4).getTextContent()), 0.0501);
            assertEquals(note.expandedCents(), number(cells.item(5).getTextContent()), 0.0501);
        }
    }

    private static double number(String text) {
        return Double.parseDouble(text.replaceAll("[^0-9.]", ""));
    }

    @ParameterizedTest
    @MethodSource("written")
    void headsOfColumnsSaySo(Written written) throws IOException {
        Document page = parsed(written);
        for (Element table : all(page, "table")) {
            NodeList heads = ((Element) table.getElementsByTagName("thead").item(0)).getElementsByTagName("th");
            assertTrue(heads.getLength() > 1);
            for (int i = 0; i < heads.getLength(); i++) {
                assertEquals("col", ((Element) heads.item(i)).getAttribute("scope"));
            }
            assertEquals(1, table.getElementsByTagName("caption").getLength());
        }
    }

    @ParameterizedTest
    @MethodSource("written")
    void eachChartIsDrawnForDayAndNightAndSaysWhatItShows(Written written) throws IOException {
        long charts = written.report.parts().stream()
                .filter(ReportPart.Chart.class::isInstance)
                .count();
        List<Element> drawings = all(parsed(written), "svg");
        assertEquals(2 * charts, drawings.size());
        for (Element svg : drawings) {
            assertEquals("img", svg.getAttribute("role"));
            assertFalse(
                    svg.getElementsByTagName("title").item(0).getTextContent().isBlank());
            assertFalse(
                    svg.getElementsByTagName("desc").item(0).getTextContent().isBlank());
            assertTrue(svg.getElementsByTagName("path").getLength() > 5);
            assertTrue(svg.getElementsByTagName("text").getLength() > 5);
        }
    }

    /** Names are told apart over the whole page, and whatever refers to one finds it. */
    @ParameterizedTest
    @MethodSource("written")
    void noNameIsGivenTwiceAndNoneIsMissing(Written written) {
        Set<String> names = new HashSet<>();
        Matcher given = Pattern.compile("\\bid=\"([^\"]+)\"").matcher(written.html);
        while (given.find()) {
            assertTrue(names.add(given.group(1)), given.group(1));
        }
        Matcher asked = Pattern.compile("url\\(#([^)]+)\\)").matcher(written.html);
        while (asked.find()) {
            assertTrue(names.contains(asked.group(1)), asked.group(1));
        }
    }
}
