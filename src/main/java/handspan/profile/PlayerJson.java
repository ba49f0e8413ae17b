package handspan.profile;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.practice.Accuracy;
import handspan.music.practice.Asking;
import handspan.music.practice.NoteTally;
import handspan.music.practice.PracticeRun;
import handspan.music.practice.Tally;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A player's file as JSON. The resource {@code handspan/player-1.schema.json} describes the same for other programs.
 */
public final class PlayerJson {
    /** What a player's file says of itself. */
    public static final String FORMAT = "handspan-player/1";

    private static final TreeMerge MERGE = new TreeMerge(Set.of("runs.accuracy"), Map.of("runs", "at"));

    private static final int MOST_COUNT = 1_000_000;

    private PlayerJson() {}

    /** The tree of a player's file, keys in their fixed order. */
    public static ObjectNode tree(Player player) {
        ObjectNode tree =
                JsonNodeFactory.instance.objectNode().put("format", FORMAT).put("player", player.name());
        ArrayNode runs = tree.putArray("runs");
        player.runs().forEach(run -> runs.add(tree(run)));
        return tree;
    }

    private static ObjectNode tree(PracticeRun run) {
        Tally tally = run.tally();
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("at", run.at())
                .put("room", run.room())
                .put("tuning", run.tuning())
                .put("ask", run.asking().word())
                .put("help", run.help())
                .put("asked", tally.asked())
                .put("reached", tally.reached())
                .put("hits", tally.hits());
        tally.accuracy()
                .ifPresent(accuracy -> tree.putObject("accuracy")
                        .put("meanCents", accuracy.meanCents())
                        .put("rmsCents", accuracy.rmsCents())
                        .put("meanMm", accuracy.meanMm())
                        .put("rmsMm", accuracy.rmsMm())
                        .put("medianSeconds", accuracy.medianSeconds()));
        ArrayNode notes = tree.putArray("notes");
        for (NoteTally note : tally.notes()) {
            notes.addObject()
                    .put("key", note.key())
                    .put("name", note.name())
                    .put("asked", note.asked())
                    .put("reached", note.reached())
                    .put("hits", note.hits())
                    .put("rmsCents", note.rmsCents());
        }
        return tree;
    }

    /**
     * How a player's file is written and read.
     *
     * @param name of the player: the file's base name, whatever stands inside
     */
    static FileForm<Player> form(String name) {
        return new FileForm<>(PlayerJson::tree, fields -> read(fields, name), MERGE);
    }

    private static Player read(JsonFields fields, String name) throws ProfileException {
        fields.requireFormat(FORMAT);
        fields.text("player");
        List<PracticeRun> runs = new ArrayList<>();
        for (JsonFields run : fields.objects("runs")) {
            runs.add(run(run));
        }
        return fields.made("runs", () -> new Player(name, runs));
    }

    private static PracticeRun run(JsonFields fields) throws ProfileException {
        String at = fields.text("at");
        String room = fields.text("room");
        String tuning = fields.text("tuning");
        Asking asking = fields.text("ask", Asking::parse);
        boolean help = fields.flag("help");
        int asked = fields.whole("asked", 0, MOST_COUNT);
        int reached = fields.whole("reached", 0, asked);
        int hits = fields.whole("hits", 0, reached);
        Optional<Accuracy> accuracy =
                fields.has("accuracy") ? Optional.of(accuracy(fields.object("accuracy"))) : Optional.empty();
        List<NoteTally> notes = new ArrayList<>();
        for (JsonFields note : fields.objects("notes")) {
            notes.add(note(note));
        }
        Tally tally = fields.made("accuracy", () -> new Tally(asked, reached, hits, accuracy, notes));
        return new PracticeRun(at, room, tuning, asking, help, tally);
    }

    private static Accuracy accuracy(JsonFields fields) throws ProfileException {
        double meanCents = fields.number("meanCents");
        double rmsCents = fields.number("rmsCents", given -> new Accuracy(0, given, 0, 0, 0));
        double meanMm = fields.number("meanMm");
        double rmsMm = fields.number("rmsMm", given -> new Accuracy(0, 0, 0, given, 0));
        double seconds = fields.number("medianSeconds", given -> new Accuracy(0, 0, 0, 0, given));
        return new Accuracy(meanCents, rmsCents, meanMm, rmsMm, seconds);
    }

    private static NoteTally note(JsonFields fields) throws ProfileException {
        double key = fields.number("key");
        String name = fields.text("name");
        int asked = fields.whole("asked", 1, MOST_COUNT);
        int reached = fields.whole("reached", 0, asked);
        int hits = fields.whole("hits", 0, reached);
        double rmsCents = fields.number("rmsCents", given -> new NoteTally(key, name, 1, 0, 0, given));
        return new NoteTally(key, name, asked, reached, hits, rmsCents);
    }
}
