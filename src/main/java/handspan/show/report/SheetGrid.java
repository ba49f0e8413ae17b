package handspan.show.report;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A table on a page: its first column names the rows, the others stand to the right edge of theirs. A long one goes
 * into two halves beside each other; one that meets the end of a page goes on below its heads on the next.
 *
 * @param columns heads
 * @param widths of the columns, gaps included, mm
 * @param points size of the letters
 */
record SheetGrid(List<String> columns, List<Double> widths, double points) {
    private static final double USUAL_POINTS = 8.5;
    private static final double LEAST_POINTS = 6;
    private static final double STEP_POINTS = 0.25;
    private static final double ROW_LEADING = 1.5;
    private static final double[] GAPS_MM = {6, 5, 4, 3};
    private static final double LEAST_GAP_MM = 2.2;
    private static final double BETWEEN_HALVES_MM = 8;
    private static final double BELOW_MM = 3;
    private static final double CAPTION_MM = 5.5;

    /** A longer table goes into two halves. */
    private static final int LONG = 9;

    private static final Color FAINT = new Color(0xDCDFE3);

    /** The blocks of a table within a width. */
    static List<SheetBlock> of(ReportPart.Grid grid, SheetFont face, double widthMm) {
        boolean halves = grid.rows().size() > LONG && grid.sums() == 0;
        double withinMm = halves ? (widthMm - BETWEEN_HALVES_MM) / 2 : widthMm;
        SheetGrid sheet = fitted(grid, face, withinMm);
        List<SheetBlock> blocks = new ArrayList<>();
        blocks.add(sheet.new Heads(grid.caption(), halves ? withinMm + BETWEEN_HALVES_MM : 0));
        int count = halves ? (grid.rows().size() + 1) / 2 : grid.rows().size();
        for (int i = 0; i < count; i++) {
            List<String> right =
                    halves && i + count < grid.rows().size() ? grid.rows().get(i + count) : List.of();
            boolean summed = grid.sums() > 0 && i == count - grid.sums();
            blocks.add(sheet
            .new Row(
                    grid.caption(),
                    i,
                    count,
                    grid.rows().get(i),
                    right,
                    halves ? withinMm + BETWEEN_HALVES_MM : 0,
                    summed));
        }
        return blocks;
    }

    /** As large as fits, with gaps as wide as fit; at the least size the first column gives way. */
    private static SheetGrid fitted(ReportPart.Grid grid, SheetFont face, double withinMm) {
        for (double gapMm : GAPS_MM) {
            SheetGrid sheet = sized(grid, face, USUAL_POINTS, gapMm);
            if (sheet.wideMm() <= withinMm) {
                return sheet;
            }
        }
        int steps = (int) Math.round((USUAL_POINTS - LEAST_POINTS) / STEP_POINTS);
        for (int i = 1; i <= steps; i++) {
            SheetGrid sheet = sized(grid, face, USUAL_POINTS - i * STEP_POINTS, LEAST_GAP_MM);
            if (sheet.wideMm() <= withinMm) {
                return sheet;
            }
        }
        SheetGrid sheet = sized(grid, face, LEAST_POINTS, LEAST_GAP_MM);
        List<Double> narrowed = new ArrayList<>(sheet.widths);
        narrowed.set(0, Math.max(LEAST_GAP_MM, narrowed.get(0) - (sheet.wideMm() - withinMm)));
        return new SheetGrid(grid.columns(), narrowed, LEAST_POINTS);
    }

    private static SheetGrid sized(ReportPart.Grid grid, SheetFont face, double points, double gapMm) {
        List<Double> widths = new ArrayList<>();
        for (int column = 0; column < grid.columns().size(); column++) {
            double widest = face.widthMm(grid.columns().get(column), points);
            for (List<String> row : grid.rows()) {
                widest = Math.max(widest, face.widthMm(row.get(column), points));
            }
            widths.add(widest + (column == 0 ? 0 : gapMm));
        }
        return new SheetGrid(grid.columns(), widths, points);
    }

    private double wideMm() {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }

    private double rowMm() {
        return ROW_LEADING * points * VectorPdf.MM_PER_POINT;
    }

    private void cells(Pen pen, List<String> cells, double x, double y, Color color) {
        double base = y + (rowMm() + Pen.capitalMm(points)) / 2;
        double right = x;
        for (int i = 0; i < cells.size(); i++) {
            right += widths.get(i);
            if (i == 0) {
                pen.text(pen.shortened(cells.get(0), widths.get(0), points), x, base, points, Pen.Side.RIGHT_OF, color);
            } else {
                pen.text(cells.get(i), right, base, points, Pen.Side.LEFT_OF, color);
            }
        }
    }

    /** Caption and heads. */
    private final class Heads implements SheetBlock {
        private final String caption;
        private final double secondMm;

        /**
         * Heads.
         *
         * @param secondMm how far to the right they stand a second time; 0 for not
         */
        Heads(String caption, double secondMm) {
            this.caption = caption;
            this.secondMm = secondMm;
        }

        @Override
        public double heightMm() {
            return CAPTION_MM + rowMm();
        }

        @Override
        public boolean keepsWithNext() {
            return true;
        }

        @Override
        public void draw(Pen pen, double x, double y) {
            pen.text(
                    caption,
                    x,
                    y + Pen.capitalMm(SheetBlocks.TEXT_POINTS) + 1,
                    SheetBlocks.TEXT_POINTS,
                    Pen.Side.RIGHT_OF);
            heads(pen, x, y);
            if (secondMm > 0) {
                heads(pen, x + secondMm, y);
            }
        }

        private void heads(Pen pen, double x, double y) {
            cells(pen, columns, x, y + CAPTION_MM, SheetBlocks.QUIET);
            double foot = y + heightMm();
            pen.line(x, foot, x + wideMm(), foot, 2 * Pen.FINE_MM, SheetBlocks.QUIET);
        }
    }

    /** One row, or two beside each other. */
    private final class Row implements SheetBlock {
        private final String caption;
        private final int number;
        private final int count;
        private final List<String> left;
        private final List<String> right;
        private final double secondMm;
        private final boolean summed;

        Row(
                String caption,
                int number,
                int count,
                List<String> left,
                List<String> right,
                double secondMm,
                boolean summed) {
            this.caption = caption;
            this.number = number;
            this.count = count;
            this.left = left;
            this.right = right;
            this.secondMm = secondMm;
            this.summed = summed;
        }

        @Override
        public double heightMm() {
            return rowMm() + (number == count - 1 ? BELOW_MM : 0);
        }

        /** No row stands alone, at the foot or at the top of a page. */
        @Override
        public boolean keepsWithNext() {
            return number < count - 1 && (number < 2 || number >= count - 3);
        }

        @Override
        public Optional<SheetBlock> head() {
            return Optional.of(new Heads(number == 0 ? caption : caption + ", continued", secondMm));
        }

        @Override
        public void draw(Pen pen, double x, double y) {
            row(pen, left, x, y);
            if (!right.isEmpty()) {
                row(pen, right, x + secondMm, y);
            }
        }

        private void row(Pen pen, List<String> cells, double x, double y) {
            if (summed) {
                pen.line(x, y, x + wideMm(), y, 2 * Pen.FINE_MM, SheetBlocks.QUIET);
            }
            double foot = y + rowMm();
            pen.line(x, foot, x + wideMm(), foot, Pen.FINE_MM, FAINT);
            cells(pen, cells, x, y, Color.BLACK);
        }
    }
}
