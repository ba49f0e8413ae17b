package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import handspan.show.report.HandbookTopic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code handspan help}. */
class HelpVerbTest {
    @Test
    void withoutATopicItListsAllWithWhatTheyAreForAndTheVerbs() {
        Cli cli = Cli.run("help");
        assertEquals(0, cli.exitCode(), cli.err());
        for (HandbookTopic topic : HandbookPages.handbook().topics()) {
            assertTrue(
                    cli.out().matches("(?s).*  " + topic.name() + " +\\Q" + topic.about() + "\\E\n.*"), topic.name());
        }
        HandbookPages.verbs().keySet().stream()
                .filter(verb -> !verb.contains(" "))
                .forEach(verb -> assertTrue(cli.out().contains(verb), verb));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80, 100})
    void aTopicIsWrappedButItsCommandsAreNot(int width) {
        for (HandbookTopic topic : HandbookPages.handbook().topics()) {
            Cli cli = Cli.run("help", topic.name(), "--width", "" + width);
            assertEquals(0, cli.exitCode(), cli.err());
            assertTrue(
                    cli.out()
                            .startsWith(topic.title() + "\n"
                                    + "=".repeat(topic.title().length()) + "\n"),
                    cli.out());
            HandbookPages.commands(topic.markdown())
                    .forEach(command -> assertTrue(cli.out().contains("    " + command + "\n"), command));
            cli.out()
                    .lines()
                    .filter(line -> line.length() > width)
                    .forEach(line ->
                            assertTrue(line.startsWith("    ") || !line.strip().contains(" "), width + ": " + line));
        }
    }

    @Test
    void jsonHasTopicTitleAndText() {
        JsonNode page = Cli.run("help", "safety", "--json").last();
        assertEquals("safety", page.get("topic").asText());
        assertEquals("Safety", page.get("title").asText());
        assertEquals(HandbookPages.page("safety"), page.get("text").asText());
        JsonNode list = Cli.run("help", "--json").last();
        assertEquals(
                HandbookPages.handbook().topics().size(), list.get("topics").size());
        assertEquals("first-evening", list.get("topics").get(0).get("topic").asText());
    }

    @Test
    void aVerbIsAnsweredWithItsUsageAndAVerbOfTwoWordsToo() {
        assertTrue(Cli.run("help", "survey").out().startsWith("Usage: handspan survey"));
        assertTrue(Cli.run("help", "rooms", "show").out().startsWith("Usage: handspan rooms show"));
        assertTrue(Cli.run("help", "window").out().contains("'handspan window --help'"));
        assertTrue(Cli.run("help", "--help").out().startsWith("Usage: handspan help"));
    }

    @Test
    void aWordIsAnsweredFromTheGlossary() {
        Cli cli = Cli.run("help", "Jitter");
        assertEquals(0, cli.exitCode(), cli.err());
        assertTrue(cli.out().startsWith("jitter (cents): "), cli.out());
        assertTrue(Cli.run("help", "play", "zone").out().startsWith("play zone (mm): "));
    }

    @Test
    void anUnknownTopicIsAUsageErrorThatNamesTheNearest() {
        Cli cli = Cli.run("help", "sensor");
        assertEquals(2, cli.exitCode());
        assertTrue(cli.err().contains("no topic, verb or word 'sensor' (near: sensors"), cli.err());
        assertTrue(Cli.run("help", "formulae").err().contains("near: formulas"));
        Cli far = Cli.run("help", "xylophone");
        assertEquals(2, far.exitCode());
        assertTrue(far.err().contains("topics: first-evening, "), far.err());
        assertFalse(far.err().contains("\tat "));
    }

    @Test
    void theWidthIsAsToldElseTheTerminalsElse80() throws UsageException {
        assertEquals(55, HelpVerb.columns(55, "120"));
        assertEquals(72, HelpVerb.columns(null, "72"));
        assertEquals(100, HelpVerb.columns(null, "240"));
        assertEquals(80, HelpVerb.columns(null, null));
        assertEquals(80, HelpVerb.columns(null, "wide"));
        assertEquals(80, HelpVerb.columns(null, "0"));
        assertThrows(UsageException.class, () -> HelpVerb.columns(19, null));
    }
}
