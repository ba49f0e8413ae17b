package handspan.show.scene;

import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.calibrate.Step;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.HoldPurpose;
import handspan.wiring.evening.HoldTask;
import handspan.wiring.evening.Measuring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Holds with both hands in the air. */
final class RoomScene {
    private static final int MOST_STEPS = 8;
    private static final int HANDS = 2;
    private static final String SIGNALS =
            "One tone asks, a fifth up has captured, two low tones say not yet, three rising tones are the end.";

    private RoomScene() {}

    static Page page(EveningView evening, Showing showing) {
        List<Block> blocks = new ArrayList<>();
        if (evening.measuring().task().isPresent() && evening.snapshot().isPresent()) {
            holding(
                    blocks,
                    evening,
                    evening.measuring().task().get(),
                    evening.snapshot().get());
        } else {
            between(blocks, evening, showing);
        }
        return new Page(Station.ROOM, blocks);
    }

    private static void holding(List<Block> blocks, EveningView evening, HoldTask task, Snapshot snapshot) {
        HoldRing ring = HoldRing.of(snapshot, task);
        int captured = snapshot.activity() instanceof ActivityView.Calibrating calibrating ? calibrating.captured() : 0;
        int steps = task.plan().steps().size();
        blocks.add(new Block.Prompt(ring.prompt(), "step " + Math.min(captured + 1, steps) + " of " + steps));
        blocks.add(ring.block().beside(Sights.lastHold(evening, task, captured)));
        blocks.add(steps(task.plan().steps().stream().map(Step::id).toList(), captured));
        blocks.add(new Block.Offers(List.of(
                Offer.plain(
                                "Last hold once more",
                                "BACK_SPACE",
                                Wish.Plain.UNDO,
                                "drops the last hold and asks for it again; without a key: dip the hand to the sensor"
                                        + " and back, twice within 1.5 s")
                        .unless(captured == 0 ? "nothing is captured yet" : ""),
                Offer.plain("End without a room", "ESCAPE", Wish.Plain.STOP_HOLDS, "drops the holds so far"))));
        blocks.add(new Block.Words(Tone.QUIET, last(snapshot, task)));
    }

    /** Of many steps those around the one that is asked for. */
    private static Block.Steps steps(List<String> all, int done) {
        int from = Math.max(0, Math.min(done - MOST_STEPS / 2, all.size() - MOST_STEPS));
        int to = Math.min(all.size(), from + MOST_STEPS);
        return new Block.Steps(all.subList(from, to), done - from);
    }

    /** The last captured hold in figures, or how signals are meant before there is one. */
    private static String last(Snapshot snapshot, HoldTask task) {
        return snapshot.events().stream()
                .filter(event -> event.number() > task.afterEvent())
                .map(Event::what)
                .filter(Event.Captured.class::isInstance)
                .map(Event.Captured.class::cast)
                .reduce((before, latest) -> latest)
                .map(captured -> "Captured " + captured.step().id() + captured.words())
                .orElse(SIGNALS);
    }

