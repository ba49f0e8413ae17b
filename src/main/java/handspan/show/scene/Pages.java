package handspan.show.scene;

import handspan.wiring.evening.EveningView;
import java.util.ArrayList;
import java.util.List;

/** What is to be seen, from a view of the evening alone. */
public final class Pages {
    private Pages() {}

    /** What is to be seen of an evening, from a view of it alone. */
    public static Screen screen(EveningView now, Showing showing) {
        return new Screen(
                showing,
                Marks.of(now, showing),
                page(now, showing),
                always(now, showing),
                Marks.status(now),
                Sights.live(now));
    }

    /** A station's page, from a view of the evening alone. */
    public static Page page(EveningView now, Showing showing) {
        if (!(showing.asked() instanceof Showing.Asked.Nothing)) {
            return unsaved(now, showing);
        }
        Page page = bare(now, showing);
        boolean large = page.station() == Station.PLAY || page.blocks().get(0) instanceof Block.Prompt;
        List<Block> blocks = new ArrayList<>();
        if (!large) {
            blocks.add(new Block.Heading(page.station().question()));
        }
        page.blocks().forEach(block -> blocks.add(WindowWords.of(block)));
        return new Page(page.station(), blocks);
    }

    /** Asked in place, so that nothing stands before what plays on. */
    private static Page unsaved(EveningView now, Showing showing) {
        List<Offer> offers = new ArrayList<>();
        if (!(showing.asked() instanceof Showing.Asked.Closing)) {
            offers.add(Offer.next("Save, then go on", "ctrl S", Wish.Plain.SAVE, "keeps it, and then does it"));
            offers.add(Offer.plain("Stay with it", "BACK_SPACE", Wish.Plain.STAY, "keeps the room in hand"));
            offers.add(Offer.plain(
                    "Let go of it and " + instead(showing.asked()),
                    "ctrl D",
                    new Wish.DoAnyway(),
                    "what was changed since it was saved is gone"));
        } else {
            offers.add(Offer.next("Save and close", "ctrl S", Wish.Plain.SAVE_AND_CLOSE, "fades first where it plays"));
            offers.add(Offer.plain("Stay", "BACK_SPACE", Wish.Plain.STAY, "goes on as before"));
            offers.add(Offer.plain(
                    "Close without saving",
                    "ctrl D",
                    Wish.Plain.CLOSE_ANYWAY,
                    "what was changed since it was saved is gone"));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Prompt(
                "Room '" + now.keeping().held() + "' is not saved", "what plays goes on until you choose"));
        if (!now.keeping().trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, now.keeping().trouble()));
        }
        blocks.add(new Block.Offers(offers));
        return new Page(showing.station(), blocks);
    }

    private static String instead(Showing.Asked asked) {
        if (asked instanceof Showing.Asked.Loading loading) {
            return "load '" + loading.room() + "'";
        }
        return asked instanceof Showing.Asked.Restoring restoring
                ? "take version " + restoring.version() + " back"
                : "take the holds of a new room";
    }

    private static Page bare(EveningView now, Showing showing) {
        return switch (showing.station()) {
            case ARRIVE -> ArriveScene.page(now, showing);
            case PATCH -> PatchScene.page(now, showing);
            case ROOM -> RoomScene.page(now, showing);
            case NOTES -> NotesScene.page(now, showing);
            case LEVEL -> LevelScene.page(now, showing);
            case PLAY -> PlayScene.page(now, showing);
            case SHELF -> ShelfScene.page(now);
        };
    }

    private static List<Offer> always(EveningView now, Showing showing) {
        List<Offer> always = new ArrayList<>();
        for (Station station : Station.values()) {
            always.add(Offer.plain(station.word(), station.key(), new Wish.Go(station), station.question()));
        }
        boolean sounds = now.sounding().trying()
                || now.sounding().setting().map(setting -> !setting.muted()).orElse(false);
        always.add(Offer.plain("Silence", "ESCAPE", Wish.Plain.SILENCE, "closes all sound at once, by a short fade")
                .unless(sounds ? "" : "nothing sounds"));
        always.add(Offer.plain("Dark or light", "F9", Wish.Plain.TURN_DARK, "for a stage, or for daylight")
                .unless(showing.isStageAlone() ? "the stage is dark" : ""));
        always.add(Offer.plain("Close", "ctrl Q", Wish.Plain.CLOSE, "fades first; asks where something is unsaved"));
        return always;
    }
}
