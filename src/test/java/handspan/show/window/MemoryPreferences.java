package handspan.show.window;

import java.util.HashMap;
import java.util.Map;
import java.util.prefs.AbstractPreferences;
import org.jspecify.annotations.Nullable;

/** Preferences that nobody else sees and that are gone with the test. */
final class MemoryPreferences extends AbstractPreferences {
    private final Map<String, String> values = new HashMap<>();

    MemoryPreferences() {
        super(null, "");
    }

    @Override
    protected void putSpi(String key, String value) {
        values.put(key, value);
    }

    @Override
    protected @Nullable String getSpi(String key) {
        return values.get(key);
    }

    @Override
    protected void removeSpi(String key) {
        values.remove(key);
    }

    @Override
    protected void removeNodeSpi() {}

    @Override
    protected String[] keysSpi() {
        return values.keySet().toArray(new String[0]);
    }

    @Override
    protected String[] childrenNamesSpi() {
        return new String[0];
    }

    @Override
    protected AbstractPreferences childSpi(String name) {
        throw new UnsupportedOperationException(name);
    }

    @Override
    protected void syncSpi() {}

    @Override
    protected void flushSpi() {}
}
