package handspan.instrument.line;

import static handspan.instrument.line.Row.decimal;
import static handspan.instrument.line.Row.hand;
import static handspan.instrument.line.Row.light;
import static handspan.instrument.line.Row.row;
import static handspan.instrument.line.Row.says;
import static handspan.instrument.line.Row.value;

import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Readings over several lines, and lines with more in them than numbers. */
final class OddRows {
    private OddRows() {}

    static Stream<Row> severalParts() {
        return Stream.of(
                row(
                        "label above its number",
                        "1 number with labels, each on the line after its label: Distance",
                        i -> i % 2 == 0 ? "Distance: " : "" + hand(i),
                        i -> i % 2 == 0 ? null : says((double) hand(i))),
                row(
                        "label above, unit below",
                        "1 number with labels, each on the line after its label: Hand height in mm",
                        i -> i % 2 == 0 ? "Hand height =" : hand(i) + " mm",
                        i -> i % 2 == 0 ? null : says((double) hand(i))),
                row(
                        "a block of lines",
                        "3 numbers with labels in 3 lines: mid, left side, right side",
                        i -> new String[] {"mid: ", "left side:", "right side:"}[i % 3] + decimal(i, 2),
                        i -> i % 3 < 2 ? null : says(value(i - 2, 2), value(i - 1, 2), value(i, 2))),
                row(
                        "letters in turn",
                        "2 numbers with labels in 2 lines: S, d",
                        i -> (i % 2 == 0 ? "S" : "d") + decimal(i, 1),
                        i -> i % 2 == 0 ? null : says(value(i - 1, 1), value(i, 1))));
    }

