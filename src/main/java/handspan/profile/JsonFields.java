package handspan.profile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one object in a file. Knows where it stands, so that every error names file and key.
 *
 * <p>Ranges live in the domain records only: a value is tried in its record and what the record says is passed on with
 * the key.
 */
final class JsonFields {
    private static final int LONGEST_SHOWN = 60;

    private final ObjectNode node;
    private final String path;
    private final UnaryOperator<String> place;

    private JsonFields(ObjectNode node, String path, UnaryOperator<String> place) {
        this.node = node;
        this.path = path;
        this.place = place;
    }

    /**
     * The fields of a file's outermost object.
     *
     * @param file name for messages
     */
    static JsonFields of(byte[] bytes, String file) throws ProfileException {
        return new JsonFields(JsonText.read(bytes, file), "", at -> {
            String pointer = "/" + at.replace('.', '/').replace('[', '/').replace("]", "");
            return file + ", line " + JsonText.lineOf(bytes, pointer) + ", key " + at + ": ";
        });
    }

    /** Refuses any format but one. */
    void requireFormat(String format) throws ProfileException {
        if (!text("format").equals(format)) {
            throw new ProfileException(
                    ProfileException.Kind.DAMAGED,
                    place.apply("format") + shown(node.path("format")) + " is not readable here (\"" + format + "\")",
                    "use the version of the program that wrote it",
                    null);
        }
    }

    boolean has(String key) {
        return node.has(key);
    }

    boolean isText(String key) {
        return node.path(key).isTextual();
    }

    JsonFields object(String key) throws ProfileException {
        return object(needed(key, "an object in braces"), pathOf(key));
    }

    List<JsonFields> objects(String key) throws ProfileException {
        List<JsonFields> all = new ArrayList<>();
        for (JsonNode item : list(key)) {
            all.add(object(item, pathOf(key) + "[" + all.size() + "]"));
        }
        return all;
    }

    private JsonFields object(JsonNode value, String at) throws ProfileException {
        if (value instanceof ObjectNode object) {
            return new JsonFields(object, at, place);
        }
        throw wrong(at, shown(value) + " (an object in braces)", null);
    }

    String text(String key) throws ProfileException {
        return text(key, text -> text);
    }

    /** A text turned into something; what the reader of the text refuses is named with the key. */
    <T> T text(String key, Function<String, T> reader) throws ProfileException {
        return text(needed(key, "a text in quotes"), pathOf(key), reader);
    }

    <T> List<T> texts(String key, Function<String, T> reader) throws ProfileException {
        List<T> all = new ArrayList<>();
        for (JsonNode item : list(key)) {
            all.add(text(item, pathOf(key) + "[" + all.size() + "]", reader));
        }
        return all;
    }

    private <T> T text(JsonNode value, String at, Function<String, T> reader) throws ProfileException {
        if (!value.isTextual()) {
            throw wrong(at, shown(value) + " (a text in quotes)", null);
        }
        return tried(at, () -> reader.apply(value.textValue()));
    }

    double number(String key) throws ProfileException {
        return number(needed(key, "a number"), pathOf(key));
    }

    /** A number tried in a record whose other values are sound. */
    double number(String key, DoubleFunction<?> trial) throws ProfileException {
        double value = number(key);
        tried(pathOf(key), () -> trial.apply(value));
        return value;
    }

    List<Double> numbers(String key) throws ProfileException {
        List<Double> all = new ArrayList<>();
        for (JsonNode item : list(key)) {
            all.add(number(item, pathOf(key) + "[" + all.size() + "]"));
        }
        return all;
    }

    private double number(JsonNode value, String at) throws ProfileException {
        // beyond the largest double the tree holds an infinity
        if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
            throw wrong(at, shown(value) + " (a finite number)", null);
        }
        return value.doubleValue();
    }

    /** A whole number tried in a record whose other values are sound. */
    int whole(String key, IntFunction<?> trial) throws ProfileException {
        JsonNode value = needed(key, "a whole number");
        if (!value.isNumber() || !value.canConvertToExactIntegral() || !value.canConvertToInt()) {
            throw wrong(pathOf(key), shown(value) + " (a whole number)", null);
        }
        tried(pathOf(key), () -> trial.apply(value.intValue()));
        return value.intValue();
    }

    /** A whole number in a range. */
    int whole(String key, int least, int most) throws ProfileException {
        return whole(key, value -> {
            if (value < least || value > most) {
                throw new IllegalArgumentException(value + " (" + least + ".." + most + ")");
            }
            return value;
        });
    }

    boolean flag(String key) throws ProfileException {
        JsonNode value = needed(key, "true or false");
        if (!value.isBoolean()) {
            throw wrong(pathOf(key), shown(value) + " (true or false)", null);
        }
        return value.booleanValue();
    }

    /** Makes something of several values; what its record refuses is named with this key. */
    <T> T made(String key, Supplier<T> maker) throws ProfileException {
        return tried(pathOf(key), maker);
    }

    private <T> T tried(String at, Supplier<T> maker) throws ProfileException {
        try {
            return maker.get();
        } catch (IllegalArgumentException e) {
            throw wrong(at, String.valueOf(e.getMessage()), e);
        }
    }

    private Iterable<JsonNode> list(String key) throws ProfileException {
        JsonNode value = needed(key, "a list in brackets");
        if (!value.isArray()) {
            throw wrong(pathOf(key), shown(value) + " (a list in brackets)", null);
        }
        return value;
    }

    private JsonNode needed(String key, String allowed) throws ProfileException {
        JsonNode value = node.get(key);
        if (value == null) {
            throw wrong(pathOf(key), "missing (" + allowed + ")", null);
        }
        return value;
    }

    private String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private static String shown(JsonNode value) {
        String text = value.toString();
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
    }

    private ProfileException wrong(String at, String what, @Nullable Throwable cause) {
        return new ProfileException(ProfileException.Kind.DAMAGED, place.apply(at) + what, "mend this value", cause);
    }
}
