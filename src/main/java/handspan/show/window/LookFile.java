package handspan.show.window;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;

/** A look as its property file has it: {@code /handspan/window-dark.properties} and {@code window-light.properties}. */
final class LookFile {
    private static final String INK = "ink.";
    private static final String LETTERS = "letters.";

    private final Map<Ink, Color> inks = new EnumMap<>(Ink.class);
    private final Map<Letters, Float> sizes = new EnumMap<>(Letters.class);
    private final Map<String, String> toolkit = new HashMap<>();

    private LookFile(Properties file, String name) {
        for (Ink ink : Ink.values()) {
            inks.put(ink, Color.decode(value(file, ink.key(), name)));
        }
        for (Letters letters : Letters.values()) {
            sizes.put(letters, Float.valueOf(value(file, letters.key(), name)));
        }
        for (String key : file.stringPropertyNames()) {
            if (!key.startsWith(INK) && !key.startsWith(LETTERS)) {
                toolkit.put(key, file.getProperty(key));
            }
        }
    }

    private static String value(Properties file, String key, String name) {
        String value = file.getProperty(key);
        if (value == null) {
            throw new IllegalStateException(name + " says nothing of " + key);
        }
        return value.strip();
    }

    static LookFile of(boolean dark) {
        String name = dark ? "/handspan/window-dark.properties" : "/handspan/window-light.properties";
        Properties file = new Properties();
        URL place = LookFile.class.getResource(name);
        if (place == null) {
            throw new IllegalStateException(name + " is not there");
        }
        try (Reader letters = new InputStreamReader(place.openStream(), StandardCharsets.UTF_8)) {
            file.load(letters);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new LookFile(file, name);
    }

    Color ink(Ink ink) {
        Color colour = inks.get(ink);
        if (colour == null) {
            throw new IllegalStateException("no colour for " + ink);
        }
        return colour;
    }

    float size(Letters letters) {
        Float size = sizes.get(letters);
        if (size == null) {
            throw new IllegalStateException("no size for " + letters);
        }
        return size;
    }

    /** What is meant for the toolkit, in its own words. */
    Map<String, String> toolkit() {
        return Map.copyOf(toolkit);
    }
}
