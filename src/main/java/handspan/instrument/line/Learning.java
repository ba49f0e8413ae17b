package handspan.instrument.line;

/** What a {@link ShapeLearner} makes of its lines. */
public sealed interface Learning {
    /** They have this shape. */
    record Learned(LineShape shape) implements Learning {}

    /**
     * They can be read in two ways, and nobody but the player knows which.
     *
     * @param question in words, with an example
     * @param parts with the comma between two numbers
     * @param decimal with the comma as a decimal point
     */
    record Ambiguous(String question, LineShape parts, LineShape decimal) implements Learning {}

    /** They have nothing in common, or no number. */
    record Nothing() implements Learning {}
}
