package handspan.show.report;

/**
 * Where a sheet's share of a strip lies on the sheet: strip distances to the right, heights downwards from the strip's
 * upper edge.
 *
 * @param page this sheet's share
 * @param pen to draw with
 */
record StripFrame(StripPage page, Pen pen) {
    /** From the sheet's left edge to the beginning of its share; as much stays free at the right. */
    static final double LEFT_MM = 12;

    /** From the sheet's upper edge to the strip's. */
    static final double TOP_MM = 62;

    /** Height of the strip. */
    static final double HEIGHT_MM = 58;

    /** How far the lines to cut along go on beyond its corners. */
    private static final double BEYOND_MM = 4;

    /** Where a distance lies on the sheet. */
    double x(double mm) {
        return LEFT_MM + mm - page.fromMm();
    }

    /** Where a height lies on the sheet. */
    double y(double fromTopMm) {
        return TOP_MM + fromTopMm;
    }

    /** Draws the edge to cut along. */
    void draw() {
        double left = x(page.fromMm());
        double right = x(page.toMm());
        for (double y : new double[] {y(0), y(HEIGHT_MM)}) {
            pen.line(left, y, right, y, Pen.FINE_MM);
        }
        for (double x : new double[] {left, right}) {
            pen.line(x, y(-BEYOND_MM), x, y(HEIGHT_MM + BEYOND_MM), Pen.FINE_MM);
        }
    }
}
