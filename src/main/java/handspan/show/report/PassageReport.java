package handspan.show.report;

import handspan.music.passage.CentsOff;
import handspan.music.passage.PassageFigures;
import handspan.music.passage.PlayedNote;
import handspan.music.passage.TimeUse;
import handspan.music.passage.VibratoUse;
import handspan.music.passage.Visit;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.show.chart.NoteErrors;
import handspan.show.chart.PitchErrorChart;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * What is said of one played passage.
 *
 * @param name of the take, for headings and legends
 * @param figures what was measured
 * @param tuning that it was played in
 * @param missing01 share of lines under the hand without a pitch reading; NaN where it is not known
 */
public record PassageReport(String name, PassageFigures figures, Tuning tuning, double missing01) {
    private static final double CHART_MM = 105;

    /** The parts in their order. */
    public List<ReportPart> parts() {
        List<ReportPart> parts = new ArrayList<>();
        parts.add(new ReportPart.Facts(facts()));
        if (!figures.visits().isEmpty()) {
            parts.add(new ReportPart.Chart(
                    "Pitch errors by note",
                    "Each note's errors in cents, one mark for each time it was played",
                    CHART_MM,
                    theme -> PitchErrorChart.of(layers(), List.of(caption()), theme)));
            parts.add(notes());
        }
        parts.add(new ReportPart.Heading("How it was measured"));
        parts.add(new ReportPart.Points(method()));
        return parts;
    }

    /** What a chart shows: what sounded, and the hand behind it where snapping makes a difference. */
    public List<NoteErrors.Layer> layers() {
        NoteErrors.Layer sound =
                layer(isSnapped() ? "what sounded" : "what was played", PlayedNote::sound, Visit::sound);
        return isSnapped() ? List.of(sound, layer("the hand alone", PlayedNote::hand, Visit::hand)) : List.of(sound);
    }

    /** What sounded, under a name. */
    NoteErrors.Layer sounded(String as) {
        return layer(as, PlayedNote::sound, Visit::sound);
    }

    private NoteErrors.Layer layer(
            String as, Function<PlayedNote, CentsOff> ofNote, Function<Visit, CentsOff> ofVisit) {
        List<NoteErrors> errors = new ArrayList<>();
        for (PlayedNote note : figures.notes()) {
            CentsOff off = ofNote.apply(note);
            double spread = Math.sqrt(Math.max(0, off.rmsCents() * off.rmsCents() - off.meanCents() * off.meanCents()));
            errors.add(new NoteErrors(
                    tuning.reference().key(note.hz()),
                    note.name(),
                    off.meanCents(),
                    spread,
                    figures.visits().stream()
                            .filter(visit -> visit.note() == note.note())
                            .map(visit -> ofVisit.apply(visit).meanCents())
                            .toList()));
        }
        return new NoteErrors.Layer(as, errors);
    }

    boolean isSnapped() {
        return tuning.snap() != Snap.FREE;
    }

    /** A line below the chart's title. */
    public String caption() {
        return name + ": " + off(figures.sound()) + (isSnapped() ? "; hand alone " + off(figures.hand()) : "");
    }

    private List<ReportPart.Fact> facts() {
        List<ReportPart.Fact> facts = new ArrayList<>();
        facts.add(new ReportPart.Fact("Recording", name));
        facts.add(new ReportPart.Fact("On notes", offWithShares(figures.sound())));
        facts.add(new ReportPart.Fact(
                "The hand alone",
                isSnapped()
                        ? offWithShares(figures.hand()) + " (before snapping, "
                                + tuning.snapping().words() + ")"
                        : "the same: nothing is snapped (free)"));
        facts.add(new ReportPart.Fact("All that sounded", offWithShares(figures.all()) + ", glides included"));
        facts.add(new ReportPart.Fact("Steadiness", steadiness()));
        facts.add(new ReportPart.Fact("Vibrato", vibrato()));
        facts.add(new ReportPart.Fact("Time", time()));
        facts.add(new ReportPart.Fact("Level", level()));
        facts.add(new ReportPart.Fact("Losses", losses()));
        return facts;
    }

    private static String off(CentsOff off) {
        return off.count() == 0
                ? "nothing to measure"
                : "mean " + signed(off.meanCents()) + " cents, rms " + Figures.text(off.rmsCents(), 1);
    }

    private static String offWithShares(CentsOff off) {
        return off.count() == 0
                ? off(off)
                : off(off) + "; within 10 cents " + Figures.percent(off.within10Share01()) + " of the time, 25 "
                        + Figures.percent(off.within25Share01()) + ", 50 " + Figures.percent(off.within50Share01());
    }

