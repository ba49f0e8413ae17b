package handspan.command;

import handspan.show.report.Handbook;
import handspan.show.report.HandbookTopic;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** What tests want to know of the handbook's pages, and of the verbs that they speak of. */
final class HandbookPages {
    private static final Pattern OPTION = Pattern.compile("(?<![\\w-])--[a-z][a-z0-9-]+");
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    private HandbookPages() {}

    static Handbook handbook() {
        try {
            return Handbook.read();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String page(String name) {
        return handbook().topic(name).map(HandbookTopic::markdown).orElseThrow();
    }

    /** Lines of fenced blocks that are commands. */
    static List<String> commands(String markdown) {
        List<String> commands = new ArrayList<>();
        boolean fenced = false;
        for (String line : markdown.lines().toList()) {
            if (line.startsWith("```")) {
                fenced = !fenced;
            } else if (fenced && line.startsWith("handspan ")) {
                commands.add(line);
            }
        }
        return commands;
    }

    /** Words of the form {@code --word}. */
    static Set<String> options(String text) {
        Set<String> options = new TreeSet<>();
        Matcher matcher = OPTION.matcher(text);
        while (matcher.find()) {
            options.add(matcher.group());
        }
        return options;
    }

    /** What stands between backticks. */
    static List<String> code(String text) {
        return CODE.matcher(text).results().map(match -> match.group(1)).toList();
    }

    /** The text below each heading of the second and third level, by heading. */
    static Map<String, String> sections(String markdown) {
        Map<String, String> sections = new LinkedHashMap<>();
        for (String part : markdown.split("\n(?=###? )", -1)) {
            int end = part.indexOf('\n');
            if (part.startsWith("##")) {
                sections.put(part.substring(0, end).replaceFirst("#+ ", ""), part.substring(end));
            }
        }
        return sections;
    }

    /** The cells of all table rows but headings and rules. */
    static List<List<String>> rows(String markdown) {
        List<List<String>> rows = new ArrayList<>();
        List<String> lines = markdown.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            boolean heading = i + 1 < lines.size() && lines.get(i + 1).startsWith("|---");
            if (lines.get(i).startsWith("|") && !lines.get(i).startsWith("|---") && !heading) {
                String[] cells = lines.get(i).split("(?<!\\\\)\\|", -1);
                rows.add(Arrays.stream(cells, 1, cells.length - 1)
                        .map(String::strip)
                        .toList());
            }
        }
        return rows;
    }

    /** Every verb by its words, for example {@code rooms show}. */
    static Map<String, CommandSpec> verbs() {
        Map<String, CommandSpec> verbs = new LinkedHashMap<>();
        program().getSubcommands().forEach((name, verb) -> {
            verbs.put(name, verb.getCommandSpec());
            verb.getSubcommands().forEach((word, below) -> verbs.put(name + " " + word, below.getCommandSpec()));
        });
        return verbs;
    }

    static CommandLine program() {
        PrintStream nowhere =
                new PrintStream(new java.io.ByteArrayOutputStream(), true, java.nio.charset.StandardCharsets.UTF_8);
        return new CommandLine(new Handspan(new ByteArrayInputStream(new byte[0]), nowhere, nowhere));
    }

    /** Long names of a verb's options. */
    static Set<String> options(CommandSpec verb) {
        Set<String> options = new TreeSet<>();
        verb.options().stream()
                .flatMap(option -> Stream.of(option.names()))
                .filter(name -> name.startsWith("--"))
                .forEach(options::add);
        return options;
    }
}
