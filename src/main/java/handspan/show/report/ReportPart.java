package handspan.show.report;

import handspan.show.chart.Theme;
import java.util.List;
import org.jfree.chart.JFreeChart;

/** Something that stands by itself in a report, whatever it is written on. */
public sealed interface ReportPart {
    /** What begins a section. */
    record Heading(String words) implements ReportPart {}

    /** A paragraph. */
    record Words(String words) implements ReportPart {}

    /** Sentences of one kind, each with a mark before it. */
    record Points(List<String> sentences) implements ReportPart {
        /** Copies the list. */
        public Points {
            sentences = List.copyOf(sentences);
        }
    }

    /** What is known by name. */
    record Facts(List<Fact> facts) implements ReportPart {
        /** Copies the list. */
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /**
     * One of them.
     *
     * @param name of what
     * @param words what is known of it
     */
    record Fact(String name, String words) {}

    /**
     * A table. Its first column names the rows.
     *
     * @param caption what it shows
     * @param columns heads of the columns, units included
     * @param rows as many cells each as there are columns
     * @param sums how many of the last rows sum up those above
     */
    record Grid(String caption, List<String> columns, List<List<String>> rows, int sums) implements ReportPart {
        /** Copies the lists and checks that each row is whole. */
        public Grid {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException("table '" + caption + "' with a row of " + row.size()
                            + " cells (" + columns.size() + ", one for each column): " + row);
                }
            }
        }
    }

    /**
     * A chart.
     *
     * @param title in a few words
     * @param words what it shows, for those who can't see it
     * @param heightMm on paper, before a page asks for less
     * @param drawn the chart itself
     */
    record Chart(String title, String words, double heightMm, Drawn drawn) implements ReportPart {}

    /** A chart that can be drawn for day and for night. */
    interface Drawn {
        /** Draws. */
        JFreeChart in(Theme theme);
    }
}
