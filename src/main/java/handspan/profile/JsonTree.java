package handspan.profile;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;

/**
 * Builds the tree of a JSON text from its tokens. The library's mapper would do the same, but it takes as long to get
 * ready as all else between the start of the program and its first message.
 */
final class JsonTree {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonParser parser;
    private final boolean allDigits;

    /**
     * A reader of one text.
     *
     * @param allDigits whether numbers with a point keep all the digits they were written with; else they are doubles
     */
    JsonTree(JsonParser parser, boolean allDigits) {
        this.parser = parser;
        this.allDigits = allDigits;
    }

    /** The next value and all that is in it. */
    JsonNode read() throws IOException {
        return value(parser.nextToken());
    }

    private JsonNode value(JsonToken token) throws IOException {
        return switch (token) {
            case START_OBJECT -> object();
            case START_ARRAY -> array();
            case VALUE_STRING -> NODES.textNode(parser.getText());
            case VALUE_NUMBER_INT -> integer();
            case VALUE_NUMBER_FLOAT ->
                allDigits ? NODES.numberNode(parser.getDecimalValue()) : NODES.numberNode(parser.getDoubleValue());
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            case VALUE_NULL -> NODES.nullNode();
            default -> throw new IllegalStateException("a value that begins with " + token);
        };
    }

    private JsonNode integer() throws IOException {
        return switch (parser.getNumberType()) {
            case INT -> NODES.numberNode(parser.getIntValue());
            case LONG -> NODES.numberNode(parser.getLongValue());
            default -> NODES.numberNode(parser.getBigIntegerValue());
        };
    }

    private ObjectNode object() throws IOException {
        ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            object.set(key, value(parser.nextToken()));
        }
        return object;
    }

    private ArrayNode array() throws IOException {
        ArrayNode array = NODES.arrayNode();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            array.add(value(token));
        }
        return array;
    }
}
