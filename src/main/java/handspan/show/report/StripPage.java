package handspan.show.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A sheet's share of a strip. Neighbouring sheets show the same stretch about the line on which they are joined.
 *
 * @param number from 1
 * @param count how many sheets there are
 * @param fromMm where it begins on the strip
 * @param toMm where it ends
 * @param lapMm how far the same stretch reaches on either side of a join
 */
record StripPage(int number, int count, double fromMm, double toMm, double lapMm) {
    /** From join to join it is a multiple of this, so that all of them keep clear of the scale's figures. */
    private static final double STEP_MM = 10;

    /**
     * Shares a strip out evenly, so that none of the sheets bears a stub.
     *
     * @param lengthMm of the strip
     * @param usableMm of a sheet
     * @param lapMm how far the same stretch reaches on either side of a join
     */
    static List<StripPage> of(double lengthMm, double usableMm, double lapMm) {
        double bothMm = 2 * lapMm;
        double mostStepMm = Math.floor((usableMm - bothMm) / STEP_MM) * STEP_MM;
        int count = lengthMm <= usableMm ? 1 : (int) Math.ceil((lengthMm - bothMm) / mostStepMm);
        double stepMm = Math.ceil((lengthMm - bothMm) / count / STEP_MM) * STEP_MM;
        List<StripPage> pages = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double fromMm = i * stepMm;
            double toMm = i == count - 1 ? lengthMm : fromMm + stepMm + bothMm;
            pages.add(new StripPage(i + 1, count, fromMm, toMm, lapMm));
        }
        return pages;
    }

    /** Where it joins the sheet before it. */
    OptionalDouble joinBeforeMm() {
        return number == 1 ? OptionalDouble.empty() : OptionalDouble.of(fromMm + lapMm);
    }

    /** Where it joins the sheet after it. */
    OptionalDouble joinAfterMm() {
        return number == count ? OptionalDouble.empty() : OptionalDouble.of(toMm - lapMm);
    }

    /** Whether a stretch lies on this sheet as a whole. */
    boolean holds(double leftMm, double rightMm) {
        return leftMm >= fromMm && rightMm <= toMm;
    }

    /** Whether a place lies on this sheet. */
    boolean holds(double mm) {
        return holds(mm, mm);
    }
}
