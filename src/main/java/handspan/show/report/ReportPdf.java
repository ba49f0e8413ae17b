package handspan.show.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Prints a report: upright pages with their numbers, two to four of them. */
final class ReportPdf {
    private static final double SIDE_MM = 18;
    private static final double TOP_MM = 16;
    private static final double BOTTOM_MM = 20;
    private static final double FOOT_MM = 12;
    private static final double TITLE_POINTS = 20;
    private static final double LEAST_TITLE_POINTS = 9;

    /** For a title that fills its line to the hair, mm. */
    private static final double HAIR_MM = 1e-6;

    private static final double TITLE_MM = 14;
    private static final double FOOT_POINTS = 8;
    private static final double NUMBER_ROOM_MM = 20;

    /** Heights of charts over what they ask for: the largest that gives the fewest pages and torn tables is taken. */
    private static final double[] SCALES = {1, 0.94, 0.88, 0.82, 0.76};

    /** More pages than these, and charts become lower still. */
    private static final int MOST_PAGES = 4;

    /** So many torn tables are better than one more page. */
    private static final long TORN_PER_PAGE = 10;

    private static final double[] LOWER = {0.7, 0.64, 0.58};

    private final RoomReport report;
    private final PageSize size;
    private final VectorPdf pdf;

    private ReportPdf(RoomReport report, PageSize size, VectorPdf pdf) {
        this.report = report;
        this.size = size;
        this.pdf = pdf;
    }

    /**
     * Prints.
     *
     * @param file replaced if it is there; its folder must exist
     * @return how many pages
     */
    static int write(RoomReport report, Paper paper, Path file) throws IOException {
        try (VectorPdf pdf = new VectorPdf("Handspan report: " + report.title())) {
            int pages = new ReportPdf(report, paper.portrait(), pdf).draw();
            pdf.write(file);
            return pages;
        }
    }

    private int draw() throws IOException {
        List<List<SheetFlow.Placed>> pages = pages();
        for (int i = 0; i < pages.size(); i++) {
            List<SheetFlow.Placed> blocks = pages.get(i);
            String number = (i + 1) + " of " + pages.size();
            pdf.page(size, graphics -> {
                Pen pen = new Pen(graphics, pdf.font());
                blocks.forEach(placed -> placed.block().draw(pen, SIDE_MM, TOP_MM + placed.y()));
                foot(pen, number);
            });
        }
        return pages.size();
    }

    private List<List<SheetFlow.Placed>> pages() {
        List<List<SheetFlow.Placed>> best = pages(SCALES[0]);
        for (double scale : SCALES) {
            List<List<SheetFlow.Placed>> pages = pages(scale);
            best = cost(pages) < cost(best) ? pages : best;
        }
        for (double scale : LOWER) {
            best = best.size() > MOST_PAGES ? pages(scale) : best;
        }
        return best;
    }

    /** Pages count most, then tables that go on over a page's end. */
    private static long cost(List<List<SheetFlow.Placed>> pages) {
        long torn = pages.stream().filter(page -> page.get(0).isAgain()).count();
        return TORN_PER_PAGE * pages.size() + torn;
    }

    private List<List<SheetFlow.Placed>> pages(double chartScale) {
        double widthMm = size.widthMm() - 2 * SIDE_MM;
        List<SheetBlock> blocks = new ArrayList<>();
        blocks.add(title(widthMm));
        blocks.addAll(new SheetBlocks(pdf.font(), widthMm, chartScale).of(report.parts()));
        return new SheetFlow(size.heightMm() - TOP_MM - BOTTOM_MM).pages(blocks);
    }

    /** As large as fits. */
    private Title title(double widthMm) {
        double asIsMm = pdf.font().widthMm(report.title(), TITLE_POINTS);
        double points = Math.max(LEAST_TITLE_POINTS, TITLE_POINTS * Math.min(1, widthMm / asIsMm));
        return new Title(pdf.font().shortened(report.title(), widthMm + HAIR_MM, points), points);
    }

    private void foot(Pen pen, String number) {
        double base = size.heightMm() - FOOT_MM;
        double right = size.widthMm() - SIDE_MM;
        String words = pen.shortened(report.foot(), right - SIDE_MM - NUMBER_ROOM_MM, FOOT_POINTS);
        pen.text(words, SIDE_MM, base, FOOT_POINTS, Pen.Side.RIGHT_OF, SheetBlocks.QUIET);
        pen.text(number, right, base, FOOT_POINTS, Pen.Side.LEFT_OF, SheetBlocks.QUIET);
    }

    private record Title(String words, double points) implements SheetBlock {
        @Override
        public double heightMm() {
            return TITLE_MM;
        }

        @Override
        public void draw(Pen pen, double x, double y) {
            pen.text(words, x, y + Pen.capitalMm(TITLE_POINTS), points, Pen.Side.RIGHT_OF);
        }

        @Override
        public boolean keepsWithNext() {
            return true;
        }
    }
}
