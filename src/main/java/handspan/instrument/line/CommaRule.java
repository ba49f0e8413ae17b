package handspan.instrument.line;

import java.util.Locale;

/** What a comma between two digits stands for, where a line does not tell. */
public enum CommaRule {
    /** Told by the lines; asked for where they don't tell. */
    ASK,
    /** A decimal point. */
    DECIMAL,
    /** It parts two numbers. */
    PARTS;

    /**
     * Reads the word on the command line.
     *
     * @throws IllegalArgumentException for another word
     */
    public static CommaRule parse(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "decimal" -> DECIMAL;
            case "parts" -> PARTS;
            default ->
                throw new IllegalArgumentException(
                        "comma '" + word + "' (decimal: 23,4 is one number; parts: it is two)");
        };
    }
}