    static Stream<Row> odd() {
        IntFunction<@Nullable Double @Nullable []> both = i -> says((double) hand(i), (double) light(i));
        return Stream.of(
                row(
                        "words and a clock",
                        "2 numbers a line parted by commas: 1, 2",
                        i -> String.format(
                                Locale.ROOT, "LOG, 12:%02d:%02d, %d, %d", i / 60 % 60, i % 60, hand(i), light(i)),
                        both),
                row(
                        "a clock with its fraction",
                        "1 number with labels: dist in cm",
                        i -> String.format(Locale.ROOT, "9:05:%02d.%03d dist=%d cm", i % 60, i * 7 % 1000, hand(i)),
                        i -> says((double) hand(i))),
                row(
                        "numbers for keys, and a word for a failure",
                        "2 numbers with labels parted by tabs: 1, 2",
                        i -> "1: " + hand(i) + "\t2: " + (i % 5 == 4 ? "8190 TIMEOUT" : "" + light(i)),
                        i -> says((double) hand(i), i % 5 == 4 ? null : (Double) (double) light(i))),
                row(
                        "digits that belong to labels",
                        "2 numbers with labels parted by blanks: Probe 02 in cm, Tone",
                        i -> "Probe 02: " + hand(i) + "cm Tone 1 " + (hand(i) < 100 ? "LOW" : "HIGH"),
                        i -> says((double) hand(i), 1.0)),
                row(
                        "the board's time and a bar",
                        "2 numbers with labels parted by bars: Timestamp (ms), Light",
                        i -> "Timestamp (ms): " + (81_234 + 20 * i) + " | Light: " + light(i),
                        i -> says(81_234.0 + 20 * i, (double) light(i))),
                row(
                        "the board's time in front",
                        "3 numbers a line parted by commas: 1, 2, 3",
                        i -> (81_234 + 20 * i) + "," + decimal(i, 1) + "," + light(i),
                        i -> says(81_234.0 + 20 * i, value(i, 1), (double) light(i))),
                row(
                        "a counter in front",
                        "3 numbers a line parted by commas: 1, 2, 3",
                        i -> (12 + i) + "," + hand(i) + "," + light(i),
                        i -> says(12.0 + i, (double) hand(i), (double) light(i))),
                row(
                        "frame with keys",
                        "2 numbers with labels parted by commas, from < to >: t, x",
                        i -> "<t:" + (1000 + i) + ",x:" + hand(i) + ">",
                        i -> says(1000.0 + i, (double) hand(i))),
                row(
                        "square brackets",
                        "2 numbers a line parted by blanks, from [ to ]: 1, 2",
                        i -> "[" + hand(i) + " " + light(i) + "]",
                        both),
                row(
                        "base 16",
                        "2 numbers a line parted by commas: 1, 2",
                        i -> String.format(Locale.ROOT, "0x%04X,0x%x", hand(i), light(i)),
                        both),
                row(
                        "numbered labels",
                        "2 numbers with labels parted by blanks: A0, A1",
                        i -> "A0:" + hand(i) + " A1:" + light(i),
                        both),
                row(
                        "degrees and per cent",
                        "3 numbers with labels parted by blanks: T in \u00b0C, H in %, D in mm",
                        i -> "T=" + decimal(i, 1) + "\u00b0C H=" + light(i) % 100 + "% D=" + hand(i) + "mm",
                        i -> says(value(i, 1), light(i) % 100.0, (double) hand(i))),
                row(
                        "a word for a value",
                        "1 number with labels: Distance in cm",
                        i -> "State: " + (hand(i) < 100 ? "near" : "far") + " Distance: " + hand(i) + "cm",
                        i -> says((double) hand(i))),
                row(
                        "text among the keys of an object",
                        "2 numbers with labels parted by commas, from { to }: d, l",
                        i -> "{\"s\":\"" + (i % 3 == 0 ? "ok" : "busy") + "\",\"d\":" + decimal(i, 1) + ",\"l\":"
                                + light(i) + "}",
                        i -> says(value(i, 1), (double) light(i))),
                row(
                        "terminal colours",
                        "1 number with labels: dist in cm",
                        i -> "\u001b[32mdist: " + hand(i) + " cm\u001b[0m",
                        i -> says((double) hand(i))),
                row(
                        "screen cleared each time",
                        "1 number a line: 1",
                        i -> "\u001b[2J\u001b[H" + decimal(i, 2),
                        i -> says(value(i, 2))),
                row(
                        "decimal comma and blanks",
                        "2 numbers a line parted by blanks, decimal comma: 1, 2",
                        i -> decimal(i, 1).replace('.', ',') + " "
                                + decimal(i + 3, 1).replace('.', ','),
                        i -> says(value(i, 1), value(i + 3, 1))),
                row(
                        "label in UTF-8",
                        "1 number with labels: H\u00f6he in mm",
                        i -> "H\u00c3\u00b6he: " + hand(i) + " mm",
                        i -> says((double) hand(i))),
                row(
                        "unit in brackets",
                        "1 number with labels: Distance [cm]",
                        i -> "Distance [cm] = " + decimal(i, 1),
                        i -> says(value(i, 1))),
                row(
                        "letters between the numbers",
                        "3 numbers with labels parted by blanks: A, B, C",
                        i -> "A" + hand(i) + "B" + light(i) + "C" + i % 12,
                        i -> says((double) hand(i), (double) light(i), (double) (i % 12))),
                // the check sum of NMEA 0183: all characters between $ and * by exclusive or, two digits to base 16
                row(
                        "a check sum",
                        "2 numbers a line parted by commas, from $: 1, 2",
                        i -> {
                            String body = "HS," + hand(i) + "," + light(i);
                            return String.format(
                                    Locale.ROOT, "$%s*%02X", body, body.chars().reduce(0, (a, b) -> a ^ b));
                        },
                        both),
                row("a colon between", "2 numbers a line parted by colons: 1, 2", i -> hand(i) + ":" + light(i), both),
                row(
                        "a colon between numbers that hardly move",
                        "2 numbers a line parted by colons: 1, 2",
                        i -> (41 + i * 7 % 5 % 2) + ":" + light(i),
                        i -> says(41.0 + i * 7 % 5 % 2, (double) light(i))),
                row(
                        "keys by number, in turn",
                        "2 numbers with labels in 2 lines: 1, 2",
                        i -> (1 + i % 2) + ": " + hand(i),
                        i -> i % 2 == 0 ? null : says((double) hand(i - 1), (double) hand(i))),
                row(
                        "one label for two numbers",
                        "4 numbers a line parted by blanks: R, 2, 3 (R), 4",
                        i -> "R1 " + hand(i) + " R2 " + light(i),
                        i -> says(1.0, (double) hand(i), 2.0, (double) light(i))),
                row(
                        "a log's own time and name",
                        "2 numbers with labels parted by blanks: I, 2 (main: Distance) in mm",
                        i -> "I (" + (300 + 20 * i) + ") main: Distance " + hand(i) + " mm",
                        i -> says(300.0 + 20 * i, (double) hand(i))),
                row(
                        "decimal comma proved by a zero",
                        "1 number a line, decimal comma: 1",
                        i -> hand(i) + "," + (i % 3 == 0 ? "05" : "47"),
                        i -> says(hand(i) + (i % 3 == 0 ? 0.05 : 0.47))));
    }
}
