package handspan.music.practice;

import handspan.music.tuning.NoteName;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a player wants to practise.
 *
 * @param notes how many, {@code 20}, or which, in their order, {@code C4,E4,G4}
 * @param asking how they are asked for
 * @param help whether the way to a note may be shown
 */
public record CourseWish(String notes, Asking asking, boolean help) {
    /** Twenty notes by name, with help. */
    public static final CourseWish USUAL = new CourseWish("20", Asking.NAME, true);

    private static final Pattern COUNT = Pattern.compile("\\d{1,6}");

    /** A named note is one of the tuning within a quarter tone. */
    private static final double SAME_NOTE_KEYS = 0.5;

    /** The same with other notes. */
    public CourseWish through(String others) {
        return new CourseWish(others, asking, help);
    }

    /** The same, asked for in another way. */
    public CourseWish asked(Asking other) {
        return new CourseWish(notes, other, help);
    }

    /** The same with or without help. */
    public CourseWish helped(boolean on) {
        return new CourseWish(notes, asking, on);
    }

    /** Whether the way to the note is shown: never where not even its name is. */
    public boolean helps() {
        return help && asking.shows();
    }

    /**
     * The course that is wanted.
     *
     * @param runs of the player: notes that were missed come more often
     * @param seed of a course that is drawn
     * @throws IllegalArgumentException naming the note that is not in the tuning, or the count that can't be
     */
    public Course course(Tuning tuning, String room, List<PracticeRun> runs, long seed) {
        if (COUNT.matcher(notes).matches()) {
            List<Double> weights = WeakNotes.weights(tuning, room, runs);
            return Course.through(tuning.ladder(), Integer.parseInt(notes), weights, seed);
        }
        List<Integer> named = new ArrayList<>();
        for (String name : notes.split(",", -1)) {
            named.add(note(tuning, name.strip()));
        }
        return new Course(named);
    }

    private static int note(Tuning tuning, String name) {
        int key = NoteName.parse(name);
        ScaleLadder ladder = tuning.ladder();
        return IntStream.range(0, ladder.size())
                .filter(note -> Math.abs(ladder.key(note) + tuning.shiftKeys() - key) < SAME_NOTE_KEYS)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("note " + name + " is not in tuning '" + tuning.name()
                        + "' ("
                        + IntStream.range(0, ladder.size())
                                .mapToObj(note -> tuning.noteName(ladder, note))
                                .collect(Collectors.joining(" "))
                        + ")"));
    }
}
