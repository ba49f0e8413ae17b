package handspan.show.report;

import handspan.number.units.Figures;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/**
 * The rows of a strip that say how wide each note is: in one where the cells are wide, in two by turns where they are
 * narrow. What is too narrow even then bears no figure.
 *
 * @param strip what it says
 * @param frame where
 */
record StripWidths(NoteStrip strip, StripFrame frame) {
    /** Upper edge of the rows. */
    static final double FROM_MM = 18.8;

    /** Lower edge of the rows. */
    static final double TO_MM = 25.8;

    private static final double POINTS = 7;
    private static final double ROOM_MM = 0.4;

    /** What the arrows at the ends of the zone take of the upper row, to either side. */
    private static final double ARROW_MM = 0.7;

    private static final double[] BASES_MM = {22.2, 25};
    private static final double TICKS_TO_MM = 22.6;
    private static final double SHORT_TICKS_TO_MM = 20.1;
    private static final double EDGE_TICKS_FROM_MM = 54.5;
    private static final Color GREY = new Color(0x707070);

    /** A figure with its room. */
    private record Figure(String text, double middleMm, double halfMm, int row) {
        double leftMm() {
            return middleMm - halfMm;
        }

        double rightMm() {
            return middleMm + halfMm;
        }
    }

    void draw() {
        strip.cells().forEach(cell -> {
            boundary(cell.fromMm());
            boundary(cell.toMm());
        });
        for (Figure figure : figures()) {
            if (frame.page().holds(figure.leftMm(), figure.rightMm())) {
                frame.pen()
                        .text(
                                figure.text(),
                                frame.x(figure.middleMm()),
                                frame.y(BASES_MM[figure.row()]),
                                POINTS,
                                Pen.Side.AROUND);
            }
        }
    }

    /** Whether a figure stands where a line goes down. */
    boolean isCrossedAt(double mm) {
        return figures().stream().anyMatch(figure -> figure.leftMm() < mm && mm < figure.rightMm());
    }

    private List<Figure> figures() {
        List<Figure> figures = new ArrayList<>();
        double[] freeFromMm = {strip.zone().nearMm() + ARROW_MM, strip.zone().nearMm()};
        double freeToMm = strip.zone().farMm() - ARROW_MM;
        int turn = 0;
        for (NoteStrip.Cell cell : strip.cells()) {
            String text = Figures.text(cell.widthMm(), 1);
            int row = fits(cell) ? 0 : turn;
            Figure figure = new Figure(text, (cell.fromMm() + cell.toMm()) / 2, halfMm(text), row);
            if (figure.leftMm() >= freeFromMm[row] && figure.rightMm() <= freeToMm) {
                figures.add(figure);
                freeFromMm[row] = figure.rightMm();
            }
            turn = 1 - row;
        }
        return figures;
    }

    private boolean fits(NoteStrip.Cell cell) {
        return 2 * halfMm(Figures.text(cell.widthMm(), 1)) <= cell.widthMm();
    }

    private double halfMm(String text) {
        return frame.pen().widthMm(text, POINTS) / 2 + ROOM_MM;
    }

    /** Where one note ends and the next begins: long marks between figures, short ones above them. */
    private void boundary(double mm) {
        if (!frame.page().holds(mm)) {
            return;
        }
        double x = frame.x(mm);
        boolean between = strip.cells().stream()
                .filter(cell -> cell.fromMm() == mm || cell.toMm() == mm)
                .allMatch(this::fits);
        frame.pen().line(x, frame.y(EDGE_TICKS_FROM_MM), x, frame.y(StripFrame.HEIGHT_MM), 0.2, GREY);
        frame.pen().line(x, frame.y(FROM_MM), x, frame.y(between ? TICKS_TO_MM : SHORT_TICKS_TO_MM), 0.2, GREY);
    }
}
