package handspan.profile;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Puts a new tree over an older one, so that keys this version does not know survive a save. Known keys come first, in
 * their fixed order; kept ones follow in the order they had.
 *
 * @param optional paths of known keys that a new tree may leave out: they go when it does
 * @param matchedBy paths of lists whose objects go on from an older one with the same text at a key; all other lists
 *     are taken from the new tree as they are
 */
record TreeMerge(Set<String> optional, Map<String, String> matchedBy) {
    /** Copies both. */
    TreeMerge {
        optional = Set.copyOf(optional);
        matchedBy = Map.copyOf(matchedBy);
    }

    /** The new tree with what only the older one has. Neither is changed. */
    ObjectNode over(ObjectNode older, ObjectNode newer) {
        return object(older, newer, "");
    }

    private ObjectNode object(ObjectNode older, ObjectNode newer, String path) {
        ObjectNode merged = JsonNodeFactory.instance.objectNode();
        newer.properties()
                .forEach(field -> merged.set(
                        field.getKey(),
                        value(older.get(field.getKey()), field.getValue(), below(path, field.getKey()))));
        older.properties().forEach(field -> {
            if (!newer.has(field.getKey()) && !optional.contains(below(path, field.getKey()))) {
                merged.set(field.getKey(), field.getValue().deepCopy());
            }
        });
        return merged;
    }

    private JsonNode value(@Nullable JsonNode older, JsonNode newer, String path) {
        if (older instanceof ObjectNode from && newer instanceof ObjectNode to) {
            return object(from, to, path);
        }
        String key = matchedBy.get(path);
        if (key != null && older instanceof ArrayNode from && newer instanceof ArrayNode to) {
            return list(from, to, path, key);
        }
        return newer.deepCopy();
    }

    private ArrayNode list(ArrayNode older, ArrayNode newer, String path, String key) {
        List<JsonNode> left = new ArrayList<>();
        older.forEach(left::add);
        ArrayNode merged = JsonNodeFactory.instance.arrayNode();
        for (JsonNode item : newer) {
            JsonNode match = left.stream()
                    .filter(candidate -> candidate.path(key).equals(item.path(key)))
                    .findFirst()
                    .orElse(null);
            if (match != null) {
                left.remove(match);
            }
            merged.add(value(match, item, path));
        }
        return merged;
    }

    private static String below(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
