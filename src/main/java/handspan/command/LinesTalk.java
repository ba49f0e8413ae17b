package handspan.command;

import handspan.instrument.line.TextMeter;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;

/** What is worth a word about the text that a board sends. */
final class LinesTalk {
    /** As many bytes without a line end are no line. */
    private static final long NO_LINE = 1000;

    private LinesTalk() {}

    /** A word of a command line as it has to be typed. */
    static String typed(String word) {
        return word.indexOf(' ') < 0 ? word : '"' + word + '"';
    }

    static List<String> remarks(Snapshot snapshot) {
        List<String> remarks = new ArrayList<>();
        if (!snapshot.text().remark().isEmpty()) {
            boolean failed =
                    snapshot.text().remark().toLowerCase(java.util.Locale.ROOT).contains("fail");
            remarks.add("the board said: '" + snapshot.text().remark() + "'"
                    + (failed && snapshot.readings() == 0 ? ": is the sensor wired as its program expects?" : ""));
        }
        if (snapshot.text().sinceLineEnd() > NO_LINE) {
            remarks.add("no line end in " + snapshot.text().sinceLineEnd()
                    + " bytes: this is no text; let the board print its numbers as lines (println, not write)");
        } else if (snapshot.text().garbled01() > TextMeter.GARBLED01) {
            remarks.add(Figures.text(100 * snapshot.text().garbled01(), 0)
                    + " % of what came is no text: is the baud rate right? Try --baud auto, or 115200 and 9600");
        }
        return remarks;
    }
}
