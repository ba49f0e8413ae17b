package handspan.show.scene;

import handspan.live.session.PlayDesk;
import handspan.wiring.evening.EveningView;
import java.util.ArrayList;
import java.util.List;

/** The stage. */
final class PlayScene {
    private static final int OCTAVE = 12;
    private static final double HALF_STEP = 0.5;

    private PlayScene() {}

    static Page page(EveningView evening, Showing showing) {
        List<Block> blocks = new ArrayList<>();
        boolean plays = evening.sounding().setting().isPresent();
        if (!plays && showing.drafts().further()) {
            PracticeScene.before(blocks, evening, whyNot(evening));
            return new Page(Station.PLAY, blocks);
        }
        if (!evening.sounding().trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, evening.sounding().trouble()));
        }
        if (plays && evening.practice().running()) {
            PracticeScene.during(blocks, evening, StageWords.of(evening, showing), showing.stageOnly());
            return new Page(Station.PLAY, blocks);
        }
        blocks.add(new Block.Stage(StageWords.of(evening, showing)));
        if (plays && showing.stageOnly()) {
            List<Offer> all = new ArrayList<>(playing(evening));
            all.addAll(shifting());
            blocks.add(new Block.Keys(all));
        } else {
            blocks.add(new Block.Offers(plays ? playing(evening) : before(evening)));
        }
        if (plays && !showing.stageOnly()) {
            evening.keeping().profile().ifPresent(profile -> blocks.add(1, new Block.Live(Sights.sent(profile))));
            blocks.add(new Block.Offers(shifting()));
        }
        blocks.addAll(TakeScene.blocks(evening));
        Offer recording = TakeScene.recording(evening);
        if (recording.isPossible()) {
            blocks.add(new Block.Keys(List.of(recording)));
        }
        return new Page(Station.PLAY, blocks);
    }

    private static String whyNot(EveningView evening) {
        return evening.snapshot().isEmpty()
                ? "no instrument is open: arrive first"
                : evening.keeping().profile().isEmpty() ? "there is no room yet: make one, or load one" : "";
    }

    private static List<Offer> before(EveningView evening) {
        return List.of(
                Offer.next(
                                "Get ready to play",
                                "ctrl P",
                                Wish.Plain.PLAY,
                                "opens all ways out; muted until sound is let through")
                        .unless(whyNot(evening)),
                Offer.plain(
                        "Find the notes", "ctrl F", Wish.RoomAct.TURN_FURTHER, "practice: asks for one after another"));
    }

    private static List<Offer> playing(EveningView evening) {
        boolean muted =
                evening.sounding().setting().map(PlayDesk.Setting::muted).orElse(true);
        List<Offer> offers = new ArrayList<>(opening(muted));
        offers.addAll(List.of(
                Offer.plain("Next tuning", "PAGE_DOWN", Wish.Plain.NEXT_TUNING, "the room's next one"),
                Offer.plain("Tuning before", "PAGE_UP", Wish.Plain.PREVIOUS_TUNING, "the room's one before"),
                stageAlone(),
                Offer.plain("End", "ctrl E", Wish.Plain.STOP_PLAYING, "fades and lets go of the ways out")));
        return offers;
    }

    /** To open the sound and to close it. */
    static List<Offer> opening(boolean muted) {
        return List.of(
                Offer.sound(
                                "Let sound through",
                                "ctrl ENTER",
                                Wish.Plain.LET_SOUND,
                                "opens the sound; monitors low first")
                        .unless(muted ? "" : "it is open"),
                Offer.next("Silence", "ESCAPE", Wish.Plain.SILENCE, "closes the sound at once, by a short fade")
                        .unless(muted ? "it is closed" : ""));
    }

    static Offer stageAlone() {
        return Offer.plain("Stage alone", "F11", Wish.Plain.TURN_STAGE, "fills the window with the stage, or not");
    }

    private static List<Offer> shifting() {
        return List.of(
                Offer.plain("Semitone up", "UP", new Wish.Shift(1), "100 cents higher, for this evening"),
                Offer.plain("Semitone down", "DOWN", new Wish.Shift(-1), "100 cents lower, for this evening"),
                Offer.plain("Octave up", "shift UP", new Wish.Shift(OCTAVE), "1200 cents higher, for this evening"),
                Offer.plain("Octave down", "shift DOWN", new Wish.Shift(-OCTAVE), "1200 cents lower, for this evening"),
                Offer.plain("Steadier", "LEFT", new Wish.Quicken(-HALF_STEP), "half a step; less wobble, more lag"),
                Offer.plain("Quicker", "RIGHT", new Wish.Quicken(HALF_STEP), "half a step; less lag, more wobble"),
                Offer.plain("As kept", "HOME", Wish.Plain.AS_KEPT, "takes back what was added"),
                Offer.plain("Cents", "H", Wish.Plain.TURN_PITCH_HELP, "shows how far pitch is from its note, or not"),
                Offer.plain(
                        "Light",
                        "ctrl L",
                        Wish.Plain.TAKE_LIGHT,
                        "both hands away: takes the present light as open for this evening"));
    }
}
