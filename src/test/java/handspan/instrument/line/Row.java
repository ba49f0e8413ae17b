package handspan.instrument.line;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * A line shape.
 *
 * @param name what it is an example of
 * @param words what the learner must say of it
 * @param line its line number i
 * @param values what that line says, in the order of the slots; null where it makes no reading of its own
 * @param rejections of two hundred lines
 */
record Row(
        String name,
        String words,
        IntFunction<String> line,
        IntFunction<@Nullable Double @Nullable []> values,
        Map<Rejection, Long> rejections) {
    static Row row(
            String name, String words, IntFunction<String> line, IntFunction<@Nullable Double @Nullable []> values) {
        return new Row(name, words, line, values, Map.of());
    }

    Row rejecting(Rejection reason, long count) {
        return new Row(name, words, line, values, Map.of(reason, count));
    }

    /** Whole numbers that wander from 20 to 220, then a slower one from 1 to 1020: a hand and a light. */
    static int hand(int i) {
        return 20 + i * 37 % 201;
    }

    static int light(int i) {
        return 1 + i * 53 % 1020;
    }

    /** The wandering number with decimals, as text and as value. */
    static String decimal(int i, int decimals) {
        return BigDecimal.valueOf(hand(i) * 1000L + i % 7 * 143L, 3)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    static double value(int i, int decimals) {
        return Double.parseDouble(decimal(i, decimals));
    }

    static @Nullable Double[] says(@Nullable Double... values) {
        return values;
    }

    @Override
    public String toString() {
        return name;
    }
}
