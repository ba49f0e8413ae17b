package handspan.music.practice;

import handspan.music.tuning.ScaleLadder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoublePredicate;
import java.util.stream.IntStream;

/**
 * Notes that are asked for one after another, as places in a {@link ScaleLadder}; never the same twice in a row. Of
 * four equal parts the first goes to neighbours in the scale, the second by thirds, the third by fifths and octaves,
 * the last anywhere (this project's own order, from near to far). Where a ladder has no such interval from a note, the
 * part before serves.
 *
 * @param notes in their order, 0 = the lowest of the ladder
 */
public record Course(List<Integer> notes) {
    /** Most notes of a course: an hour of three seconds each. */
    public static final int MOST = 1200;

    private static final int PARTS = 4;

    /** Checks that there are some and that none follows itself. */
    public Course {
        notes = List.copyOf(notes);
        if (notes.isEmpty() || notes.size() > MOST) {
            throw new IllegalArgumentException(notes.size() + " notes to find (1.." + MOST + ")");
        }
        for (int i = 1; i < notes.size(); i++) {
            if (notes.get(i).equals(notes.get(i - 1))) {
                throw new IllegalArgumentException(
                        "note " + (i + 1) + " of the course is the same as the one before: put another between them");
            }
        }
    }

    /**
     * A course through all notes of a ladder.
     *
     * @param count how many notes, 1..{@value #MOST}
     * @param weights of each note of the ladder, above 0: twice the weight comes about twice as often
     * @param seed the same gives the same course
     */
    public static Course through(ScaleLadder ladder, int count, List<Double> weights, long seed) {
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException(count + " notes to find (1.." + MOST + ")");
        }
        if (ladder.size() < 2) {
            throw new IllegalArgumentException(
                    "the tuning has a single note: a course needs two or more, choose a wider range or another scale");
        }
        if (weights.size() != ladder.size() || weights.stream().anyMatch(weight -> !(weight > 0))) {
            throw new IllegalArgumentException(
                    weights.size() + " weights for " + ladder.size() + " notes (as many, each above 0)");
        }
        Random random = new Random(seed);
        List<Integer> notes = new ArrayList<>();
        notes.add(start(ladder));
        for (int i = 1; i < count; i++) {
            int part = PARTS * i / count;
            notes.add(drawn(candidates(ladder, notes.get(i - 1), part), weights, random));
        }
        return new Course(notes);
    }

    /** The tonic nearest to the middle; where the range holds none, the middle note. */
    private static int start(ScaleLadder ladder) {
        int middle = (ladder.size() - 1) / 2;
        return IntStream.range(0, ladder.size())
                .filter(note -> ladder.degree(note) == 1)
                .boxed()
                .min((one, other) -> Integer.compare(Math.abs(one - middle), Math.abs(other - middle)))
                .orElse(middle);
    }

    private static int[] candidates(ScaleLadder ladder, int from, int part) {
        for (int at = part; at > 0; at--) {
            int[] found = switch (at) {
                case 1 -> away(ladder, from, Course::isThird);
                case 2 -> away(ladder, from, keys -> isFifth(keys) || isOctave(keys));
                default -> away(ladder, from, keys -> keys > 0);
            };
            if (found.length > 0) {
                return found;
            }
        }
        return IntStream.of(from - 1, from + 1)
                .filter(note -> note >= 0 && note < ladder.size())
                .toArray();
    }

    /** In key numbers, within half a semitone of a minor or major third in twelve equal steps; so the others. */
    private static boolean isThird(double keys) {
        return keys > 2.5 && keys < 4.5;
    }

    private static boolean isFifth(double keys) {
        return keys > 6.5 && keys < 7.5;
    }

    private static boolean isOctave(double keys) {
        return keys > 11.5 && keys < 12.5;
    }

    private static int[] away(ScaleLadder ladder, int from, DoublePredicate interval) {
        return IntStream.range(0, ladder.size())
                .filter(note -> interval.test(Math.abs(ladder.key(note) - ladder.key(from))))
                .toArray();
    }

    private static int drawn(int[] candidates, List<Double> weights, Random random) {
        double sum = Arrays.stream(candidates).mapToDouble(weights::get).sum();
        double left = random.nextDouble() * sum;
        for (int note : candidates) {
            left -= weights.get(note);
            if (left < 0) {
                return note;
            }
        }
        return candidates[candidates.length - 1];
    }

    /** How many notes. */
    public int size() {
        return notes.size();
    }
}
