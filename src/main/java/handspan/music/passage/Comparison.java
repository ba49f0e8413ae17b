package handspan.music.passage;

import handspan.number.fit.MeanDifference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Two passages held against each other, note by note: a note played counts once however long it was, since what went on
 * within it is one reach of one hand. The four figures together are wrong by chance in one of twenty comparisons at
 * most: each is stated at {@code 1 - 0.05/4} (Bonferroni's inequality, in any textbook of statistics).
 *
 * @param figures of both
 * @param paired whether the same notes of the same take were compared one by one
 */
public record Comparison(List<ComparedFigure> figures, boolean paired) {
    private static final double CHANCE01 = 0.05;

    /** Two visits are the same one where they share so much of the shorter. */
    private static final double SHARED01 = 0.5;

    /** Copies the list. */
    public Comparison {
        figures = List.copyOf(figures);
    }

    /** Two takes. */
    public static Comparison ofTwo(PassageFigures first, PassageFigures second) {
        return new Comparison(
                Arrays.stream(ComparedFigure.What.values())
                        .map(what -> figure(what, values(first.visits(), what), values(second.visits(), what), false))
                        .toList(),
                false);
    }

    /** One take through two rooms or tunings: its notes one by one, those that both have. */
    public static Comparison ofSame(PassageFigures first, PassageFigures second) {
        List<Visit> firsts = new ArrayList<>();
        List<Visit> seconds = new ArrayList<>();
        for (Visit visit : first.visits()) {
            second.visits().stream()
                    .filter(other -> isSame(visit, other))
                    .findFirst()
                    .ifPresent(other -> {
                        firsts.add(visit);
                        seconds.add(other);
                    });
        }
        return new Comparison(
                Arrays.stream(ComparedFigure.What.values())
                        .map(what -> pairs(what, firsts, seconds))
                        .toList(),
                true);
    }

    private static boolean isSame(Visit one, Visit other) {
        double from = Math.max(one.atS(), other.atS());
        double to = Math.min(one.atS() + one.seconds(), other.atS() + other.seconds());
        return to - from > SHARED01 * Math.min(one.seconds(), other.seconds());
    }

    private static ComparedFigure pairs(ComparedFigure.What what, List<Visit> firsts, List<Visit> seconds) {
        ToDoubleFunction<Visit> value = value(what);
        List<Visit> one = new ArrayList<>();
        List<Visit> other = new ArrayList<>();
        for (int i = 0; i < firsts.size(); i++) {
            if (!Double.isNaN(value.applyAsDouble(firsts.get(i)))
                    && !Double.isNaN(value.applyAsDouble(seconds.get(i)))) {
                one.add(firsts.get(i));
                other.add(seconds.get(i));
            }
        }
        return figure(what, values(one, what), values(other, what), true);
    }

    private static ComparedFigure figure(ComparedFigure.What what, double[] first, double[] second, boolean paired) {
        Optional<MeanDifference> difference =
                paired ? MeanDifference.paired(first, second) : MeanDifference.welch(first, second);
        return new ComparedFigure(
                what,
                Arrays.stream(first).average().orElse(Double.NaN),
                Arrays.stream(second).average().orElse(Double.NaN),
                difference,
                1 - CHANCE01 / ComparedFigure.What.values().length);
    }

    private static double[] values(List<Visit> visits, ComparedFigure.What what) {
        return visits.stream()
                .mapToDouble(value(what))
                .filter(value -> !Double.isNaN(value))
                .toArray();
    }

    private static ToDoubleFunction<Visit> value(ComparedFigure.What what) {
        return switch (what) {
            case MEAN_OFF -> visit -> visit.sound().meanCents();
            case OFF -> visit -> visit.sound().rmsCents();
            case HAND_OFF -> visit -> visit.hand().rmsCents();
            case WOBBLE -> visit -> visit.wobble().rmsCents();
        };
    }

    /** Whether any figure differs beyond chance. */
    public boolean isAnyTold() {
        return figures.stream().anyMatch(ComparedFigure::isTold);
    }
}
