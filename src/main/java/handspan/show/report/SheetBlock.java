package handspan.show.report;

import java.util.Optional;

/** A piece of a page that is never torn: a line, a paragraph, a row, a chart. */
interface SheetBlock {
    /** How high it is, with the white below it, mm. */
    double heightMm();

    /**
     * Draws it.
     *
     * @param pen of the page
     * @param x left edge, mm
     * @param y upper edge, mm
     */
    void draw(Pen pen, double x, double y);

    /** Whether the piece after it must stand on the same page. */
    default boolean keepsWithNext() {
        return false;
    }

    /** What is said anew above it where it begins a page. */
    default Optional<SheetBlock> head() {
        return Optional.empty();
    }
}
