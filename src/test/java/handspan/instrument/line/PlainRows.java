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

/** Numbers without labels, and with labels and units in words. */
final class PlainRows {
    private PlainRows() {}

    static Stream<Row> plain() {
        IntFunction<@Nullable Double @Nullable []> both = i -> says((double) hand(i), (double) light(i));
        IntFunction<@Nullable Double @Nullable []> decimalAndLight = i -> says(value(i, 1), (double) light(i));
        return Stream.of(
                row("a number", "1 number a line: 1", i -> "" + hand(i), i -> says((double) hand(i))),
                row("a decimal", "1 number a line: 1", i -> decimal(i, 2), i -> says(value(i, 2))),
                row("commas", "2 numbers a line parted by commas: 1, 2", i -> hand(i) + "," + light(i), both),
                row(
                        "commas and blanks",
                        "2 numbers a line parted by commas: 1, 2",
                        i -> i % 2 == 0 ? decimal(i, 1) + ", " + light(i) : decimal(i, 1) + " ," + light(i) + " ",
                        decimalAndLight),
                row(
                        "three columns",
                        "3 numbers a line parted by commas: 1, 2, 3",
                        i -> hand(i) + "," + light(i) + "," + (i % 50 - 25),
                        i -> says((double) hand(i), (double) light(i), i % 50 - 25.0)),
                row(
                        "tabs",
                        "2 numbers a line parted by tabs: 1, 2",
                        i -> decimal(i, 1) + "\t" + light(i),
                        decimalAndLight),
                row(
                        "bars",
                        "2 numbers a line parted by bars: 1, 2",
                        i -> decimal(i, 1) + " | " + light(i),
                        decimalAndLight),
                row(
                        "blanks",
                        "2 numbers a line parted by blanks: 1, 2",
                        i -> "  " + decimal(i, 1) + "   " + light(i),
                        decimalAndLight),
                row(
                        "tab at the end",
                        "2 numbers a line parted by tabs: 1, 2",
                        i -> decimal(i, 1) + "\t" + light(i) + "\t",
                        decimalAndLight),
                row(
                        "comma at the end",
                        "2 numbers a line parted by commas: 1, 2",
                        i -> hand(i) + "," + light(i) + ",",
                        both),
                row(
                        "semicolons",
                        "3 numbers a line parted by semicolons: 1, 2, 3",
                        i -> hand(i) + ";" + light(i) + ";-3",
                        i -> says((double) hand(i), (double) light(i), -3.0)),
                row(
                        "two numbers in a field",
                        "3 numbers a line parted by commas: 1, 2, 3",
                        i -> hand(i) + " " + light(i) + "," + i % 12,
                        i -> says((double) hand(i), (double) light(i), (double) (i % 12))),
                row(
                        "commas that are no decimal ones",
                        "3 numbers a line parted by semicolons: 1, 2, 3",
                        i -> hand(i) + ", " + light(i) + ";5",
                        i -> says((double) hand(i), (double) light(i), 5.0)),
                row(
                        "decimal comma",
                        "2 numbers a line parted by semicolons, decimal comma: 1, 2",
                        i -> decimal(i, 1).replace('.', ',') + ";" + light(i),
                        decimalAndLight),
                row(
                        "decimal comma and tab",
                        "2 numbers a line parted by tabs, decimal comma: 1, 2",
                        i -> decimal(i, 2).replace('.', ',') + "\t" + light(i),
                        i -> says(value(i, 2), (double) light(i))));
    }

    static Stream<Row> labelled() {
        IntFunction<@Nullable Double @Nullable []> whole = i -> says((double) hand(i));
        return Stream.of(
                row(
                        "label and unit",
                        "1 number with labels: Distance in cm",
                        i -> "Distance: " + hand(i) + " cm",
                        whole),
                row("label alone", "1 number with labels: Distance", i -> "Distance:  " + hand(i), whole),
                row(
                        "label before a blank",
                        "1 number with labels: Distance in CM",
                        i -> "Distance : " + decimal(i, 2) + " CM",
                        i -> says(value(i, 2))),
                row("glued unit", "1 number a line: 1 in cm", i -> hand(i) + "cm", whole),
                row(
                        "two glued units",
                        "2 numbers a line parted by blanks: 1 in cm, 2 in in",
                        i -> hand(i) + "cm    " + light(i) + "in",
                        i -> says((double) hand(i), (double) light(i))),
                row("label, glued unit", "1 number with labels: Range in mm", i -> "Range: " + hand(i) + "mm", whole),
                row(
                        "label of two words",
                        "1 number with labels: Target Distance in mm",
                        i -> "Target Distance = " + hand(i) + " mm",
                        whole),
                row(
                        "units after blanks",
                        "2 numbers a line parted by blanks: 1 in cm, 2 in lux",
                        i -> hand(i) + " cm " + light(i) + " lux",
                        i -> says((double) hand(i), (double) light(i))),
                row(
                        "units of the board's own",
                        "2 numbers a line parted by commas: 1 in far, 2 in raw counts",
                        i -> hand(i) + " far, " + light(i) + " raw counts",
                        i -> says((double) hand(i), (double) light(i))),
                row(
                        "labels in fields of their own",
                        "2 numbers with labels parted by tabs: Hand, Light",
                        i -> "Hand:\t" + hand(i) + "\tLight:\t" + light(i),
                        i -> says((double) hand(i), (double) light(i))),
                row(
                        "words in fields of their own",
                        "2 numbers a line parted by commas: 1, 2",
                        i -> "LOG," + hand(i) + ",ok," + light(i) + ",ok",
                        i -> says((double) hand(i), (double) light(i))),
                row(
                        "unit in Latin-1",
                        "1 number with labels: echo in \u00b5s",
                        i -> "echo: " + light(i) + " \u00b5s",
                        i -> says((double) light(i))));
    }
}
