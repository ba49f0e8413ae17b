package handspan.instrument.line;

import static handspan.instrument.line.Row.decimal;
import static handspan.instrument.line.Row.hand;
import static handspan.instrument.line.Row.light;
import static handspan.instrument.line.Row.row;
import static handspan.instrument.line.Row.says;
import static handspan.instrument.line.Row.value;

import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Numbers by key, and numbers in frames. */
final class KeyedRows {
    private KeyedRows() {}

    static Stream<Row> keyed() {
        IntFunction<@Nullable Double @Nullable []> both = i -> says((double) hand(i), (double) light(i));
        return Stream.of(
                row(
                        "key=value",
                        "1 number with labels: distance",
                        i -> "distance=" + decimal(i, 1),
                        i -> says(value(i, 1))),
                row(
                        "two keys",
                        "2 numbers with labels parted by blanks: dist, light",
                        i -> "dist=" + decimal(i, 1) + " light=" + light(i),
                        i -> says(value(i, 1), (double) light(i))),
                row(
                        "short key, unit",
                        "1 number with labels: D in cm",
                        i -> "D:" + hand(i) + "cm",
                        i -> says((double) hand(i))),
                row(
                        "lower-case key",
                        "1 number with labels: ldr",
                        i -> "ldr: " + light(i),
                        i -> says((double) light(i))),
                row("glued key", "1 number with labels: S", i -> "S" + decimal(i, 1), i -> says(value(i, 1))),
                row(
                        "changing order",
                        "2 numbers with labels parted by commas: Dist, Light",
                        i -> i % 3 == 0
                                ? "Dist:" + hand(i) + ",Light:" + light(i)
                                : "Light:" + light(i) + ",Dist:" + hand(i),
                        both),
                row(
                        "light and temperature",
                        "2 numbers with labels parted by blanks: Light, Temp",
                        i -> "Light:" + light(i) + " Temp:" + decimal(i, 1),
                        i -> says((double) light(i), value(i, 1))),
                row(
                        "constant keys between",
                        "3 numbers with labels in 2 lines parted by blanks: light, Min, Max",
                        i -> i % 2 == 0 ? "light:" + light(i) + "," : "Min:0,Max:1023",
                        i -> i % 2 == 0 ? null : says((double) light(i - 1), 0.0, 1023.0)),
                row(
                        "digits in a label",
                        "1 number with labels: Probe 02 in cm",
                        i -> "Probe 02: " + hand(i) + "cm",
                        i -> says((double) hand(i))));
    }

    static Stream<Row> framed() {
        IntFunction<@Nullable Double @Nullable []> both = i -> says((double) hand(i), (double) light(i));
        return Stream.of(
                row(
                        "JSON",
                        "2 numbers with labels parted by commas, from { to }: d, l",
                        i -> "{\"d\":" + decimal(i, 1) + ",\"l\":" + light(i) + "}",
                        i -> says(value(i, 1), (double) light(i))),
                row(
                        "braces",
                        "2 numbers with labels parted by commas, from { to }: D, L",
                        i -> "{D:" + hand(i) + ",L:" + light(i) + "}",
                        both),
                row(
                        "angles",
                        "2 numbers a line parted by commas, from < to >: 1, 2",
                        i -> "<" + hand(i) + "," + light(i) + ">",
                        both),
                row(
                        "dollar and semicolon",
                        "2 numbers a line parted by commas, from $ to ;: 1, 2",
                        i -> "$" + hand(i) + "," + light(i) + ";",
                        both));
    }
}
