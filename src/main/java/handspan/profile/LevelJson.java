package handspan.profile;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import java.util.List;

/** The level curve as JSON. */
final class LevelJson {
    private static final Words<Boolean> LOUD_ENDS =
            Words.of("loud end", List.of(false, true), far -> far ? "far" : "near");
    private static final Words<Leaving> ON_LEAVING = Words.of(
            "choice for a hand that leaves", List.of(Leaving.USUAL, Leaving.USUAL.holding(true)), Leaving::word);

    private LevelJson() {}

    static ObjectNode tree(LevelCurve level) {
        ObjectNode tree = JsonNodeFactory.instance
                .objectNode()
                .put("floorDb", level.floorDb())
                .put("ceilingDb", level.ceilingDb())
                .put("knee01", level.knee01())
                .put("loudEnd", LOUD_ENDS.word(level.loudFar()))
                .put("riseDbPerMs", level.riseDbPerMs());
        Leaving leaving = level.leaving();
        if (leaving.holds()) {
            tree.put("onLeaving", leaving.word());
        }
        if (leaving.fadeMs() != Leaving.USUAL.fadeMs()) {
            tree.put("fadeMs", leaving.fadeMs());
        }
        return tree;
    }

    static LevelCurve read(JsonFields fields) throws ProfileException {
        boolean loudFar = fields.text("loudEnd", LOUD_ENDS::meaning);
        // each value is tried with the others sound, so that the error names its own key
        double floorDb = fields.number("floorDb", given -> new LevelCurve(given, 0, 0, loudFar, 1));
        double ceilingDb = fields.number("ceilingDb", given -> new LevelCurve(floorDb, given, 0, loudFar, 1));
        double knee01 = fields.number("knee01", given -> new LevelCurve(floorDb, ceilingDb, given, loudFar, 1));
        double riseDbPerMs =
                fields.number("riseDbPerMs", given -> new LevelCurve(floorDb, ceilingDb, knee01, loudFar, given));
        return new LevelCurve(floorDb, ceilingDb, knee01, loudFar, riseDbPerMs, leaving(fields));
    }

    private static Leaving leaving(JsonFields fields) throws ProfileException {
        Leaving usual = Leaving.USUAL;
        Leaving chosen = fields.has("onLeaving") ? fields.text("onLeaving", ON_LEAVING::meaning) : usual;
        return fields.has("fadeMs") ? chosen.fadingIn(fields.number("fadeMs", usual::fadingIn)) : chosen;
    }
}
