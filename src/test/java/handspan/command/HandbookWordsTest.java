package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.SensorKind;
import handspan.music.send.PlayState;
import handspan.music.send.SendValue;
import handspan.music.tuning.Snap;
import handspan.room.StepKind;
import handspan.room.budget.RoomCheck;
import handspan.room.budget.VenueLine;
import handspan.show.report.HandbookTopic;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Model.CommandSpec;

/** The handbook speaks of what there is, and of all of it: verbs, options, messages, keys, topics. */
class HandbookWordsTest {
    private static final Path SOURCES = Path.of("src", "main", "java", "handspan");
    private static final String EVERY = "Options of all verbs";
    private static final String SOURCE = "Options of verbs with a source";

    private static String all() {
        return HandbookPages.handbook().topics().stream()
                .map(HandbookTopic::markdown)
                .collect(Collectors.joining("\n"));
    }

    private static Set<String> optionsListed(String section) {
        return HandbookPages.rows(section).stream()
                .flatMap(row -> HandbookPages.options(row.get(0)).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyVerbHasItsOptionsInTheCommandsTopicAndNoOthers() {
        Map<String, String> sections = HandbookPages.sections(HandbookPages.page("commands"));
        Map<String, CommandSpec> verbs = HandbookPages.verbs();
        Set<String> every = optionsListed(sections.getOrDefault(EVERY, ""));
        Set<String> source = optionsListed(sections.getOrDefault(SOURCE, ""));
        Set<String> headings = new TreeSet<>(sections.keySet());
        headings.removeAll(List.of(EVERY, SOURCE));
        assertEquals(new TreeSet<>(verbs.keySet()), headings);
        verbs.forEach((name, verb) -> {
            Set<String> has = HandbookPages.options(verb);
            Set<String> told = new TreeSet<>(optionsListed(sections.getOrDefault(name, "")));
            if (has.contains("--baud")) {
                told.addAll(source);
            }
            every.stream().filter(has::contains).forEach(told::add);
            assertEquals(has, told, name);
        });
    }

    @Test
    void noPageNamesAnOptionThatThereIsNot() {
        Set<String> known = HandbookPages.verbs().values().stream()
                .flatMap(verb -> HandbookPages.options(verb).stream())
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> named = HandbookPages.options(all());
        named.removeAll(known);
        assertEquals(new TreeSet<String>(), named);
    }

    @Test
    void noPageNamesAVerbOrATopicThatThereIsNot() {
        Map<String, CommandSpec> verbs = HandbookPages.verbs();
        List<String> topics = HandbookPages.handbook().topics().stream()
                .map(HandbookTopic::name)
                .toList();
        for (String code : HandbookPages.code(all())) {
            String[] words = code.split(" ", -1);
            if (words.length > 1 && words[0].equals("handspan") && !words[1].matches("[A-Z]+")) {
                assertTrue(verbs.containsKey(words[1]), code);
                if (words[1].equals("help") && words.length > 2 && !words[2].matches("[A-Z]+")) {
                    assertTrue(topics.contains(words[2]), code);
                }
            }
        }
    }

    /** What "it says", and what it tells to do in its own words, stands in the program, but for names and figures. */
    @Test
    void messagesInTheFaultsTopicAreTheProgramsOwn() throws IOException {
        String program = sources();
        int messages = 0;
        List<String> missing = new ArrayList<>();
        for (String line : tablesOf("it says", HandbookPages.page("faults"))) {
            List<String> cells = HandbookPages.rows(line).get(0);
            List<String> quoted = new ArrayList<>(HandbookPages.code(cells.get(0)));
            HandbookPages.code(cells.get(2)).stream()
                    .filter(code -> code.contains(" ") && !code.startsWith("handspan") && !code.contains("--"))
                    .forEach(quoted::add);
            for (String message : quoted) {
                messages++;
                for (String piece : message.split("\\.\\.\\.", -1)) {
                    if (!program.contains(piece.strip())) {
                        missing.add("'" + piece + "' of '" + message + "'");
                    }
                }
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(messages > 50, "only " + messages);
    }

    /** Table rows below a heading row that begins with these words. */
    private static List<String> tablesOf(String heading, String markdown) {
        List<String> rows = new ArrayList<>();
        boolean wanted = false;
        for (String line : markdown.lines().toList()) {
            if (!line.startsWith("|")) {
                wanted = false;
            } else if (line.startsWith("| " + heading + " |")) {
                wanted = true;
            } else if (wanted && !line.startsWith("|---")) {
                rows.add(line);
            }
        }
        return rows;
    }

    /** All of the program with its literals joined where they are broken over lines. */
    private static String sources() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                all.append(Files.readString(file));
            }
        }
        return Pattern.compile("\"\\s*\\+\\s*\"").matcher(all).replaceAll("");
    }

    /** Keys as the scenes bind them: {@code "ctrl ENTER"}. */
    @Test
    void theWindowTopicHasTheKeysOfTheWindow() throws IOException {
        Set<String> bound = new TreeSet<>();
        Pattern key = Pattern.compile(
                "\"((?:(?:ctrl|shift) )+[A-Z0-9_]+|F\\d+|[HR]|ESCAPE|BACK_SPACE|PAGE_(?:UP|DOWN)|UP|DOWN|LEFT|RIGHT|HOME)\"");
        for (String folder : List.of("scene", "window")) {
            try (Stream<Path> files = Files.walk(SOURCES.resolve("show").resolve(folder))) {
                for (Path file :
                        files.filter(path -> path.toString().endsWith(".java")).toList()) {
                    if (!file.endsWith("Offer.java")) {
                        key.matcher(Files.readString(file))
                                .results()
                                .forEach(found -> bound.add(written(found.group(1))));
                    }
                }
            }
        }
        Set<String> told = HandbookPages.rows(HandbookPages.page("window")).stream()
                .flatMap(row -> HandbookPages.code(String.join(" ", row)).stream())
                .filter(word -> !word.startsWith("Alt+") && !word.equals("Enter"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(bound, told);
    }

    private static String written(String key) {
        String[] parts = key.split(" ", -1);
        List<String> words = new ArrayList<>();
        for (String part : parts) {
            words.add(
                    switch (part) {
                        case "ESCAPE" -> "Esc";
                        case "BACK_SPACE" -> "Backspace";
                        case "UP" -> "\u2191";
                        case "DOWN" -> "\u2193";
                        case "LEFT" -> "\u2190";
                        case "RIGHT" -> "\u2192";
                        default ->
                            part.length() <= 3 && part.matches("[A-Z0-9]+")
                                    ? part
                                    : part.substring(0, 1).toUpperCase(Locale.ROOT)
                                            + part.substring(1)
                                                    .toLowerCase(Locale.ROOT)
                                                    .replace('_', ' ');
                    });
        }
        return String.join("+", words);
    }

    @Test
    void theGlossaryRunsFromAToZ() {
        List<String> words = HandbookPages.handbook().glossary().stream()
                .map(HandbookTopic::name)
                .toList();
        assertEquals(
                words.stream().distinct().sorted(HandbookWordsTest::byLetters).toList(), words);
        assertTrue(words.size() > 80, "" + words.size());
    }

    /** Ends of a zone and the open light stand under two words each. */
    @Test
    void everyWordOfTheProgramsClosedSetsIsInTheGlossary() {
        List<String> known = HandbookPages.handbook().glossary().stream()
                .map(HandbookTopic::name)
                .toList();
        List<String> missing = Stream.of(
                        Arrays.stream(Snap.values()).map(Snap::word),
                        Arrays.stream(SensorKind.values()).map(SensorKind::word),
                        Arrays.stream(PlayState.values()).map(PlayState::word),
                        Arrays.stream(StepKind.values()).map(StepKind::word),
                        Arrays.stream(handspan.instrument.survey.Verdict.values())
                                .map(handspan.instrument.survey.Verdict::word),
                        Arrays.stream(RoomCheck.Verdict.values()).map(RoomCheck.Verdict::words),
                        Arrays.stream(VenueLine.Grade.values()).map(VenueLine.Grade::words))
                .flatMap(words -> words)
                .filter(word -> known.stream().noneMatch(entry -> (entry + " ").startsWith(word + " ")))
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void theAnswersOfACheckStandInTheVenueTopic() {
        List<String> answers = HandbookPages.rows(HandbookPages.page("new-venue")).stream()
                .map(row -> row.get(0))
                .toList();
        assertEquals(
                Arrays.stream(RoomCheck.Verdict.values())
                        .map(RoomCheck.Verdict::words)
                        .toList(),
                answers);
    }

    /** What is sent unless told otherwise, with its type tags. */
    @Test
    void addressesAndTypesInTheOscTopicAreTheUsualOnes() {
        List<String> told = HandbookPages.rows(HandbookPages.page("osc")).stream()
                .filter(row -> row.size() == 5 && row.get(0).startsWith("`/NAME/"))
                .map(row -> row.get(0).replace("`/NAME/", "").replace("`", "") + " "
                        + row.get(1).replace(" ", ""))
                .toList();
        assertEquals(
                SendValue.usual().stream()
                        .map(value -> value.word() + " " + value.types())
                        .toList(),
                told);
    }

    private static int byLetters(String one, String other) {
        return letters(one).compareTo(letters(other));
    }

    private static String letters(String word) {
        return word.replaceAll("[^a-z0-9]", "");
    }
}
