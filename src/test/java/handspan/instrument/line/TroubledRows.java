package handspan.instrument.line;

import static handspan.instrument.line.Row.decimal;
import static handspan.instrument.line.Row.hand;
import static handspan.instrument.line.Row.light;
import static handspan.instrument.line.Row.row;
import static handspan.instrument.line.Row.says;
import static handspan.instrument.line.Row.value;

import java.util.stream.Stream;

/** Lines among the others that have nothing to tell, and lines that come besides. */
final class TroubledRows {
    private TroubledRows() {}

    private static Row outOfSight(String words) {
        return row(
                "instead of a line: " + words,
                "1 number with labels: Distance in cm",
                i -> isLost(i) ? words : "Distance: " + hand(i) + " cm",
                i -> isLost(i) ? says((Double) null) : says((double) hand(i)));
    }

    private static Row noNumber(String words) {
        return row(
                "instead of a number: " + words,
                "2 numbers with labels parted by blanks: dist, light",
                i -> "dist=" + (i % 4 == 3 ? words : decimal(i, 1)) + " light=" + light(i),
                i -> says(i % 4 == 3 ? null : (Double) value(i, 1), (double) light(i)));
    }

    private static Row noNumberAfterColon(String words) {
        return row(
                "after the colon: " + words,
                "1 number with labels: Distance",
                i -> "Distance: " + (i % 4 == 3 ? words : decimal(i, 1)),
                i -> says(i % 4 == 3 ? null : (Double) value(i, 1)));
    }

    private static Row emptyColumn(String words) {
        return row(
                "a column of " + words,
                "2 numbers a line parted by commas: 1, 2",
                i -> hand(i) + "," + (i % 4 == 3 ? words : "" + light(i)),
                i -> says((double) hand(i), i % 4 == 3 ? null : (Double) (double) light(i)));
    }

    /** A hand is lost now and then, never after equally many lines for long. */
    private static boolean isLost(int i) {
        return i % 8 == 4 + i / 8 % 3;
    }

    static Stream<Row> nothingToTell() {
        return Stream.of(
                        Stream.of(
                                        " out of range ",
                                        "Out of range...",
                                        "OUT",
                                        "No echo",
                                        "---",
                                        "timeout!",
                                        "Sensor out of range")
                                .map(TroubledRows::outOfSight),
                        Stream.of("nan", "---", "timeout", "inf", "N/A", "?", "ERR")
                                .map(TroubledRows::noNumber),
                        Stream.of("Out of range", "---", "n/a", "timeout", "too far", ">200", "<2")
                                .map(TroubledRows::noNumberAfterColon),
                        Stream.of("", "NaN", "nan", "inf", "ovf", "--", "error", "out of range", ">4000")
                                .map(TroubledRows::emptyColumn),
                        Stream.of(
                                row(
                                        "no reading by number",
                                        "2 numbers a line parted by commas: 1, 2",
                                        i -> (i % 4 == 3 ? "-1" : i % 4 == 2 ? "8190" : "" + hand(i)) + "," + light(i),
                                        i -> says(
                                                i % 4 == 3 ? -1.0 : i % 4 == 2 ? 8190.0 : hand(i), (double) light(i))),
                                row(
                                                "a word of the board's own, learned by its place",
                                                "1 number a line: 1",
                                                i -> isLost(i) ? "nobody" : "" + hand(i),
                                                // three times it is only counted, and judged when the next line has
                                                // come
                                                i -> isLost(i)
                                                        ? (i < 28 ? null : says((Double) null))
                                                        : says((double) hand(i)))
                                        .rejecting(Rejection.NO_NUMBER, 3)))
                .flatMap(rows -> rows);
    }

    static Stream<Row> besides() {
        return Stream.of(
                row(
                                "blocks with a line drawn between",
                                "2 numbers with labels in 2 lines: Dist in mm, Light",
                                i -> i % 3 == 2
                                        ? "----------"
                                        : i % 3 == 0 ? "Dist: " + hand(i) + " mm" : "Light: " + light(i),
                                i -> i % 3 == 1 ? says((double) hand(i - 1), (double) light(i)) : null)
                        .rejecting(Rejection.NO_NUMBER, 66),
                row(
                                "a line drawn after each reading, as short as a word for nothing",
                                "1 number with labels: Distance in cm",
                                i -> i % 2 == 1 ? "---" : "Distance: " + hand(i) + " cm",
                                // it takes four of them to see that they come round
                                i -> i % 2 == 0 ? says((double) hand(i)) : i < 7 ? says((Double) null) : null)
                        .rejecting(Rejection.NO_NUMBER, 97),
                row(
                                "a word that comes round",
                                "1 number a line: 1",
                                i -> i % 8 == 7 ? "tick..." : "" + hand(i),
                                i -> i % 8 == 7 ? null : says((double) hand(i)))
                        .rejecting(Rejection.NO_NUMBER, 25),
                row(
                                "another line now and then",
                                "1 number with labels: d in mm",
                                i -> i % 10 == 9 ? "BUSY  lo:37  hi: 880  thr: 248     871" : "d: " + hand(i) + " mm",
                                i -> i % 10 == 9 ? null : says((double) hand(i)))
                        .rejecting(Rejection.OTHER_LABEL, 20),
                row(
                                "cut lines",
                                "2 numbers a line parted by commas: 1, 2",
                                i -> i % 10 == 9 ? light(i) + "" : hand(i) + "," + light(i),
                                i -> i % 10 == 9 ? null : says((double) hand(i), (double) light(i)))
                        .rejecting(Rejection.OTHER_COUNT, 20),
                row(
                                "frames cut short",
                                "2 numbers a line parted by commas, from < to >: 1, 2",
                                i -> "<" + hand(i) + "," + light(i) + (i % 20 == 19 ? "" : ">"),
                                i -> i % 20 == 19 ? null : says((double) hand(i), (double) light(i)))
                        .rejecting(Rejection.CUT, 10),
                row(
                                "two lines in one",
                                "1 number with labels: Level now",
                                i -> i % 10 == 9 ? "Level now:Level now: 0.00" : "Level now: " + decimal(i, 2),
                                i -> i % 10 == 9 ? null : says(value(i, 2)))
                        .rejecting(Rejection.OTHER_LABEL, 20),
                row(
                                "bytes that are no text",
                                "1 number with labels: echo in \u00b5s",
                                i -> i % 10 == 9 ? "x\u0080\u00f8\u0000\u00e6" : "echo: " + light(i) + " \u00c2\u00b5s",
                                i -> i % 10 == 9 ? null : says((double) light(i)))
                        .rejecting(Rejection.NOT_TEXT, 20),
                row(
                                "what a board says as it starts",
                                "2 numbers a line parted by commas: 1, 2",
                                i -> i < 3
                                        ? new String[] {"sensor test", "setup()...", "card initialized."}[i]
                                        : hand(i) + "," + light(i),
                                i -> i < 3 ? null : says((double) hand(i), (double) light(i)))
                        .rejecting(Rejection.NO_NUMBER, 3));
    }
}
