package handspan.show.report;

import handspan.music.passage.ComparedFigure;
import handspan.music.passage.Comparison;
import handspan.music.passage.PassageFigures;
import handspan.number.units.Figures;
import handspan.show.chart.NoteErrors;
import handspan.show.chart.PitchErrorChart;
import java.util.ArrayList;
import java.util.List;

/**
 * Two played passages side by side.
 *
 * @param first called A
 * @param second called B
 * @param comparison of both
 * @param sensors what can be said of the instruments, a sentence each
 */
public record ComparisonReport(PassageReport first, PassageReport second, Comparison comparison, List<String> sensors) {
    /** What the first is called. */
    public static final String A = "A";

    /** What the second is called. */
    public static final String B = "B";

    private static final double CHART_MM = 84;

    /** Of the notes alone: each figure by itself is in the report of one take. */
    private static final int RULES = 2;

    /** Copies the sentences. */
    public ComparisonReport {
        sensors = List.copyOf(sensors);
    }

    /** The parts in their order. */
    public List<ReportPart> parts() {
        List<ReportPart> parts = new ArrayList<>();
        parts.add(new ReportPart.Facts(List.of(
                new ReportPart.Fact(A, first.name()),
                new ReportPart.Fact(B, second.name()),
                new ReportPart.Fact("In a word", verdict()))));
        if (!layers().isEmpty()) {
            parts.add(new ReportPart.Chart(
                    "Pitch errors by note",
                    "Errors of both in cents, note by note",
                    CHART_MM,
                    theme -> PitchErrorChart.of(layers(), captions(), theme)));
        }
        parts.add(told());
        parts.add(sideBySide());
        parts.add(new ReportPart.Heading("The instruments"));
        parts.add(new ReportPart.Points(sensors));
        parts.add(new ReportPart.Heading("How it was measured"));
        List<String> method = new ArrayList<>(PassageReport.method().subList(0, RULES));
        method.add(how());
        parts.add(new ReportPart.Points(method));
        return parts;
    }

    /** What a chart shows. */
    public List<NoteErrors.Layer> layers() {
        return List.of(first.sounded(A), second.sounded(B));
    }

    /** Lines below the chart's title. */
    public List<String> captions() {
        return List.of(A + ": " + first.caption(), B + ": " + second.caption());
    }

    private String how() {
        return comparison.paired()
                ? "The same recording twice: its notes were compared one by one (differences of pairs, Student's t, 95 %"
                        + " for all four figures together). That says what the rooms make of this one passage."
                : "Each note that was played counts once, however long it was. The uncertainty of a difference is that of"
                        + " Welch's t with as many notes as they are worth after their autocorrelation, 95 % for all four"
                        + " figures together.";
    }

    /** What differs beyond chance. */
    public String verdict() {
        List<String> words = new ArrayList<>();
        for (ComparedFigure figure : figures()) {
            if (figure.isTold()) {
                words.add(sentence(figure));
            }
        }
        boolean unknown = comparison.figures().stream()
                .allMatch(figure -> figure.difference().isEmpty());
        return unknown
                ? "too few notes to tell them apart (3 and more in each are needed)"
                : words.isEmpty() ? "no difference beyond chance" : String.join("; ", words);
    }

    /** Without snapping the hand alone is what sounded. */
    private List<ComparedFigure> figures() {
        boolean snapped = first.isSnapped() || second.isSnapped();
        return comparison.figures().stream()
                .filter(figure -> snapped || figure.what() != ComparedFigure.What.HAND_OFF)
                .toList();
    }

    private static String sentence(ComparedFigure figure) {
        boolean firstLess = figure.first() < figure.second();
        String less = firstLess ? A : B;
        String more = firstLess ? B : A;
        String small = Figures.text(Math.min(figure.first(), figure.second()), 1);
        String large = Figures.text(Math.max(figure.first(), figure.second()), 1);
        return switch (figure.what()) {
            case MEAN_OFF ->
                more + " is sharper than " + less + " by " + Figures.text(Math.abs(figure.first() - figure.second()), 1)
                        + " cents";
            case OFF -> less + " is nearer to its notes: " + small + " cents against " + large;
            case HAND_OFF -> "the hand of " + less + " is nearer to its notes: " + small + " cents against " + large;
            case WOBBLE -> less + " is steadier: " + small + " cents against " + large;
        };
    }

    private static String name(ComparedFigure.What what) {
        return switch (what) {
            case MEAN_OFF -> "mean off the note, cents";
            case OFF -> "off the note, rms cents";
            case HAND_OFF -> "the hand alone, rms cents";
            case WOBBLE -> "wobble of a still note, cents";
        };
    }

    private ReportPart.Grid told() {
        List<List<String>> rows = new ArrayList<>();
        for (ComparedFigure figure : figures()) {
            boolean signed = figure.what() == ComparedFigure.What.MEAN_OFF;
            rows.add(List.of(
                    name(figure.what()),
                    cents(figure.first(), signed),
                    cents(figure.second(), signed),
                    figure.difference()
                            .map(it -> PassageReport.signed(it.value()) + " +- "
                                    + Figures.text(it.expanded(figure.probability01()), 1))
                            .orElse("-"),
                    figure.difference().isEmpty()
                            ? "too few notes"
                            : figure.isTold() ? "beyond chance" : "no difference beyond chance"));
        }
        return new ReportPart.Grid(
                "Mean over the notes that were played", List.of("figure", A, B, "A less B", "verdict"), rows, 0);
    }

    private static String cents(double cents, boolean signed) {
        return Double.isNaN(cents) ? "-" : signed ? PassageReport.signed(cents) : Figures.text(cents, 1);
    }

    private ReportPart.Grid sideBySide() {
        PassageFigures a = first.figures();
        PassageFigures b = second.figures();
        List<List<String>> rows = List.of(
                row("notes played", a.visits().size(), b.visits().size(), 0),
                row("notes a minute", a.notesPerMin(), b.notesPerMin(), 0),
                row("rms off, by time, cents", a.sound().rmsCents(), b.sound().rmsCents(), 1),
                row(
                        "within 25 cents, %",
                        100 * a.sound().within25Share01(), 100 * b.sound().within25Share01(), 0),
                row("on notes, s", a.time().onNotesS(), b.time().onNotesS(), 1),
                row("gliding, s", a.time().glidingS(), b.time().glidingS(), 1),
                row("hand away, s", a.time().awayS(), b.time().awayS(), 1),
                row("vibrato, Hz", a.vibrato().rateHz(), b.vibrato().rateHz(), 1),
                row(
                        "vibrato either way, cents",
                        a.vibrato().widthCents(),
                        b.vibrato().widthCents(),
                        0),
                row("level range, dB", a.level().rangeDb(), b.level().rangeDb(), 1),
                row("lines without pitch, %", 100 * first.missing01(), 100 * second.missing01(), 1));
        return new ReportPart.Grid("Side by side (one figure each: no uncertainty)", List.of("figure", A, B), rows, 0);
    }

    private static List<String> row(String name, double a, double b, int decimals) {
        return List.of(name, figure(a, decimals), figure(b, decimals));
    }

    private static String figure(double value, int decimals) {
        return Double.isNaN(value) ? "-" : Figures.text(value, decimals);
    }
}
