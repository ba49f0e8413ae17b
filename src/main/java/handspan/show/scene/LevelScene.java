package handspan.show.scene;

import handspan.music.level.LevelCurve;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.wiring.evening.EveningView;
import java.util.ArrayList;
import java.util.List;

/** The volume curve. */
final class LevelScene {
    private LevelScene() {}

    static Page page(EveningView evening, Showing showing) {
        List<Block> blocks = new ArrayList<>();
        if (evening.keeping().profile().isEmpty()) {
            blocks.add(new Block.Words(Tone.LOOK, "There is no room yet: take its holds, or load one from the shelf."));
            blocks.add(new Block.Offers(List.of(
                    Offer.next("To the room", "ctrl ENTER", new Wish.Go(Station.ROOM), "takes the holds"),
                    Offer.plain("To the shelf", "ctrl O", new Wish.Go(Station.SHELF), "loads a room"))));
            return new Page(Station.LEVEL, blocks);
        }
        RoomProfile profile = evening.keeping().profile().get();
        if (!evening.keeping().trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, evening.keeping().trouble()));
        }
        blocks.addAll(showing.drafts().under(fields(profile.level())));
        if (evening.sounding().setting().isPresent()) {
            blocks.add(new Block.Words(Tone.GOOD, "It plays: what you change is heard at once, without a leap."));
        }
        if (profile.room().level() != null) {
            blocks.add(new Block.Live(new Sight.Level(profile)));
        } else {
            blocks.add(new Block.Words(Tone.PLAIN, "This instrument has no level hand: it plays at the ceiling."));
        }
        blocks.add(new Block.Offers(
                List.of(Offer.next("Save", "ctrl S", Wish.Plain.SAVE, "keeps the room; 20 versions before it stay")
                        .unless(evening.keeping().unsaved() ? "" : "nothing has changed since it was kept"))));
        blocks.add(new Block.Words(
                Tone.QUIET,
                "Monitors low first. The ceiling protects ears: leave it where it is, and follow the venue's and local"
                        + " rules on loudness."));
        return new Page(Station.LEVEL, blocks);
    }

    private static List<Block.Field> fields(LevelCurve curve) {
        return List.of(
                field(Ask.CEILING_DB, "Ceiling", curve.ceilingDb(), "dB", "never passed; at most 0 dB below full"),
                field(Ask.FLOOR_DB, "Floor", curve.floorDb(), "dB", "level at the knee, -120..-20 dB below full"),
                field(Ask.KNEE_PERCENT, "Knee", 100 * curve.knee01(), "%", "place of the floor, 0..50 % of the zone"),
                field(
                        Ask.RISE_DB_PER_MS,
                        "Rise",
                        curve.riseDbPerMs(),
                        "dB/ms",
                        "how fast level may rise, above 0, at most 1000 dB a millisecond"),
                new Block.Field(
                        Ask.LOUD_END,
                        "Loud end",
                        curve.loudFar() ? "far" : "near",
                        List.of("near", "far"),
                        "",
                        "which end is loud; over a light cell, far is open"),
                new Block.Field(
                        Ask.LEAVING,
                        "Hand leaves",
                        curve.leaving().word(),
                        List.of("fade", "hold"),
                        "",
                        "fade, or hold the note until the next hand comes"),
                field(Ask.FADE_MS, "Fade", curve.leaving().fadeMs(), "ms", "how long that fade takes, 5..2000 ms"));
    }

    private static Block.Field field(Ask ask, String label, double value, String unit, String tip) {
        return new Block.Field(ask, label, Figures.shortest(value), List.of(), unit, tip);
    }
}
