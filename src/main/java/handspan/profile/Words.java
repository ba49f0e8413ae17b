package handspan.profile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A closed set of values and the words that stand for them in files. */
final class Words<T> {
    private final String what;
    private final Function<T, String> word;
    private final Map<String, T> meanings = new LinkedHashMap<>();

    private Words(String what, Function<T, String> word) {
        this.what = what;
        this.word = word;
    }

    /**
     * A set.
     *
     * @param what the words name, for messages
     * @param values all there are
     * @param word of each, no two alike
     */
    static <T> Words<T> of(String what, List<T> values, Function<T, String> word) {
        Words<T> words = new Words<>(what, word);
        values.forEach(value -> words.meanings.put(word.apply(value), value));
        return words;
    }

    String word(T value) {
        return word.apply(value);
    }

    /**
     * The value a word stands for.
     *
     * @throws IllegalArgumentException naming the words there are
     */
    T meaning(String given) {
        T value = meanings.get(given);
        if (value == null) {
            throw new IllegalArgumentException(
                    what + " '" + given + "' (" + String.join(", ", meanings.keySet()) + "): name one of these");
        }
        return value;
    }
}
