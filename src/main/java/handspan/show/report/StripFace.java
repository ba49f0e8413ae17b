package handspan.show.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What stands on the strip itself: a scale of millimetres at its upper edge, what it is for, the zone's ends, the
 * notes' widths, their names, and the lines that lead to them from its lower edge.
 *
 * @param strip what it says
 * @param names those that found room
 * @param frame where
 */
record StripFace(NoteStrip strip, List<NameRows.Name> names, StripFrame frame) {
    private static final String EDGE = "this edge at the sensor";

    private static final double FIGURES_BASE_MM = 8.2;
    private static final double FIGURES_POINTS = 7.5;
    private static final double ABOUT_BASE_MM = 12.6;
    private static final double ABOUT_POINTS = 7;
    private static final double UNNAMED_FROM_MM = 49;
    private static final double BELOW_NAME_MM = 1.8;
    private static final double BETWEEN_ROWS_MM = 2;
    private static final double NOTE_LINE_MM = 0.35;
    private static final double CHIEF_LINE_MM = 0.8;

    void draw() {
        scale();
        about();
        new StripEnds(strip, frame).draw();
        new StripWidths(strip, frame).draw();
        lines();
        writeNames();
        if (frame.page().number() == 1) {
            edge();
        }
    }

    private void scale() {
        for (int mm = (int) Math.ceil(frame.page().fromMm()); mm <= frame.page().toMm(); mm++) {
            double lengthMm = mm % 10 == 0 ? 4.8 : mm % 5 == 0 ? 3.4 : 2.2;
            double x = frame.x(mm);
            frame.pen().line(x, frame.y(0), x, frame.y(lengthMm), mm % 10 == 0 ? 0.2 : 0.1);
            String figure = String.valueOf(mm);
            double half = frame.pen().widthMm(figure, FIGURES_POINTS) / 2 + 0.3;
            if (mm % 10 == 0 && frame.page().holds(mm - half, mm + half)) {
                frame.pen().text(figure, x, frame.y(FIGURES_BASE_MM), FIGURES_POINTS, Pen.Side.AROUND);
            }
        }
        if (frame.page().number() == 1) {
            frame.pen().text("0 mm", frame.x(0.5), frame.y(FIGURES_BASE_MM), FIGURES_POINTS, Pen.Side.RIGHT_OF);
        }
    }

    /** On the strip too, because the rest of the sheet gets cut away. */
    private void about() {
        StripPage page = frame.page();
        double from = page.joinBeforeMm().orElse(page.fromMm()) + 2;
        double to = page.joinAfterMm().orElse(page.toMm()) - 2;
        String text = frame.pen()
                .shortened(
                        strip.hand().word() + " hand, " + strip.source() + ", " + strip.about(),
                        to - from,
                        ABOUT_POINTS);
        frame.pen().text(text, frame.x(from), frame.y(ABOUT_BASE_MM), ABOUT_POINTS, Pen.Side.RIGHT_OF);
    }

    private void lines() {
        for (NoteStrip.Mark mark : strip.marks()) {
            if (frame.page().holds(mark.mm())) {
                double from = names.stream()
                        .filter(name -> name.mark().equals(mark))
                        .mapToDouble(name -> baseMm(name) + BELOW_NAME_MM)
                        .findFirst()
                        .orElse(UNNAMED_FROM_MM);
                double x = frame.x(mark.mm());
                frame.pen()
                        .line(
                                x,
                                frame.y(from),
                                x,
                                frame.y(StripFrame.HEIGHT_MM),
                                mark.chief() ? CHIEF_LINE_MM : NOTE_LINE_MM);
            }
        }
    }

    private void writeNames() {
        for (NameRows.Name name : names) {
            if (frame.page().holds(name.leftMm(), name.rightMm())) {
                frame.pen()
                        .text(
                                name.mark().name(),
                                frame.x(name.leftMm()),
                                frame.y(baseMm(name)),
                                name.points(),
                                Pen.Side.RIGHT_OF);
            }
        }
    }

    /** Base line of a name, from the strip's upper edge. */
    private double baseMm(NameRows.Name name) {
        int rows = 1 + names.stream().mapToInt(NameRows.Name::row).max().orElse(0);
        double points = names.stream().mapToDouble(NameRows.Name::points).max().orElse(NameRows.GOOD_POINTS);
        double lowestMm = 37 + 3.5 * rows;
        return lowestMm - name.row() * (Pen.capitalMm(points) + BETWEEN_ROWS_MM);
    }

    /** Heights, from and to, that a line down the strip at a distance must leave out to cross no name or figure. */
    List<double[]> takenAt(double mm) {
        List<double[]> taken = new ArrayList<>();
        if (new StripWidths(strip, frame).isCrossedAt(mm)) {
            taken.add(new double[] {StripWidths.FROM_MM, StripWidths.TO_MM});
        }
        names.stream()
                .filter(name -> name.leftMm() - 0.5 < mm && mm < name.rightMm() + 0.5)
                .map(name -> new double[] {baseMm(name) - Pen.capitalMm(name.points()) - 1, baseMm(name) + 1})
                .sorted(Comparator.comparingDouble(part -> part[0]))
                .forEach(taken::add);
        return taken;
    }

    /** Says which edge is the sensor's, as large as the free stretch before the first name allows. */
    private void edge() {
        Pen pen = frame.pen();
        double firstMm = Math.min(
                strip.marks().get(0).mm(),
                names.stream()
                        .mapToDouble(NameRows.Name::leftMm)
                        .min()
                        .orElse(strip.zone().nearMm()));
        if (firstMm >= pen.widthMm(EDGE, 12) + 11) {
            edgeArrow(34);
            pen.text(EDGE, frame.x(8), frame.y(35.5), 12, Pen.Side.RIGHT_OF);
        } else if (firstMm >= pen.widthMm("this edge", 11) + 6) {
            edgeArrow(29);
            pen.paragraph(EDGE, frame.x(2), frame.y(35), pen.widthMm("this edge", 11) + 0.1, 11);
        } else if (firstMm >= 8) {
            pen.upwards(EDGE, frame.x(5), frame.y(52), 8.5);
        }
    }

    private void edgeArrow(double fromTopMm) {
        double y = frame.y(fromTopMm);
        frame.pen().line(frame.x(3), y, frame.x(7), y, 0.5);
        frame.pen().head(frame.x(1), y, frame.x(4), y);
    }
}
