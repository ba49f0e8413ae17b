package handspan.command;

import handspan.music.practice.Asking;
import handspan.music.practice.CourseWish;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Which notes are asked for, and how. */
final class CourseArguments {
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

    /** What is wanted, as a whole. */
    CourseWish wish() {
        return new CourseWish(notes, asking, !noHelp);
    }

    /** Whether the way to the note is shown. */
    boolean helps() {
        return wish().helps();
    }
}
