package handspan.show.report;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The handbook that comes with the program: pages in Markdown, one for each topic. Immutable.
 *
 * @param topics in the order in which an evening comes by them, then those for looking up
 */
public record Handbook(List<HandbookTopic> topics) {
    /** Pages that there are, by name. */
    private static final List<String> NAMES = List.of(
            "first-evening",
            "new-venue",
            "sensors",
            "faults",
            "safety",
            "window",
            "osc",
            "files",
            "commands",
            "words",
            "formulas");

    private static final String GLOSSARY = "words";
    private static final String FOLDER = "/handspan/handbook/";

    /** Words as much alike as this are offered where one was written wrong: a letter in three may be another. */
    private static final double ALIKE01 = 0.34;

    private static final int MOST_OFFERED = 3;

    /** Copies the list. */
    public Handbook {
        topics = List.copyOf(topics);
    }

    /**
     * Reads the handbook from where the program lies.
     *
     * @throws IOException when a page is missing or can't be read
     */
    public static Handbook read() throws IOException {
        List<HandbookTopic> topics = new ArrayList<>();
        for (String name : NAMES) {
            try (InputStream in = Handbook.class.getResourceAsStream(FOLDER + name + ".md")) {
                if (in == null) {
                    throw new FileNotFoundException("handbook page '" + name + "' is not in the program");
                }
                topics.add(HandbookTopic.of(name, new String(in.readAllBytes(), StandardCharsets.UTF_8)));
            }
        }
        return new Handbook(topics);
    }

    /** The page of a name. */
    public Optional<HandbookTopic> topic(String name) {
        return topics.stream().filter(topic -> topic.name().equals(name)).findFirst();
    }

    /** What the glossary says of a word, as a page of its own; case does not matter. */
    public Optional<HandbookTopic> word(String word) {
        return glossary().stream()
                .filter(entry -> entry.name().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** Every word of the glossary with what it says of it. */
    public List<HandbookTopic> glossary() {
        List<HandbookTopic> entries = new ArrayList<>();
        for (String paragraph :
                topic(GLOSSARY).map(HandbookTopic::markdown).orElse("").split("\n\n", -1)) {
            int end = paragraph.startsWith("**") ? paragraph.indexOf("**", 2) : -1;
            if (end > 0) {
                String word = paragraph.substring(2, end);
                entries.add(new HandbookTopic(word.toLowerCase(Locale.ROOT), word, word, paragraph + "\n"));
            }
        }
        return entries;
    }

    /**
     * The words among some that are most like a wrong one, the most like first, at most three.
     *
     * <p>By edit distance: V. I. Levenshtein, Binary codes capable of correcting deletions, insertions, and reversals,
     * Soviet Physics Doklady 10 (1966) 707-710. What begins with the wrong word, or is within it, counts as near.
     */
    public static List<String> nearest(String wrong, List<String> words) {
        String asked = wrong.toLowerCase(Locale.ROOT);
        return words.stream()
                .filter(word -> far(asked, word) <= Math.max(1, ALIKE01 * word.length()))
                .sorted(java.util.Comparator.comparingInt(word -> far(asked, word)))
                .limit(MOST_OFFERED)
                .toList();
    }

    private static int far(String asked, String word) {
        boolean part = asked.length() > 2 && (word.contains(asked) || asked.contains(word));
        return part ? 0 : distance(asked, word);
    }

    /** Letters to be put in, left out or changed. */
    static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int before = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int changed = before + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                before = row[j];
                row[j] = Math.min(changed, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[to.length()];
    }
}
