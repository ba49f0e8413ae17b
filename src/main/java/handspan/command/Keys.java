package handspan.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Keys while a verb runs: a letter and Enter on standard input. Where there is no input, there are no keys. */
final class Keys implements AutoCloseable {
    private final Map<String, Runnable> actions = new ConcurrentHashMap<>();
    private final Talk talk;
    private final InputStream input;
    private volatile Runnable after = () -> {};
    private volatile boolean closed;

    /** Keys that nothing is known of yet, from an input. */
    Keys(Talk talk, InputStream input) {
        this.talk = talk;
        this.input = input;
    }

    /** Begins to read, in a thread of its own: once all keys are known, so that none typed early is lost. */
    void listen() {
        Thread thread = new Thread(this::read, "keys");
        thread.setDaemon(true);
        thread.start();
    }

    /** What happens at a key; the empty key is Enter alone. */
    void on(String key, Runnable action) {
        actions.put(key, action);
    }

    /** What happens after each key, known or not. */
    void afterEach(Runnable action) {
        after = action;
    }

    private void read() {
        BufferedReader reader = new BufferedReader(new InputStreamReader(input, StandardCharsets.UTF_8));
        try {
            String line = reader.readLine();
            while (line != null && !closed) {
                Runnable action = actions.get(line.strip());
                if (action == null) {
                    talk.warn("no such key: '" + line.strip() + "'");
                } else {
                    action.run();
                }
                after.run();
                line = reader.readLine();
            }
        } catch (IOException e) {
            talk.warn("no more keys: " + e.getMessage());
        }
    }

    @Override
    public void close() {
        closed = true;
        actions.clear();
    }
}
