package handspan.show.report;

import handspan.show.chart.Theme;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the parts of a report into blocks of a page.
 *
 * @param face of all text
 * @param widthMm between the margins
 * @param chartScale heights of charts over what they ask for
 */
record SheetBlocks(SheetFont face, double widthMm, double chartScale) {
    /** Of running text. */
    static final double TEXT_POINTS = 9;

    /** What is said beside the figures. */
    static final Color QUIET = new Color(0x525962);

    private static final double HEADING_POINTS = 12.5;
    private static final double ABOVE_HEADING_MM = 3;
    private static final double BELOW_HEADING_MM = 3.2;
    private static final double BELOW_PARAGRAPH_MM = 2;
    private static final double BELOW_FACT_MM = 0.7;
    private static final double BELOW_CHART_MM = 4;
    private static final double NAME_MM = 26;
    private static final double MARK_MM = 4;
    private static final double DOT_MM = 0.9;

    List<SheetBlock> of(List<ReportPart> parts) {
        List<SheetBlock> blocks = new ArrayList<>();
        for (ReportPart part : parts) {
            if (part instanceof ReportPart.Heading heading) {
                blocks.add(new Heading(heading.words()));
            } else if (part instanceof ReportPart.Words words) {
                blocks.add(new Paragraph(broken(words.words(), widthMm)));
            } else if (part instanceof ReportPart.Points points) {
                points(points.sentences(), blocks);
            } else if (part instanceof ReportPart.Facts facts) {
                facts.facts()
                        .forEach(fact -> blocks.add(new Named(fact.name(), broken(fact.words(), widthMm - NAME_MM))));
            } else if (part instanceof ReportPart.Grid grid) {
                blocks.addAll(SheetGrid.of(grid, face, widthMm));
            } else if (part instanceof ReportPart.Chart chart) {
                blocks.add(new Drawing(chart, widthMm, chart.heightMm() * chartScale));
            }
        }
        return blocks;
    }

    private void points(List<String> sentences, List<SheetBlock> blocks) {
        for (int i = 0; i < sentences.size(); i++) {
            boolean last = i == sentences.size() - 1;
            blocks.add(new Point(
                    broken(sentences.get(i), widthMm - MARK_MM),
                    last ? BELOW_PARAGRAPH_MM : BELOW_FACT_MM,
                    !last && (i == 0 || i == sentences.size() - 2)));
        }
    }

    private List<String> broken(String words, double within) {
        return face.broken(words, within, TEXT_POINTS);
    }

    private static double linesMm(List<String> lines) {
        return lines.size() * Pen.leadingMm(TEXT_POINTS);
    }

    /** Draws lines from an upper edge on. */
    private static void lines(Pen pen, List<String> lines, double x, double y) {
        double base = y + Pen.capitalMm(TEXT_POINTS);
        for (String line : lines) {
            pen.text(line, x, base, TEXT_POINTS, Pen.Side.RIGHT_OF);
            base += Pen.leadingMm(TEXT_POINTS);
        }
    }

    private record Heading(String words) implements SheetBlock {
        @Override
        public double heightMm() {
            return ABOVE_HEADING_MM + Pen.capitalMm(HEADING_POINTS) + BELOW_HEADING_MM;
        }

        @Override
        public void draw(Pen pen, double x, double y) {
            double base = y + ABOVE_HEADING_MM + Pen.capitalMm(HEADING_POINTS);
            pen.text(words, x, base, HEADING_POINTS, Pen.Side.RIGHT_OF);
        }

        @Override
        public boolean keepsWithNext() {
            return true;
        }
    }

    private record Paragraph(List<String> lines) implements SheetBlock {
        @Override
        public double heightMm() {
            return linesMm(lines) + (keepsWithNext() ? BELOW_FACT_MM : BELOW_PARAGRAPH_MM);
        }

        @Override
        public void draw(Pen pen, double x, double y) {
            SheetBlocks.lines(pen, lines, x, y);
        }

        /** What ends with a colon speaks of what follows. */
        @Override
        public boolean keepsWithNext() {
            return lines.get(lines.size() - 1).endsWith(":");
        }
    }

    private record Point(List<String> lines, double belowMm, boolean keepsWithNext) implements SheetBlock {
        @Override
        public double heightMm() {
            return linesMm(lines) + belowMm;
        }

        @Override
        public void draw(Pen pen, double x, double y) {
            double middle = y + Pen.capitalMm(TEXT_POINTS) / 2;
            pen.line(x + 1, middle, x + 1 + DOT_MM, middle, DOT_MM, QUIET);
            SheetBlocks.lines(pen, lines, x + MARK_MM, y);
        }
    }

    private record Named(String name, List<String> lines) implements SheetBlock {
        @Override
        public double heightMm() {
            return linesMm(lines) + BELOW_FACT_MM;
        }

        @Override
        public void draw(Pen pen, double x, double y) {
            pen.text(name, x, y + Pen.capitalMm(TEXT_POINTS), TEXT_POINTS, Pen.Side.RIGHT_OF, QUIET);
            SheetBlocks.lines(pen, lines, x + NAME_MM, y);
        }
    }

    private record Drawing(ReportPart.Chart chart, double widthMm, double chartMm) implements SheetBlock {
        @Override
        public double heightMm() {
            return chartMm + BELOW_CHART_MM;
        }

        @Override
        public void draw(Pen pen, double x, double y) {
            Rectangle2D place = new Rectangle2D.Double(x, y, widthMm, chartMm);
            ChartOnPage.draw(pen.page(), place, chart.drawn().in(Theme.LIGHT));
        }
    }
}
