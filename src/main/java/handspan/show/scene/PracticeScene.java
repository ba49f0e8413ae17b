package handspan.show.scene;

import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.PlayDesk;
import handspan.live.session.Snapshot;
import handspan.music.practice.NoteTally;
import handspan.music.practice.PracticeInWords;
import handspan.music.practice.WantedNote;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.Zone;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.Practice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Notes to be found while it plays. */
final class PracticeScene {
    private static final String BY_EAR = "?";
    private static final Block.Prompt FIRST = new Block.Prompt("Go straight there and stop", "");
    private static final String HOW = "Go straight to each note and stop there";

    private PracticeScene() {}

    /** What the next run is to be, and what came of the last one. */
    static void before(List<Block> blocks, EveningView evening, String whyNot) {
        Practice practice = evening.practice();
        blocks.add(new Block.Heading("Find the notes"));
        blocks.add(new Block.Words(
                Tone.PLAIN,
                HOW + ": a hand that rests for 0.8 s after a move has answered. Cents are those of your hand; what"
                        + " snapping makes of them is left out."));
        trouble(blocks, practice);
        blocks.add(new Block.Fields(PracticeFields.of(practice)));
        blocks.add(new Block.Offers(List.of(
                Offer.next(
                                "Ask for notes",
                                "ctrl P",
                                Wish.Plain.PRACTISE,
                                "plays, muted, and asks for one after another")
                        .unless(whyNot),
                Offer.plain("Back to the stage", "BACK_SPACE", Wish.RoomAct.TURN_FURTHER, "without practice"))));
        told(blocks, practice);
    }

    private static void trouble(List<Block> blocks, Practice practice) {
        if (!practice.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, WindowWords.sentence(practice.trouble())));
        }
    }

    /** While notes are asked for, or when all were. */
    static void during(List<Block> blocks, EveningView evening, StageView stage, boolean alone) {
        Practice practice = evening.practice();
        trouble(blocks, practice);
        Optional<ActivityView.Practising> going = evening.snapshot()
                .map(Snapshot::activity)
                .filter(ActivityView.Practising.class::isInstance)
                .map(ActivityView.Practising.class::cast);
        boolean over = going.filter(ActivityView.Practising::over).isPresent();
        blocks.add(
                over
                        ? end(going.get())
                        : prompt(evening.snapshot().map(Snapshot::events).orElse(List.of())));
        blocks.add(new Block.Stage(going.filter(practising -> !over)
                .map(practising -> asking(practising, evening, stage))
                .orElse(stage)));
        List<Offer> offers = offers(evening, over);
        blocks.add(alone ? new Block.Keys(offers) : new Block.Offers(offers));
        if (over && !alone) {
            told(blocks, practice);
        }
    }

    private static Block end(ActivityView.Practising practising) {
        long hits = practising.attempts().stream()
                .filter(attempt -> attempt.isHit())
                .count();
        return new Block.Prompt("Done", hits + " of " + practising.attempts().size() + " found; it plays on");
    }

    /**
     * What became of the last note, in words that can be read from afar; below, why a hand that rests has not answered.
     *
     * @param events of the instrument, this run's among them
     */
    static Block.Prompt prompt(List<Event> events) {
        Block.Prompt prompt = FIRST;
        for (Event event : events) {
            if (event.what() instanceof Event.NoteAsked asked && asked.note().number() == 1) {
                prompt = FIRST;
            } else if (event.what() instanceof Event.NoteAnswered answered) {
                String more = answered.attempt()
                        .stop()
                        .map(PracticeInWords::more)
                        .orElse("no rest in time (" + answered.reason() + ")");
                prompt = new Block.Prompt(ArriveScene.capital(PracticeInWords.verdict(answered.attempt())), more);
            } else if (event.what() instanceof Event.NoteNotYet notYet) {
                prompt = new Block.Prompt(prompt.words(), "not yet: " + notYet.reason());
            }
        }
        return prompt;
    }

    private static StageView asking(ActivityView.Practising practising, EveningView evening, StageView stage) {
        Optional<WantedNote> wanted = practising.wanted();
        Optional<RoomProfile> profile = evening.keeping().profile();
        if (wanted.isEmpty() || profile.isEmpty()) {
            return stage;
        }
        WantedNote note = wanted.get();
        Practice practice = evening.practice();
        String name = practice.showsName() ? note.name() : BY_EAR;
        String words = "note " + note.number() + " of " + practising.notes();
        boolean hand = practising.playing().hands().pitch();
        if (!practice.wish().helps() || !hand) {
            return stage.askingFor(name, words, hand);
        }
        Zone zone = profile.get().room().pitch().zone();
        double handMm = practising.playing().hands().pitchMm();
        double wayMm = zone.mm(note.place01()) - handMm;
        double offCents = note.offCents(practising.playing().tuning(), zone.place01(handMm));
        String way = PracticeInWords.isThere(wayMm) ? "hold still" : PracticeInWords.way(wayMm);
        return stage.askingFor(name, words, true).showing(offCents, way);
    }

    private static List<Offer> offers(EveningView evening, boolean over) {
        boolean muted =
                evening.sounding().setting().map(PlayDesk.Setting::muted).orElse(true);
        List<Offer> offers = new ArrayList<>(PlayScene.opening(muted));
        if (over) {
            offers.add(Offer.plain("Once more", "ctrl P", Wish.Plain.PRACTISE, "as many notes again, muted at first"));
        } else if (evening.practice().wish().asking().sounds()) {
            offers.add(Offer.plain("Hear it again", "R", Wish.Plain.HEAR_NOTE, "the note that is asked for")
                    .unless(evening.practice().heard() ? "" : "no sound device: its name is shown"));
        }
        offers.add(PlayScene.stageAlone());
        offers.add(Offer.plain(
                "End",
                "ctrl E",
                Wish.Plain.STOP_PLAYING,
                "fades; what was found so far is kept under the player's name"));
        return offers;
    }

    private static void told(List<Block> blocks, Practice practice) {
        practice.told().forEach(words -> blocks.add(new Block.Words(Tone.GOOD, WindowWords.sentence(words))));
        if (practice.notes().isEmpty()) {
            return;
        }
        blocks.add(new Block.Table(
                "notes of the last run",
                List.of("note", "asked", "hit", "cents rms"),
                practice.notes().stream().map(PracticeScene::row).toList()));
    }

    private static Block.Row row(NoteTally note) {
        return new Block.Row(
                List.of(
                        note.name(),
                        Figures.count(note.asked()),
                        Figures.count(note.hits()),
                        note.reached() == 0 ? "" : Figures.text(note.rmsCents(), 0)),
                Optional.empty(),
                "");
    }
}
