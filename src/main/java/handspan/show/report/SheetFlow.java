package handspan.show.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Shares blocks out over pages, in their order.
 *
 * @param heightMm of a page, between its margins
 */
record SheetFlow(double heightMm) {
    /** For sums of heights that fill a page to the hair, mm. */
    private static final double HAIR_MM = 1e-6;

    /**
     * A block in its place.
     *
     * @param block what
     * @param y how far below the upper margin, mm
     * @param isAgain whether it is only said anew, for what goes on below it
     */
    record Placed(SheetBlock block, double y, boolean isAgain) {}

    /** The pages; a block that is higher than a page has one to itself. */
    List<List<Placed>> pages(List<SheetBlock> blocks) {
        List<List<Placed>> pages = new ArrayList<>();
        List<Placed> page = new ArrayList<>();
        double y = 0;
        for (int i = 0; i < blocks.size(); i++) {
            if (!page.isEmpty() && y + togetherMm(blocks, i) > heightMm + HAIR_MM) {
                pages.add(page);
                page = new ArrayList<>();
                y = 0;
                SheetBlock head = blocks.get(i).head().orElse(null);
                if (head != null) {
                    page.add(new Placed(head, y, true));
                    y += head.heightMm();
                }
            }
            page.add(new Placed(blocks.get(i), y, false));
            y += blocks.get(i).heightMm();
        }
        if (!page.isEmpty()) {
            pages.add(page);
        }
        return pages;
    }

    /** Height of a block and of those that must stand below it, up to what a page holds. */
    private double togetherMm(List<SheetBlock> blocks, int from) {
        double sum = blocks.get(from).heightMm();
        for (int i = from; i + 1 < blocks.size() && blocks.get(i).keepsWithNext(); i++) {
            double more = sum + blocks.get(i + 1).heightMm();
            if (more > heightMm) {
                return sum;
            }
            sum = more;
        }
        return sum;
    }
}
