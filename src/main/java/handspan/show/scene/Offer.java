package handspan.show.scene;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Something that can be done now.
 *
 * @param words on the button
 * @param key modifiers and a key's name, parted by blanks, for example {@code ctrl ENTER}; empty for none
 * @param wish what it fulfils
 * @param tip what comes of it, with units where there are any
 * @param whyNot why it can't be done now; empty when it can
 * @param weight how it stands among others
 */
public record Offer(String words, String key, Wish wish, String tip, String whyNot, Weight weight) {
    /** How an offer stands among others. */
    public enum Weight {
        /** What comes next. */
        NEXT,
        /** One among others. */
        PLAIN,
        /** Lets sound through: never under a key that may be hit by chance, never where the keyboard waits. */
        SOUND
    }

    /** Something to be done next. */
    static Offer next(String words, String key, Wish wish, String tip) {
        return new Offer(words, key, wish, tip, "", Weight.NEXT);
    }

    /** Something that can be done as well. */
    static Offer plain(String words, String key, Wish wish, String tip) {
        return new Offer(words, key, wish, tip, "", Weight.PLAIN);
    }

    /** Something that makes sound. */
    static Offer sound(String words, String key, Wish wish, String tip) {
        return new Offer(words, key, wish, tip, "", Weight.SOUND);
    }

    /** The same, which can't be done where a reason is given. */
    Offer unless(String reason) {
        return new Offer(words, key, wish, tip, reason, weight);
    }

    /** Whether it can be done now. */
    public boolean isPossible() {
        return whyNot.isEmpty();
    }

    /** The key as it is said: {@code Ctrl+Enter}. */
    public String keyWords() {
        return Arrays.stream(key.split(" ", -1))
                .map(part -> switch (part) {
                    case "" -> "";
                    case "BACK_SPACE" -> "Backspace";
                    case "ESCAPE" -> "Esc";
                    case "PAGE_UP" -> "Page up";
                    case "PAGE_DOWN" -> "Page down";
                    case "UP" -> "\u2191";
                    case "DOWN" -> "\u2193";
                    case "LEFT" -> "\u2190";
                    case "RIGHT" -> "\u2192";
                    default ->
                        part.length() == 1 || part.matches("F[0-9]+")
                                ? part
                                : part.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                                        + part.substring(1).toLowerCase(java.util.Locale.ROOT);
                })
                .collect(Collectors.joining("+"));
    }
}
