package handspan.show.report;

import java.util.ArrayList;
import java.util.List;

/** A report in characters, for a terminal: without its charts. */
public final class ReportText {
    private static final int NAME_COLUMNS = 17;

    /** A blank at which no line ends. */
    private static final String KEPT = "\u00a0";

    private ReportText() {}

    /**
     * Its lines.
     *
     * @param columns characters in a line, 40 and more
     */
    public static List<String> lines(List<ReportPart> parts, int columns) {
        List<String> lines = new ArrayList<>();
        for (ReportPart part : parts) {
            if (part instanceof ReportPart.Heading heading) {
                lines.add("");
                lines.add(heading.words());
            } else if (part instanceof ReportPart.Words words) {
                lines.addAll(PlainPage.wrapped(words.words(), columns));
            } else if (part instanceof ReportPart.Points points) {
                points.sentences().forEach(sentence -> hung(lines, "-", 2, sentence, columns));
            } else if (part instanceof ReportPart.Facts facts) {
                facts.facts().forEach(fact -> hung(lines, fact.name(), NAME_COLUMNS, fact.words(), columns));
            } else if (part instanceof ReportPart.Grid grid) {
                lines.add("");
                lines.addAll(PlainPage.wrapped(grid.caption(), columns));
                List<List<String>> rows = new ArrayList<>(List.of(grid.columns()));
                rows.addAll(grid.rows());
                lines.addAll(new PlainTable(rows).lines(columns));
            }
        }
        return lines;
    }

    /** Words beside a name, all their lines as far in. */
    private static void hung(List<String> lines, String name, int indent, String words, int columns) {
        List<String> broken = PlainPage.wrapped(words.replace(" %", KEPT + "%"), columns - indent);
        for (int i = 0; i < broken.size(); i++) {
            String before = i == 0 ? name : "";
            lines.add(before
                    + " ".repeat(Math.max(1, indent - before.length()))
                    + broken.get(i).replace(KEPT, " "));
        }
    }
}
