package handspan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** What is packed into the jar must come with its licence. */
class PackedLicencesTest {
    private static final String FOLDER = "/META-INF/licenses/";

    private static String text(String name) throws IOException {
        try (InputStream in = PackedLicencesTest.class.getResourceAsStream(FOLDER + name)) {
            assertNotNull(in, name);
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static String child(Element dependency, String name) {
        NodeList found = dependency.getElementsByTagName(name);
        return found.getLength() == 0 ? "" : found.item(0).getTextContent();
    }

    /** The dependencies of the program itself, not those of its tests or of the build. */
    private static List<String> packed() throws Exception {
        Element project = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(Path.of("pom.xml").toFile())
                .getDocumentElement();
        List<String> names = new ArrayList<>();
        NodeList all = project.getElementsByTagName("dependency");
        for (int i = 0; i < all.getLength(); i++) {
            Element dependency = (Element) all.item(i);
            boolean ofTheProject = dependency.getParentNode().getParentNode().isSameNode(project);
            if (ofTheProject && !child(dependency, "scope").equals("test")) {
                names.add(child(dependency, "artifactId"));
            }
        }
        return names;
    }

    @Test
    void eachPackedLibraryIsNamed() throws Exception {
        List<String> packed = packed();
        assertTrue(packed.size() > 8, packed.toString());
        String said = text("packed.txt");
        for (String name : packed) {
            assertTrue(
                    Pattern.compile("\\b" + Pattern.quote(name) + "\\b")
                            .matcher(said)
                            .find(),
                    name);
        }
    }

    @Test
    void eachTextThatIsNamedIsThere() throws IOException {
        List<String> texts = Pattern.compile("[a-z0-9.-]+\\.txt")
                .matcher(text("packed.txt"))
                .results()
                .map(MatchResult::group)
                .distinct()
                .toList();
        assertEquals(5, texts.size(), texts.toString());
        for (String name : texts) {
            assertTrue(text(name).length() > 1000, name);
        }
    }

    @Test
    void theProgramsOwnLicenceIsAmongThem() throws IOException {
        assertEquals(Files.readString(Path.of("LICENSE")), text("apache-2.0.txt"));
    }
}
