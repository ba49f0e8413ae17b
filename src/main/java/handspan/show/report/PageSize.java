package handspan.show.report;

import handspan.number.units.Figures;

/**
 * A page, as it lies before the reader.
 *
 * @param widthMm from left to right, 50..2000
 * @param heightMm from top to bottom, 50..2000
 */
public record PageSize(double widthMm, double heightMm) {
    private static final double LEAST_MM = 50;
    private static final double MOST_MM = 2000;

    /** Checks both sides. */
    public PageSize {
        if (!(Math.min(widthMm, heightMm) >= LEAST_MM && Math.max(widthMm, heightMm) <= MOST_MM)) {
            throw new IllegalArgumentException("page of " + Figures.text(widthMm, 1) + " x " + Figures.text(heightMm, 1)
                    + " mm (" + Figures.text(LEAST_MM, 0) + ".." + Figures.text(MOST_MM, 0) + " each way)");
        }
    }
}
