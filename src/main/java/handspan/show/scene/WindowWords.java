package handspan.show.scene;

import java.util.List;
import java.util.regex.Pattern;

/**
 * What parts of this program say to a player, with the ways of the window in the place of those of the command line,
 * which the same words name for the verbs.
 */
final class WindowWords {
    private static final String WORD = "(?:\"[^\"]*\"|'[^']*'|\\S+)";

    private record Change(Pattern from, String to) {
        Change(String from, String to) {
            this(Pattern.compile(from), to);
        }
    }

    private static final List<Change> CHANGES = List.of(
            // rooms and holds
            new Change(
                    "handspan rooms restore --room " + WORD + " --version (\\d+) --profiles " + WORD,
                    "look at it on the shelf and take version $1 back"),
            new Change(
                    "calibrate --from .+ takes the ends again and keeps the response", "take 'Ends and light again'"),
            new Change("calibrate --from .+ --light-only takes the open light again", "take 'Light again'"),
            new Change("\\(calibrate --from \\S+ --light-only keeps it\\)", "('Light again' at Room keeps it)"),
            new Change("with 'handspan calibrate SOURCE --room .+ --replace'", "with 'Take the holds'"),
            new Change("\\(--by-mark, with a ruler or fixed marks, is stricter\\)", "(a ruler tells more)"),
            new Change("--ruler MM,\\.\\.\\. or --by-ear NOTE,\\.\\.\\. with", "a ruler's distances or notes by ear,"),
            new Change("calibrate with --ruler or --by-ear and", "take the holds by a ruler or by ear, with"),
            new Change("--ruler with (\\d+) places", "a ruler with $1 places"),
            new Change("--by-ear with (\\d+) places", "by ear with $1 notes"),
            new Change("give a longer --hold, or let the board", "let the board"),
            // tunings
            new Change("--snap (free|steps)", "snapping $1"),
            new Change("tune --quickness 1", "one step quicker"),
            new Change("play --no-glide", "playing without glide"),
            new Change(", unless --temperature tells", ""),
            new Change(", 'handspan advise' says what else would help", ""),
            // links and ways out
            new Change("'handspan watch' names the reasons", "the station Arrive shows what comes"),
            new Change("'handspan survey' finds out more", "a survey at Arrive finds out more"),
            new Change("; 'handspan ports' lists them, ", "; "),
            new Change("run 'handspan ports'", "look for ports again"),
            new Change("try --baud auto", "try the link speed auto"),
            new Change("try --baud$", "try another link speed"),
            new Change("say --baud N", "choose it"),
            new Change("say --comma decimal, or --comma parts", "say which"),
            new Change("name one: handspan send --add", "name one at the station Patch"),
            new Change("handspan send --remove-line raw:(\\S+)", "raw:$1 has to be taken out of what is sent"),
            new Change(", or give --no-cues", ""),
            // while it plays
            new Change("type light to take it again", "'Light' takes it again"),
            new Change("type light again", "take it again"));

    private WindowWords() {}

    /** The same in the words of the window. */
    static String of(String words) {
        if (!words.contains("--") && !words.contains("handspan ") && !words.contains("type light")) {
            return words;
        }
        String said = words;
        for (Change change : CHANGES) {
            said = change.from().matcher(said).replaceAll(change.to());
        }
        return said;
    }

    /** A piece of a page in the words of the window. */
    static Block of(Block block) {
        if (block instanceof Block.Words words) {
            return new Block.Words(words.tone(), of(words.text()));
        } else if (block instanceof Block.Ring ring) {
            return new Block.Ring(ring.fill01(), ring.inside(), of(ring.why()), ring.beside());
        } else if (block instanceof Block.Table table) {
            return new Block.Table(
                    table.name(),
                    table.heads(),
                    table.rows().stream()
                            .map(row -> new Block.Row(
                                    row.cells().stream().map(WindowWords::of).toList(), row.wish(), of(row.tip())))
                            .toList());
        } else if (block instanceof Block.Stage stage) {
            return new Block.Stage(stage.view().saying(WindowWords::of));
        }
        return block;
    }

    /** The same as a sentence begins. */
    static String sentence(String words) {
        return ArriveScene.capital(of(words));
    }
}