    private static void between(List<Block> blocks, EveningView evening, Showing showing) {
        Measuring measuring = evening.measuring();
        if (!measuring.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, WindowWords.sentence(measuring.trouble())));
        }
        if (!measuring.refusals().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, "No room was made of these holds, because:"));
            measuring
                    .refusals()
                    .forEach(reason -> blocks.add(new Block.Words(Tone.BAD, "- " + WindowWords.of(reason))));
        }
        boolean has = evening.keeping().profile().isPresent();
        boolean anew = !has || showing.drafts().further();
        if (!anew) {
            measuring.check().ifPresent(check -> CheckWords.on(blocks, check));
            measuring.told().forEach(words -> blocks.add(new Block.Words(Tone.GOOD, WindowWords.sentence(words))));
            if (measuring.check().isEmpty()) {
                summary(blocks, evening.keeping().profile().get(), evening);
            }
            blocks.add(new Block.Offers(ofRoom(evening)));
            if (measuring.check().isEmpty()) {
                Sights.measured(blocks, evening, showing);
            }
            return;
        }
        blocks.add(new Block.Fields(RoomFields.of(evening, showing)));
        blocks.add(new Block.Offers(fresh(evening, has)));
        blocks.add(new Block.Words(
                Tone.QUIET,
                "Each hold is captured by itself: go there, be still, wait for the tone. Both hands stay in the air."));
    }

    private static List<Offer> fresh(EveningView evening, boolean has) {
        String unknown = evening.snapshot().isEmpty()
                ? "no instrument is open: arrive first"
                : evening.arrival().instrument().isEmpty() ? "which number is which hand is not known yet" : "";
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.next(
                        "Take the holds",
                        "ctrl R",
                        new Wish.Measure(HoldPurpose.FRESH),
                        "a new room: rest, near, far, then the level hand; some 30 s")
                .unless(unknown));
        if (has) {
            offers.add(Offer.plain(
                    "Back to the room", "BACK_SPACE", Wish.RoomAct.TURN_FURTHER, "leaves the room in hand as it is"));
        }
        return offers;
    }

    private static List<Offer> ofRoom(EveningView evening) {
        String closed = evening.snapshot().isEmpty() ? "no instrument is open: arrive first" : "";
        return List.of(
                Offer.plain(
                                "Does it fit?",
                                "ctrl K",
                                new Wish.Measure(HoldPurpose.CHECK),
                                "both ends and the open light again, some 10 s; says how many cents and dB it would be"
                                        + " off")
                        .unless(closed),
                Offer.plain(
                                "Ends and light again",
                                "ctrl E",
                                new Wish.Measure(HoldPurpose.AGAIN),
                                "how the sensors respond is kept; some 15 s")
                        .unless(closed),
                Offer.plain("Light again", "ctrl L", new Wish.Measure(HoldPurpose.LIGHT), "the open light alone")
                        .unless(closed),
                Offer.plain(
                                "Measure my aim",
                                "ctrl M",
                                new Wish.Measure(HoldPurpose.AIM),
                                "ends and light again, then ten unaided reaches; some 45 s")
                        .unless(closed),
                Offer.plain(
                        "A new room",
                        "ctrl N",
                        Wish.RoomAct.TURN_FURTHER,
                        "its name, and whether by its ends, by ruler or by ear"),
                Offer.next("Save", "ctrl S", Wish.Plain.SAVE, "keeps the room; 20 versions before it stay")
                        .unless(evening.keeping().unsaved() ? "" : "nothing has changed since it was kept"),
                Offer.next("On to playing", "ctrl ENTER", new Wish.Go(Station.PLAY), "muted at first"));
    }

    private static void summary(List<Block> blocks, RoomProfile profile, EveningView evening) {
        Room room = profile.room();
        boolean unsaved = evening.keeping().unsaved();
        blocks.add(new Block.Words(
                unsaved ? Tone.LOOK : Tone.GOOD,
                "Room '" + room.name() + "', taken " + ShelfScene.moment(room.calibratedAt()) + " UTC"
                        + (unsaved ? ", not saved yet" : ", saved")));
        if (evening.thought().of().equals(Optional.of(profile))) {
            // how well the fit fits, its chart says
            List<String> measured = evening.thought().measured().stream()
                    .filter(words -> !words.startsWith("fit:"))
                    .map(WindowWords::of)
                    .toList();
            int hands = Math.min(HANDS, measured.size());
            blocks.add(new Block.Words(Tone.PLAIN, ArriveScene.capital(String.join("; ", measured.subList(0, hands)))));
            blocks.add(new Block.Words(
                    Tone.PLAIN,
                    measured.subList(hands, measured.size()).stream()
                            .map(ArriveScene::capital)
                            .collect(Collectors.joining(". "))));
        } else {
            blocks.add(new Block.Words(Tone.PLAIN, "Pitch hand: " + hand(room.pitch())));
        }
    }

    private static String hand(HandSetup hand) {
        String unit = hand.scaledTravel() ? " mm of nominal travel" : " mm";
        return Figures.text(hand.zone().nearMm(), 0) + " to "
                + Figures.text(hand.zone().farMm(), 0) + unit + ", noise "
                + Figures.text(hand.noiseMm(), 2) + " mm rms";
    }
}
