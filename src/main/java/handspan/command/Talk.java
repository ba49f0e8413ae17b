package handspan.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.wiring.SessionLog;
import java.io.PrintStream;
import java.util.Map;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

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

    /** What is spoken about, where several instruments play; empty where one does. */
    private final String instrument;

    /** Where words for people go instead of the console; null for the console. */
    private final @Nullable Consumer<String> words;

    Talk(PrintStream out, PrintStream err, boolean json, SessionLog log) {
        this(out, err, json, log, "", null);
    }

    private Talk(
            PrintStream out,
            PrintStream err,
            boolean json,
            SessionLog log,
            String instrument,
            @Nullable Consumer<String> words) {
        this.out = out;
        this.err = err;
        this.json = json;
        this.log = log;
        this.instrument = instrument;
        this.words = words;
    }

    /** The same about one of several instruments: its name goes before all words and into every object. */
    Talk about(String name) {
        return new Talk(out, err, json, log, name, words);
    }

    /** The same with words that go somewhere else than to the console. */
    Talk into(Consumer<String> taker) {
        return new Talk(out, err, json, log, instrument, taker);
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
    synchronized void say(String line) {
        speak(json ? err : out, line);
    }

    /** A line for people about something that is wrong. */
    synchronized void warn(String line) {
        speak(err, line);
    }

    private void speak(PrintStream console, String line) {
        String whole = instrument.isEmpty() ? line : instrument + ": " + line;
        Consumer<String> taker = words;
        if (taker == null) {
            console.println(whole);
        } else {
            taker.accept(whole);
        }
    }

    /** A JSON object on one line; nothing without {@code --json}. */
    synchronized void object(ObjectNode object) {
        if (json) {
            if (!instrument.isEmpty()) {
                object.put("instrument", instrument);
            }
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
