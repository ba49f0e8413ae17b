package handspan.show.report;

import handspan.number.units.Figures;
import handspan.room.Zone;

/**
 * The row of a strip that says where the zone ends and which way it goes up.
 *
 * @param strip what it says
 * @param frame where
 */
record StripEnds(NoteStrip strip, StripFrame frame) {
    private static final double POINTS = 7.5;
    private static final double FROM_MM = 13.8;
    private static final double BASE_MM = 17.4;
    private static final double TO_MM = 22.6;
    private static final double BESIDE_MM = 1.5;
    private static final double APART_MM = 3;
    private static final double LONGEST_ARROW_MM = 40;
    private static final double LEAST_SHAFTS_MM = 12;

    void draw() {
        Zone zone = strip.zone();
        end(zone.nearMm());
        end(zone.farMm());
        String near = "near end " + mm(zone.nearMm()) + ": " + strip.nearWords();
        String far = strip.farWords() + ": far end " + mm(zone.farMm());
        if (width(near) + width(far) + 2 * BESIDE_MM + APART_MM > zone.lengthMm()) {
            near = mm(zone.nearMm()) + " " + strip.nearWords();
            far = strip.farWords() + " " + mm(zone.farMm());
        }
        double nearTo = zone.nearMm() + BESIDE_MM + width(near);
        double farFrom = zone.farMm() - BESIDE_MM - width(far);
        if (frame.page().holds(zone.nearMm(), nearTo)) {
            text(near, zone.nearMm() + BESIDE_MM);
        }
        if (frame.page().holds(farFrom, zone.farMm())) {
            text(far, farFrom);
        }
        StripPage page = frame.page();
        arrow(
                Math.max(nearTo, page.joinBeforeMm().orElse(page.fromMm())) + APART_MM,
                Math.min(farFrom, page.joinAfterMm().orElse(page.toMm())) - APART_MM);
    }

    private static String mm(double mm) {
        return Figures.text(mm, 1) + " mm";
    }

    private double width(String text) {
        return frame.pen().widthMm(text, POINTS);
    }

    private void text(String text, double fromMm) {
        frame.pen().text(text, frame.x(fromMm), frame.y(BASE_MM), POINTS, Pen.Side.RIGHT_OF);
    }

    private void end(double mm) {
        double x = frame.x(mm);
        if (frame.page().holds(mm)) {
            frame.pen().line(x, frame.y(FROM_MM), x, frame.y(TO_MM - 1), 0.3);
        }
        if (frame.page().holds(mm - 1, mm + 1)) {
            frame.pen().head(x, frame.y(TO_MM), x, frame.y(TO_MM - 2));
        }
    }

    /** An arrow around its word, in the middle of what is free. */
    private void arrow(double fromMm, double toMm) {
        double word = width(strip.moreWords());
        double length = Math.min(LONGEST_ARROW_MM, toMm - fromMm);
        if (length < word + LEAST_SHAFTS_MM) {
            return;
        }
        double left = frame.x((fromMm + toMm - length) / 2);
        double right = left + length;
        double middle = (left + right) / 2;
        double y = frame.y(BASE_MM - Pen.capitalMm(POINTS) / 2);
        double tip = strip.moreFar() ? right : left;
        double back = strip.moreFar() ? right - 3 : left + 3;
        frame.pen().line(strip.moreFar() ? left : back, y, middle - word / 2 - 1, y, 0.4);
        frame.pen().line(middle + word / 2 + 1, y, strip.moreFar() ? back : right, y, 0.4);
        frame.pen().head(tip, y, back, y);
        frame.pen().text(strip.moreWords(), middle, frame.y(BASE_MM), POINTS, Pen.Side.AROUND);
    }
}
