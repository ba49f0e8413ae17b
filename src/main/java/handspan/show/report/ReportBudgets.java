package handspan.show.report;

import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.Adviser;
import handspan.room.budget.AirChange;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.LatencyBudget;
import handspan.room.budget.NoteBudget;
import handspan.room.budget.PitchBudget;
import handspan.room.budget.VibratoBudget;
import java.util.ArrayList;
import java.util.List;

/**
 * What is uncertain and what takes time, term by term, and what would make it less.
 *
 * @param profile of the room
 * @param tuning that is told of
 * @param feel of it
 */
record ReportBudgets(RoomProfile profile, Tuning tuning, FeelBudget feel) {
    List<ReportPart> parts() {
        Room room = profile.room();
        List<ReportPart> parts = new ArrayList<>();
        parts.add(new ReportPart.Heading("How sure the pitch is"));
        NoteBudget worst = NoteBudget.worst(NoteBudget.of(room.pitch(), tuning));
        parts.addAll(uncertainty(worst));
        parts.addAll(beside(room));
        parts.addAll(help(room, worst));
        LatencyBudget latency = LatencyBudget.of(room, feel);
        parts.add(new ReportPart.Heading("Where the time goes"));
        parts.add(time(latency));
        List<String> advice =
                latency.advice().stream().map(ReportBudgets::sentence).toList();
        if (advice.isEmpty()) {
            parts.add(new ReportPart.Words("Nothing that is known of would make it less by 3 ms or more."));
        } else {
            parts.add(new ReportPart.Words("What would help:"));
            parts.add(new ReportPart.Points(advice));
        }
        return parts;
    }

    private static List<ReportPart> uncertainty(NoteBudget worst) {
        PitchBudget budget = worst.budget();
        double sum = budget.standardCents() * budget.standardCents();
        List<List<String>> rows = new ArrayList<>();
        for (PitchBudget.Term term : budget.terms()) {
            rows.add(List.of(
                    term.name(),
                    Figures.text(term.cents(), 2),
                    sum > 0 ? Figures.text(100 * term.cents() * term.cents() / sum, 0) + " %" : "0 %",
                    term.assumed() ? "assumed" : "measured here"));
        }
        rows.add(List.of("together, in squares", Figures.text(budget.standardCents(), 2), "100 %", ""));
        rows.add(List.of("95 % interval, half of it", Figures.text(budget.expandedCents(), 2), "", ""));
        return List.of(
                new ReportPart.Grid(
                        "The worst note, " + worst.name() + " at " + Figures.text(worst.atMm(), 1) + " mm",
                        List.of("what is uncertain", "u cents", "share", "from where"),
                        rows,
                        2),
                new ReportPart.Words(
                        "After the GUM (JCGM 100:2008): standard uncertainties, independent, summed in squares;"
                                + " the interval by Student's t. The largest term is the "
                                + budget.largest().name()
                                + (budget.largest().assumed() ? " (assumed, not measured here)." : ".")));
    }

    private List<ReportPart> beside(Room room) {
        List<String> points = new ArrayList<>();
        points.add(sentence(feel.words()));
        points.add(sentence(VibratoBudget.of(room, tuning).words()));
        AirChange.of(room, tuning, AirChange.USUAL_DEGREES).ifPresent(air -> points.add(sentence(air.words())));
        return List.of(new ReportPart.Words("Beside it, not in it:"), new ReportPart.Points(points));
    }

    private List<ReportPart> help(Room room, NoteBudget worst) {
        Adviser adviser = Adviser.of(room, room.aim());
        List<String> points = new ArrayList<>();
        adviser.byFiveRulerHolds(tuning)
                .filter(ruled -> ruled.budget().expandedCents() < worst.budget().expandedCents())
                .ifPresent(
                        ruled -> points.add("Five holds by ruler from end to end (calibrate --ruler): the worst note, "
                                + ruled.name() + ", would then be promised within "
                                + Figures.text(ruled.budget().expandedCents(), 0) + " cents."));
        List<String> words = adviser.advice(tuning, List.of()).helpWords();
        points.add(sentence(words.get(0)));
        words.stream().skip(1).forEach(other -> points.add("Or " + other.strip() + "."));
        return List.of(new ReportPart.Words("What would help:"), new ReportPart.Points(points));
    }

    private static ReportPart time(LatencyBudget latency) {
        List<List<String>> rows = new ArrayList<>();
        for (LatencyBudget.Term term : latency.terms()) {
            rows.add(List.of(term.name(), ms(term.ms())));
        }
        rows.add(List.of("from hand to message, as far as is known", ms(latency.totalMs())));
        return new ReportPart.Grid("Lag of a moving hand", List.of("what takes time", "ms"), rows, 1);
    }

    private static String ms(double ms) {
        return Double.isNaN(ms) ? "not known" : Double.isInfinite(ms) ? "without end" : Figures.text(ms, 1);
    }

    /** With a capital and a full stop. */
    private static String sentence(String words) {
        String text = words.strip();
        return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + text.substring(1)
                + (text.endsWith(".") ? "" : ".");
    }
}
