package handspan.show.scene;

import handspan.live.session.PlayDesk;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.Keeping;
import handspan.wiring.evening.Thought;
import java.util.ArrayList;
import java.util.List;

/** Key, scale, range, curve, snapping; what this room can hold; where the notes lie. */
final class NotesScene {
    private static final String NOTES = "where the notes lie";
    private static final List<String> CHARTS = List.of(NOTES, "steady against quick");
    private static final double HALF_STEP = 0.5;

    private NotesScene() {}

    static Page page(EveningView evening, Showing showing) {
        List<Block> blocks = new ArrayList<>();
        Keeping keeping = evening.keeping();
        if (keeping.profile().isEmpty()) {
            blocks.add(new Block.Words(Tone.LOOK, "There is no room yet: take its holds, or load one from the shelf."));
            blocks.add(new Block.Offers(List.of(
                    Offer.next("To the room", "ctrl ENTER", new Wish.Go(Station.ROOM), "takes the holds"),
                    Offer.plain("To the shelf", "ctrl O", new Wish.Go(Station.SHELF), "loads a room"))));
            return new Page(Station.NOTES, blocks);
        }
        RoomProfile profile = keeping.profile().get();
        Tuning tuning = keeping.edited().orElseThrow();
        if (!keeping.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, WindowWords.sentence(keeping.trouble())));
        }
        if (!evening.sounding().trouble().isEmpty()) {
            blocks.add(new Block.Words(
                    Tone.BAD, WindowWords.sentence(evening.sounding().trouble())));
        }
        Thought thought = evening.thought();
        boolean thinking = !thought.speaksOf(profile, tuning);
        blocks.add(new Block.Words(
                Tone.PLAIN,
                thinking ? "Working out what this room can hold ..." : WindowWords.sentence(thought.advice())));
        if (!thinking && !thought.warning().isEmpty()) {
            blocks.add(new Block.Words(Tone.LOOK, WindowWords.sentence(thought.warning())));
        }
        boolean further = showing.drafts().further();
        List<Block.Field> fields = new ArrayList<>(List.of(NotesFields.tuning(profile, tuning)));
        if (further) {
            fields.addAll(NotesFields.besides(tuning));
        } else {
            fields.addAll(NotesFields.which(tuning));
            fields.addAll(NotesFields.how(tuning));
            fields.add(Sights.choice("Chart", showing.seen(CHARTS), CHARTS));
        }
        blocks.addAll(showing.drafts().under(fields));
        blocks.add(new Block.Live(
                further || showing.seen(CHARTS).equals(NOTES)
                        ? Sights.ladder(profile, tuning)
                        : Sights.feel(profile, tuning)));
        if (!thinking && !further && !thought.feel().isEmpty()) {
            blocks.add(new Block.Words(Tone.QUIET, WindowWords.sentence(thought.feel())));
        }
        blocks.add(new Block.Offers(offers(evening, profile, tuning, further)));
        return new Page(Station.NOTES, blocks);
    }

    private static List<Offer> offers(EveningView evening, RoomProfile profile, Tuning tuning, boolean further) {
        boolean first = profile.tunings().get(0).name().equals(tuning.name());
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.next("Save", "ctrl S", Wish.Plain.SAVE, "keeps the room; 20 versions before it stay")
                .unless(evening.keeping().unsaved() ? "" : "nothing has changed since it was kept"));
        if (further) {
            offers.add(Offer.plain(
                    "Scale and range", "ctrl I", Wish.RoomAct.TURN_FURTHER, "scale, key, range, snapping, spread"));
            offers.add(Offer.plain(
                    "One more tuning", "ctrl T", Wish.RoomAct.ADD_TUNING, "adds one that begins as this one is"));
            offers.add(Offer.plain(
                            "Make it the first",
                            "ctrl F",
                            Wish.RoomAct.FIRST_TUNING,
                            "the first plays unless another is chosen")
                    .unless(first ? "it is the first" : ""));
            offers.add(Offer.plain("Remove it", "ctrl DELETE", Wish.RoomAct.REMOVE_TUNING, "takes this tuning out")
                    .unless(profile.tunings().size() == 1 ? "a room has at least one tuning" : ""));
        } else {
            offers.add(Offer.plain(
                    "Steadier", "ctrl LEFT", new Wish.Quicken(-HALF_STEP), "half a step; less wobble, more lag"));
            offers.add(Offer.plain(
                    "Quicker", "ctrl RIGHT", new Wish.Quicken(HALF_STEP), "half a step; less lag, more wobble"));
            offers.add(Offer.plain(
                    "Tunings and more",
                    "ctrl I",
                    Wish.RoomAct.TURN_FURTHER,
                    "one more tuning, its name, which is the first; temperament, transposition, trim, strength, reference"
                            + " pitch, a scale of your own"));
        }
        evening.sounding()
                .setting()
                .map(PlayDesk.Setting::tuning)
                .ifPresent(playing -> offers.add(Offer.plain(
                                "Play this one",
                                "ctrl Y",
                                new Wish.PlayTuning(tuning.name()),
                                "pitch passes over into it; what is closed stays closed")
                        .unless(playing.equals(tuning.name()) ? "it plays" : "")));
        return offers;
    }

    /** While it plays for this evening, else for good. */
    static void quicken(Evening evening, double steps) {
        evening.sound()
                .desk()
                .ifPresentOrElse(
                        desk -> desk.quicken(steps).ifPresent(evening.sound()::refuse),
                        () -> evening.room()
                                .changeTuning(
                                        tuning -> tuning.with(tuning.quickness().plus(steps))));
    }
}
