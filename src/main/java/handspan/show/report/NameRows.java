package handspan.show.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Finds room for the names of a strip's marks: as large as can be, in as few rows as can be, so that no name touches
 * another or the line that leads to one.
 *
 * <p>A name stands above its line, in the lowest row or, where the places are close, in the lowest of three that is
 * free. A line to a higher row passes the names of the lower ones. Where cells differ, names in the narrow ones are
 * smaller. Where not all find room at {@value #LEAST_POINTS} points the chief marks come first, then the others from
 * near to far, and the rest stay unnamed.
 */
final class NameRows {
    /** Smallest letters. */
    static final double LEAST_POINTS = 7;

    /** Legible at arm's length. */
    static final double GOOD_POINTS = 14;

    private static final int MOST_ROWS = 3;
    private static final double[] LARGE = {20, 18, 16, GOOD_POINTS};
    private static final double[] FALLING = {13, 12, 11, 10, 9, 8, LEAST_POINTS};
    private static final double[] RISING = {8, 9, 10, 11, 12, 13, GOOD_POINTS};

    /** By how much a name may be larger than its neighbour, points. */
    private static final double STEP_POINTS = 1;

    /** Between two names of a row, mm. */
    private static final double GAP_MM = 1.4;

    /** Between a name and a line that passes it, mm. */
    private static final double PASS_MM = 0.8;

    /** Between a name and the strip's edge, mm. */
    private static final double EDGE_MM = 0.8;

    private final List<NoteStrip.Mark> marks;
    private final SheetFont face;

    /**
     * A name that found room.
     *
     * @param mark which mark it belongs to
     * @param points size of its letters
     * @param row 0 = lowest
     * @param leftMm where it begins on the strip
     * @param rightMm where it ends
     */
    record Name(NoteStrip.Mark mark, double points, int row, double leftMm, double rightMm) {}

    private NameRows(List<NoteStrip.Mark> marks, SheetFont face) {
        this.marks = marks;
        this.face = face;
    }

    /**
     * Places names.
     *
     * @param marks in the order of their distance
     * @return those that found room, in the same order
     */
    static List<Name> place(List<NoteStrip.Mark> marks, SheetFont face) {
        NameRows rows = new NameRows(marks, face);
        for (int count = 1; count <= MOST_ROWS; count++) {
            for (double points : LARGE) {
                List<Name> names = rows.ofOneSize(points, count);
                if (names.size() == marks.size()) {
                    return names;
                }
            }
        }
        for (double points : FALLING) {
            List<Name> names = rows.ofOneSize(points, MOST_ROWS);
            if (names.size() == marks.size()) {
                return rows.grown(names, names);
            }
        }
        List<Name> some = rows.some();
        return rows.withLargerChiefs(rows.grown(some, rows.inCompany(some)));
    }

    /** From near to far, each in the lowest row that is free; those that find none are left out. */
    private List<Name> ofOneSize(double points, int rows) {
        List<Name> names = new ArrayList<>();
        marks.forEach(mark -> free(mark, points, rows, names).ifPresent(names::add));
        return names;
    }

    private Optional<Name> free(NoteStrip.Mark mark, double points, int rows, List<Name> others) {
        return IntStream.range(0, rows)
                .mapToObj(row -> name(mark, points, row))
                .filter(name -> others.stream().noneMatch(other -> isHindered(name, other) || isHindered(other, name)))
                .findFirst();
    }

    private Name name(NoteStrip.Mark mark, double points, int row) {
        double width = face.widthMm(mark.name(), points);
        double left = Math.max(EDGE_MM, mark.mm() - width / 2);
        return new Name(mark, points, row, left, left + width);
    }

    /** As many as find room at the smallest size, the chief ones first. */
    private List<Name> some() {
        List<Name> names = new ArrayList<>();
        marks.stream()
                .sorted(Comparator.comparing(NoteStrip.Mark::chief).reversed())
                .forEachOrdered(
                        mark -> free(mark, LEAST_POINTS, MOST_ROWS, names).ifPresent(names::add));
        names.sort(Comparator.comparingDouble(name -> name.mark().mm()));
        return names;
    }

    /** The same names, the chief ones at least as large as all of them can be. */
    private List<Name> withLargerChiefs(List<Name> names) {
        List<Name> best = names;
        for (double points : RISING) {
            List<Name> larger = names.stream()
                    .map(name ->
                            name.mark().chief() ? name(name.mark(), Math.max(points, name.points()), name.row()) : name)
                    .toList();
            if (IntStream.range(0, larger.size()).allMatch(i -> isFreeAt(larger, i))) {
                best = larger;
            }
        }
        return best;
    }

    /** Names whose neighbours are named too: larger letters among the unnamed would look like more than chance. */
    private List<Name> inCompany(List<Name> names) {
        Set<NoteStrip.Mark> named = names.stream().map(Name::mark).collect(Collectors.toSet());
        return names.stream()
                .filter(name -> {
                    int i = marks.indexOf(name.mark());
                    return named.containsAll(marks.subList(Math.max(0, i - 1), Math.min(marks.size(), i + 2)));
                })
                .toList();
    }

    /** The same names, some of them as large as they could be if their neighbours were as large. */
    private List<Name> grown(List<Name> small, List<Name> which) {
        Set<NoteStrip.Mark> growing = which.stream().map(Name::mark).collect(Collectors.toSet());
        List<Name> names = new ArrayList<>(small);
        for (double points : RISING) {
            List<Name> larger = names.stream()
                    .map(name -> name(name.mark(), points, name.row()))
                    .toList();
            for (int i = 0; i < names.size(); i++) {
                boolean grows = points > names.get(i).points()
                        && growing.contains(names.get(i).mark());
                if (grows && isFreeAt(larger, i)) {
                    names.set(i, larger.get(i));
                }
            }
        }
        return evened(names);
    }

    /** The same names, none much larger than the one before or after it: letters should not look thrown about. */
    private List<Name> evened(List<Name> ragged) {
        List<Name> names = new ArrayList<>(ragged);
        for (int i = 1; i < names.size(); i++) {
            names.set(i, nearTo(names.get(i), names.get(i - 1)));
        }
        for (int i = names.size() - 2; i >= 0; i--) {
            names.set(i, nearTo(names.get(i), names.get(i + 1)));
        }
        return names;
    }

    private Name nearTo(Name name, Name neighbour) {
        double most = neighbour.points + STEP_POINTS;
        return name.points <= most ? name : name(name.mark, most, name.row);
    }

    private static boolean isFreeAt(List<Name> names, int which) {
        Name name = names.get(which);
        return IntStream.range(0, names.size()).noneMatch(i -> i != which && isHindered(name, names.get(i)));
    }

    /** Whether a name is too wide for another beside it, or for the line to another above it. */
    private static boolean isHindered(Name name, Name other) {
        if (name.row == other.row) {
            return name.leftMm < other.rightMm + GAP_MM && other.leftMm < name.rightMm + GAP_MM;
        }
        double passingMm = other.mark.mm();
        return name.row < other.row && passingMm > name.leftMm - PASS_MM && passingMm < name.rightMm + PASS_MM;
    }
}
