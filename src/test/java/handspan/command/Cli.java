package handspan.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * One run of the program inside the test's own process.
 *
 * @param exitCode what it ended with
 * @param out standard output
 * @param err standard error
 */
record Cli(int exitCode, String out, String err) {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    static Cli run(String... args) {
        return runWith(new ByteArrayInputStream(new byte[0]), args);
    }

    /** A line of words parted by blanks, on rooms in a folder, with JSON. */
    static Cli line(String line, java.nio.file.Path profiles) {
        List<String> args = new ArrayList<>(List.of(line.split(" ", -1)));
        args.addAll(List.of("--profiles", profiles.toString(), "--json"));
        return run(args.toArray(new String[0]));
    }

    static Cli runWith(InputStream in, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exitCode = Handspan.run(
                List.of(args),
                in,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Cli(exitCode, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Standard output as JSON objects, one a line. */
    List<JsonNode> objects() {
        List<JsonNode> objects = new ArrayList<>();
        for (String line : out.lines().toList()) {
            try {
                objects.add(MAPPER.readTree(line));
            } catch (IOException e) {
                throw new UncheckedIOException("not JSON: " + line, e);
            }
        }
        return objects;
    }

    JsonNode last() {
        List<JsonNode> objects = objects();
        return objects.get(objects.size() - 1);
    }

    /** The shape of the output: each key's path with the types seen there, by event, sorted; values do not matter. */
    String shape() {
        Map<String, TreeSet<String>> types = new TreeMap<>();
        for (JsonNode object : objects()) {
            String event = object.path("event").asText("");
            collect(event.isEmpty() ? "" : event + " ", object, types);
        }
        StringBuilder text = new StringBuilder();
        types.forEach((path, kinds) ->
                text.append(path).append(": ").append(String.join("|", kinds)).append('\n'));
        return text.toString();
    }

    private static void collect(String path, JsonNode node, Map<String, TreeSet<String>> types) {
        if (node.isObject()) {
            node.properties()
                    .forEach(field -> collect(
                            path + (path.isEmpty() || path.endsWith(" ") ? "" : ".") + field.getKey(),
                            field.getValue(),
                            types));
        } else if (node.isArray()) {
            types.computeIfAbsent(path, key -> new TreeSet<>()).add("array");
            node.forEach(element -> collect(path + "[]", element, types));
        } else {
            types.computeIfAbsent(path, key -> new TreeSet<>())
                    .add(node.isNumber() ? "number" : node.getNodeType().name().toLowerCase(java.util.Locale.ROOT));
        }
    }
}
