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
    private volatile boolean closed;

    private Keys(Talk talk) {
        this.talk = talk;
    }

    /** Reads from standard input in a thread of its own. */
    static Keys read(Talk talk, InputStream input) {
        Keys keys = new Keys(talk);
        Thread thread = new Thread(() -> keys.listen(input), "keys");
        thread.setDaemon(true);
        thread.start();
        return keys;
    }

    /** What happens at a key; the empty key is Enter alone. */
    void on(String key, Runnable action) {
        actions.put(key, action);
    }

    private void listen(InputStream input) {
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
