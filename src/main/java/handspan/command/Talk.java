package handspan.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.wiring.SessionLog;
import java.io.PrintStream;
import java.util.Map;

/**
 * Where a verb speaks: words for people on standard output, or, with {@code --json}, JSON alone on standard output and
 * words on standard error.
 */
final class Talk {
    /** Made when JSON is printed for the first time: it takes long to get ready. */
    private static final class Json {
        static final ObjectMapper MAPPER = new ObjectMapper();

        private Json() {}
    }

    private final PrintStream out;
    private final PrintStream err;
    private final boolean json;
    private final SessionLog log;

    Talk(PrintStream out, PrintStream err, boolean json, SessionLog log) {
        this.log = log;
        this.out = out;
        this.err = err;
        this.json = json;
    }

    /** Where what happens to an instrument is written down. */
    SessionLog log() {
        return log;
    }

    /** Whether JSON was asked for. */
    boolean isJson() {
        return json;
    }

    /** A line for people. */
    synchronized void say(String words) {
        (json ? err : out).println(words);
    }

    /** A line for people about something that is wrong. */
    synchronized void warn(String words) {
        err.println(words);
    }

    /** A JSON object on one line; nothing without {@code --json}. */
    synchronized void object(ObjectNode object) {
        if (json) {
            try {
                out.println(Json.MAPPER.writeValueAsString(object));
                out.flush();
            } catch (JsonProcessingException e) {
                throw new IllegalStateException("JSON that can't be written", e);
            }
        }
    }

    /** An event of a verb that runs. */
    void event(String name, Map<String, ?> fields) {
        if (json) {
            ObjectNode object = node();
            object.put("event", name);
            fields.forEach((key, value) -> object.set(key, Json.MAPPER.valueToTree(value)));
            object(object);
        }
    }

    /** An empty object. */
    static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }
}
