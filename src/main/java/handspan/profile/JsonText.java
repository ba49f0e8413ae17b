package handspan.profile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A file's bytes to a JSON tree and back: UTF-8, line feeds, two blanks, a line feed at the end. */
final class JsonText {
    private static final String BYTE_ORDER_MARK = "\ufeff";

    /** Deeper ones are none of a room's file, and too long to read. */
    private static final int DEEPEST_KEY = 8;

    private static final JsonFactory READING = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /** Made when a file is written for the first time. */
    private static final class Writing {
        // the shortest digits that read back as the same double, on every Java version alike
        static final JsonMapper MAPPER = JsonMapper.builder()
                .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                .build();

        private Writing() {}
    }

    private JsonText() {}

    /**
     * The tree with numbers as doubles, to take values from.
     *
     * @param file name for messages
     */
    static ObjectNode read(byte[] bytes, String file) throws ProfileException {
        return read(bytes, file, false);
    }

    /** The tree with numbers in all the digits they were written with, to keep what this version does not know. */
    static ObjectNode readAsWritten(byte[] bytes, String file) throws ProfileException {
        return read(bytes, file, true);
    }

    private static ObjectNode read(byte[] bytes, String file, boolean allDigits) throws ProfileException {
        String text = text(bytes, file);
        if (text.isBlank()) {
            throw broken(file, "the file is empty", null);
        }
        try (JsonParser parser = READING.createParser(text)) {
            JsonNode tree = new JsonTree(parser, allDigits).read();
            if (parser.nextToken() != null) {
                throw broken(file, at(parser.currentTokenLocation()) + "more text after the closing brace", null);
            }
            if (tree instanceof ObjectNode object) {
                return object;
            }
            throw broken(file, "the file does not hold an object in braces", null);
        } catch (JsonProcessingException e) {
            throw broken(file, at(e.getLocation()) + words(e) + near(text), e);
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory", e);
        }
    }

    /** The key that is being read where a text breaks off or breaks, for people; empty where there is none. */
    private static String near(String text) {
        try (JsonParser parser = READING.createParser(text)) {
            String key = "";
            try {
                while (parser.nextToken() != null) {
                    key = key(parser);
                }
            } catch (JsonProcessingException e) {
                String last = key(parser);
                key = last.isEmpty() ? key : last;
            }
            return key.isEmpty() ? "" : " (at key " + key + ")";
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory", e);
        }
    }

    private static String key(JsonParser parser) {
        String pointer = parser.getParsingContext().pathAsPointer().toString();
        if (pointer.chars().filter(c -> c == '/').count() > DEEPEST_KEY) {
            return "";
        }
        return pointer.replaceFirst("/", "").replaceAll("/([0-9]+)", "[$1]").replace('/', '.');
    }

    private static String text(byte[] bytes, String file) throws ProfileException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer from = ByteBuffer.wrap(bytes);
        CharBuffer to = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(from, to, true);
        String text = to.flip().toString();
        if (result.isError()) {
            int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
            int column = text.length() - text.lastIndexOf('\n');
            throw broken(
                    file, "line " + line + ", column " + column + ": not UTF-8 text" + near(withoutMark(text)), null);
        }
        return withoutMark(text);
    }

    private static String withoutMark(String text) {
        return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    }

    private static String at(@Nullable JsonLocation location) {
        return location == null ? "" : "line " + location.getLineNr() + ", column " + location.getColumnNr() + ": ";
    }

    private static String words(JsonProcessingException e) {
        // left out: what describes the parser's buffer and settings, not the file
        return "not JSON: "
                + e.getOriginalMessage()
                        .replaceFirst(" \\(start marker at .*", "")
                        .replaceFirst(", from `[^`]*`", "");
    }

    /**
     * Where a value stands.
     *
     * @param bytes of a file that has been read
     * @param pointer to the value, by RFC 6901; where there is none, what it would stand in is meant
     * @return line, from 1
     */
    static int lineOf(byte[] bytes, String pointer) {
        Map<String, Integer> lines = new HashMap<>();
        try (JsonParser parser = READING.createParser(withoutMark(new String(bytes, StandardCharsets.UTF_8)))) {
            while (parser.nextToken() != null) {
                lines.putIfAbsent(
                        parser.getParsingContext().pathAsPointer().toString(),
                        parser.currentTokenLocation().getLineNr());
            }
        } catch (IOException e) {
            throw new IllegalArgumentException("a file that has not been read", e);
        }
        String at = pointer;
        while (!at.isEmpty() && !lines.containsKey(at)) {
            at = at.substring(0, at.lastIndexOf('/'));
        }
        return lines.getOrDefault(at, 1);
    }

    private static ProfileException broken(String file, String what, @Nullable Throwable cause) {
        return new ProfileException(ProfileException.Kind.DAMAGED, file + ", " + what, "mend the file there", cause);
    }

    /** The file's bytes for a tree. */
    static byte[] bytes(ObjectNode tree) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators).withObjectIndenter(indent);
        try {
            String text = Writing.MAPPER.writer(printer).writeValueAsString(tree);
            return (text + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException("a tree that cannot be written as JSON", e);
        }
    }
}
