package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.show.report.Handbook;
import handspan.show.report.HandbookTopic;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows the handbook, a word of its glossary, or how a verb is used. */
@Command(
        name = "help",
        description = "the handbook: its topics, one of them, what a word means, or the options of a verb",
        footer = {"", "'handspan help' lists the topics."})
final class HelpVerb extends Verb {
    private static final int USUAL_COLUMNS = 80;
    private static final int LEAST_COLUMNS = 20;

    /** Longer lines are hard to read (common practice in typesetting). */
    private static final int MOST_COLUMNS = 100;

    @Parameters(arity = "0..*", paramLabel = "TOPIC", description = "a topic, a word or a verb")
    @Nullable
    List<String> asked;

    @Option(
            names = "--width",
            paramLabel = "COLUMNS",
            description = "characters a line, from 20 (default: what COLUMNS says, up to 100, else 80)")
    @Nullable
    Integer width;

    @Override
    int run(Talk talk) throws UsageException, IOException {
        int columns = columns(width, System.getenv("COLUMNS"));
        Handbook handbook = Handbook.read();
        if (asked == null) {
            list(talk, handbook);
            return Exit.DONE;
        }
        String words = String.join(" ", asked);
        Optional<HandbookTopic> page = handbook.topic(words);
        Optional<CommandLine> verb = verb(asked);
        if (page.isPresent()) {
            show(talk, page.get(), page.get().text(columns));
            verb.ifPresent(named -> talk.say("\nOptions: 'handspan " + words + " --help'"));
        } else if (verb.isPresent()) {
            String usage = verb.get().getUsageMessage(CommandLine.Help.Ansi.OFF);
            String name = "handspan " + words;
            show(talk, new HandbookTopic(words, name, name, usage), usage);
        } else {
            HandbookTopic entry = handbook.word(words).orElseThrow(() -> unknown(words, handbook));
            show(talk, entry, entry.text(columns));
        }
        return Exit.DONE;
    }

    /** How wide a line may be: as told, else as wide as the terminal says it is, else as usual. */
    static int columns(@Nullable Integer told, @Nullable String environment) throws UsageException {
        if (told != null) {
            if (told < LEAST_COLUMNS) {
                throw new UsageException("width of " + told + " characters (20 or more): give a wider one");
            }
            return told;
        }
        try {
            int columns = environment == null ? USUAL_COLUMNS : Integer.parseInt(environment.strip());
            return columns < LEAST_COLUMNS ? USUAL_COLUMNS : Math.min(MOST_COLUMNS, columns);
        } catch (NumberFormatException e) {
            return USUAL_COLUMNS;
        }
    }

    private Optional<CommandLine> verb(List<String> names) {
        CommandLine found = spec.root().commandLine();
        for (String name : names) {
            found = found == null ? null : found.getSubcommands().get(name);
        }
        return Optional.ofNullable(found);
    }

    private List<String> verbs() {
        return new ArrayList<>(spec.root().subcommands().keySet());
    }

    private UsageException unknown(String words, Handbook handbook) {
        List<String> topics =
                handbook.topics().stream().map(HandbookTopic::name).toList();
        List<String> known = new ArrayList<>(topics);
        verbs().stream().filter(verb -> !known.contains(verb)).forEach(known::add);
        handbook.glossary().stream()
                .map(HandbookTopic::name)
                .filter(word -> !known.contains(word))
                .forEach(known::add);
        List<String> near = Handbook.nearest(words, known);
        return new UsageException("no topic, verb or word '" + words + "' ("
                + (near.isEmpty() ? "topics: " + String.join(", ", topics) : "near: " + String.join(", ", near))
                + "): 'handspan help' lists the topics");
    }

    private static void show(Talk talk, HandbookTopic page, String text) {
        ObjectNode result = Talk.node();
        result.put("topic", page.name());
        result.put("title", page.title());
        result.put("text", page.markdown());
        if (!talk.isJson()) {
            talk.say(text.stripTrailing());
        }
        talk.object(result);
    }

    private void list(Talk talk, Handbook handbook) {
        ObjectNode result = Talk.node();
        ArrayNode topics = result.putArray("topics");
        int widest = handbook.topics().stream()
                .mapToInt(topic -> topic.name().length())
                .max()
                .orElse(0);
        StringBuilder text = new StringBuilder("The handbook. 'handspan help TOPIC' shows one of\n\n");
        for (HandbookTopic topic : handbook.topics()) {
            topics.addObject()
                    .put("topic", topic.name())
                    .put("title", topic.title())
                    .put("about", topic.about());
            text.append("  ")
                    .append(topic.name())
                    .append(" ".repeat(widest + 2 - topic.name().length()))
                    .append(topic.about())
                    .append('\n');
        }
        text.append("\n'handspan help WORD' says what a word means, 'handspan help VERB' what a verb takes;\n")
                .append("verbs: ")
                .append(String.join(", ", verbs()));
        if (!talk.isJson()) {
            talk.say(text.toString());
        }
        talk.object(result);
    }
}