    static String signed(double cents) {
        String text = Figures.text(Math.abs(cents), 1);
        return text.equals("0.0") ? text : (cents > 0 ? "+" : "-") + text;
    }

    private String steadiness() {
        double cents = figures.wobble().rmsCents();
        return Double.isNaN(cents)
                ? "can't be told: no note was held for 0.7 s without vibrato"
                : "still notes wobble " + Figures.text(cents, 1) + " cents rms about their own means";
    }

    private String vibrato() {
        VibratoUse vibrato = figures.vibrato();
        if (vibrato.searched() == 0) {
            return "can't be told: no note was held for a second";
        }
        String of = vibrato.searched() + (vibrato.searched() == 1 ? " note" : " notes") + " of a second and more";
        return vibrato.found().isEmpty()
                ? "no vibrato found in " + of
                : Figures.text(vibrato.rateHz(), 1) + " Hz, " + Figures.text(vibrato.widthCents(), 0)
                        + " cents either way, in " + vibrato.found().size() + " of " + of;
    }

    private String time() {
        TimeUse time = figures.time();
        double sounding = time.soundingS();
        if (!(time.passageS() > 0)) {
            return "nothing sounded";
        }
        return Figures.text(time.passageS(), 1) + " s from first to last sound: on notes "
                + Figures.text(time.onNotesS(), 1) + " s (" + Figures.percent(time.onNotesS() / sounding)
                + " of what sounded), gliding " + Figures.text(time.glidingS(), 1) + " s, hand away "
                + Figures.text(time.awayS(), 1) + " s in " + time.rests() + (time.rests() == 1 ? " rest" : " rests")
                + (time.silentS() > 0.05 ? ", silent under a hand " + Figures.text(time.silentS(), 1) + " s" : "")
                + "; " + Figures.text(figures.notesPerMin(), 0) + " notes a minute";
    }

    private String level() {
        return Double.isNaN(figures.level().rangeDb())
                ? "nothing sounded"
                : Figures.text(figures.level().lowDb(), 1) + " to "
                        + Figures.text(figures.level().highDb(), 1) + " dB, a range of "
                        + Figures.text(figures.level().rangeDb(), 1)
                        + " dB for nine tenths of the time; at the ceiling "
                        + Figures.percent(figures.level().atCeilingShare01());
    }

    private String losses() {
        int losses = figures.time().losses();
        String link = losses == 0 ? "the link was never lost" : "the link was lost " + losses + " times";
        return Double.isNaN(missing01)
                ? link
                : Figures.percent(missing01) + " of the lines under the hand had no pitch reading; " + link;
    }

    private ReportPart.Grid notes() {
        List<List<String>> rows = new ArrayList<>();
        for (PlayedNote note : figures.notes()) {
            double wobble = note.wobble().rmsCents();
            rows.add(List.of(
                    note.name(),
                    Figures.text(note.hz(), 1),
                    Figures.text(note.seconds(), 1),
                    Integer.toString(note.visits()),
                    signed(note.sound().meanCents()),
                    Figures.text(note.sound().rmsCents(), 1),
                    Figures.text(note.hand().rmsCents(), 1),
                    Double.isNaN(wobble) ? "-" : Figures.text(wobble, 1)));
        }
        return new ReportPart.Grid(
                "Notes that were played",
                List.of("note", "Hz", "s", "times", "mean cents", "rms cents", "hand's rms", "wobble cents"),
                rows,
                0);
    }

    /** The rules behind the figures. */
    static List<String> method() {
        return List.of(
                "The recording went through the same path as on stage. Cents are counted from the note of the scale in"
                        + " whose cell pitch stayed; the hand alone is what the same hand would have played without"
                        + " snapping.",
                "Gliding is where the hand's pitch moves by more than 200 cents a second over 0.06 s, and on in that"
                        + " direction from the mean of 0.2 s before to that of 0.2 s after; a note is 0.1 s and more of"
                        + " the rest. These limits are this program's own choice.",
                "Wobble is counted about each note's own mean, without its first 0.4 s, where 0.3 s are left; notes with"
                        + " vibrato are left out. A - says that there was none.",
                "Vibrato is the strongest regular wobble of 4 to 8 Hz in a note of a second and more, 5 cents either way"
                        + " at least, where noise of the same colour would show it in one of a hundred passages. Width is"
                        + " half of peak to peak.");
    }
}
