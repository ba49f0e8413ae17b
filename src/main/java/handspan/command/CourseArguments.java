package handspan.command;

import handspan.music.practice.Asking;
import handspan.music.practice.Course;
import handspan.music.practice.WeakNotes;
import handspan.music.tuning.NoteName;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import handspan.profile.Player;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Which notes are asked for, and how. */
final class CourseArguments {
    private static final Pattern COUNT = Pattern.compile("\\d{1,6}");

    /** A named note is one of the tuning within a quarter tone. */
    private static final double SAME_NOTE_KEYS = 0.5;

    @Option(
            names = "--notes",
            paramLabel = "N|NOTE,...",
            defaultValue = "20",
            description = "how many notes (${DEFAULT-VALUE}), or which, in their order: C4,E4,G4")
    String notes = "20";

    @Option(
            names = "--ask",
            paramLabel = "HOW",
            defaultValue = "name",
            converter = AskingWord.class,
            description = "name: a note's name is shown (default); sound: it sounds, neither name nor help is shown;"
                    + " both: its name is shown and it sounds")
    Asking asking = Asking.NAME;

    @Option(
            names = "--no-help",
            description = "do not show how far the note is and which way; only such reaches tell your aim")
    boolean noHelp;

    @Option(
            names = "--timeout",
            paramLabel = "S",
            defaultValue = "20",
            description = "seconds after which a note is given up (${DEFAULT-VALUE})")
    double noteSeconds;

    /** Reads a way of asking as it is written. */
    static final class AskingWord implements ITypeConverter<Asking> {
        @Override
        public Asking convert(String text) {
            try {
                return Asking.parse(text);
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(String.valueOf(e.getMessage()));
            }
        }
    }

    /** Whether the way to the note is shown. */
    boolean helps() {
        return !noHelp && asking.shows();
    }

    /**
     * The course that was asked for.
     *
     * @param player whose weak notes come more often
     * @param seed of a course that is drawn
     */
    Course course(Tuning tuning, String room, Player player, long seed) throws UsageException {
        if (COUNT.matcher(notes).matches()) {
            List<Double> weights = WeakNotes.weights(tuning, room, player.runs());
            return UsageException.reading(
                    () -> Course.through(tuning.ladder(), Integer.parseInt(notes), weights, seed));
        }
        List<Integer> named = new ArrayList<>();
        for (String name : notes.split(",", -1)) {
            named.add(UsageException.reading(() -> note(tuning, name.strip())));
        }
        return UsageException.reading(() -> new Course(named));
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
