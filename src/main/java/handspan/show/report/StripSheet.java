package handspan.show.report;

import java.util.ArrayList;
import java.util.List;

/**
 * One sheet of a note strip: above the strip what it is for, in the middle its share of the strip with the marks to
 * join it by, below it the bar to check the printer by and what to do.
 *
 * @param strip what it says
 * @param names those that found room
 * @param paper it is printed on, on its side
 * @param frame where its share lies
 */
record StripSheet(NoteStrip strip, List<NameRows.Name> names, Paper paper, StripFrame frame) {
    private static final double LEFT_MM = StripFrame.LEFT_MM;
    private static final double BELOW_MM = StripFrame.HEIGHT_MM;

    private static final double TITLE_POINTS = 16;
    private static final double TITLE_BASE_MM = 20;
    private static final double TEXT_POINTS = 10;
    private static final double FACTS_BASE_MM = 27;
    private static final double SMALL_POINTS = 7.5;
    private static final double JOIN_BEYOND_MM = 7;
    private static final double BAR_MM = 100;

    void draw() {
        head();
        frame.draw();
        new StripFace(strip, names, frame).draw();
        joins();
        if (frame.page().number() == 1) {
            frame.pen().text("this edge at the sensor", frame.x(2), frame.y(-1.6), SMALL_POINTS, Pen.Side.RIGHT_OF);
        }
        bar();
        steps();
    }

    private double widthMm() {
        return paper.landscape().widthMm() - 2 * LEFT_MM;
    }

    private void head() {
        StripPage page = frame.page();
        Pen pen = frame.pen();
        pen.text(StripWords.title(strip), LEFT_MM, TITLE_BASE_MM, TITLE_POINTS, Pen.Side.RIGHT_OF);
        pen.text(
                "sheet " + page.number() + " of " + page.count() + ", " + paper.title() + ", full size",
                LEFT_MM + widthMm(),
                TITLE_BASE_MM,
                TEXT_POINTS,
                Pen.Side.LEFT_OF);
        List<String> lines = new ArrayList<>();
        StripWords.facts(strip, names.size()).forEach(fact -> lines.addAll(pen.broken(fact, widthMm(), TEXT_POINTS)));
        double y = FACTS_BASE_MM;
        for (String line : lines) {
            // names without end must not run into the strip
            if (y < frame.y(-JOIN_BEYOND_MM)) {
                pen.text(line, LEFT_MM, y, TEXT_POINTS, Pen.Side.RIGHT_OF);
            }
            y += Pen.leadingMm(TEXT_POINTS);
        }
    }

    private void joins() {
        StripPage page = frame.page();
        page.joinBeforeMm().ifPresent(mm -> {
            join(mm);
            note("cut off along the dashes", frame.x(mm) + 3, Pen.Side.RIGHT_OF);
        });
        page.joinAfterMm().ifPresent(mm -> {
            join(mm);
            note(
                    "sheet " + (page.number() + 1) + " goes on top, dashes on dashes, cross on cross",
                    frame.x(mm) - 3,
                    Pen.Side.LEFT_OF);
        });
    }

    private void note(String text, double x, Pen.Side side) {
        frame.pen().text(text, x, frame.y(BELOW_MM + 5.5), SMALL_POINTS, side);
    }

    /** Dashes with a cross above and below; they leave out names and figures on their way. */
    private void join(double mm) {
        double x = frame.x(mm);
        double from = -JOIN_BEYOND_MM;
        for (double[] taken : new StripFace(strip, names, frame).takenAt(mm)) {
            frame.pen().dashes(x, frame.y(from), x, frame.y(taken[0]));
            from = taken[1];
        }
        frame.pen().dashes(x, frame.y(from), x, frame.y(BELOW_MM + JOIN_BEYOND_MM));
        for (double crossMm : new double[] {-3, BELOW_MM + 3}) {
            frame.pen().line(x - 2.5, frame.y(crossMm), x + 2.5, frame.y(crossMm), Pen.FINE_MM);
        }
    }

    private void bar() {
        Pen pen = frame.pen();
        double left = LEFT_MM + 2;
        double y = frame.y(BELOW_MM + 18);
        pen.line(left, y, left + BAR_MM, y, 0.5);
        for (double x : new double[] {left, left + BAR_MM}) {
            pen.line(x, y - 3, x, y + 3, 0.3);
        }
        pen.text(
                "This bar must measure 100 mm: print at 100 %, \"actual size\", not \"fit to page\".",
                left + BAR_MM + 5, y + 1.2, TEXT_POINTS, Pen.Side.RIGHT_OF);
    }

    private void steps() {
        double y = frame.y(BELOW_MM + 29);
        for (String step : StripWords.steps(strip, frame.page())) {
            y = frame.pen().paragraph(step, LEFT_MM + 2, y, widthMm() - 4, TEXT_POINTS) + 0.8;
        }
    }
}
