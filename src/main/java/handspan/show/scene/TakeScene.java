package handspan.show.scene;

import handspan.number.units.Figures;
import handspan.wiring.Source;
import handspan.wiring.TakePlace;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.Taking;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Recordings: one that runs in place of a board, and one that is being made. */
final class TakeScene {
    private static final String TURN_KEY = "ctrl G";
    private static final double STEP_S = 5;
    private static final double STRIDE_S = 60;

    private TakeScene() {}

    /** What there is to be seen and done of recordings while an instrument is open; nothing may be. */
    static List<Block> blocks(EveningView evening) {
        List<Block> blocks = new ArrayList<>();
        Taking taking = evening.taking();
        taking.place().ifPresent(place -> {
            blocks.add(bar(place));
            blocks.add(new Block.Keys(moving(place)));
            if (!place.remark().isEmpty()) {
                blocks.add(new Block.Words(Tone.LOOK, "Of the recording: " + place.remark()));
            }
        });
        making(blocks, taking);
        return blocks;
    }

    private static Block.TakeBar bar(TakePlace place) {
        List<Block.BarMark> marks = place.marks().stream()
                .map(mark -> new Block.BarMark(mark.atS(), mark.words()))
                .toList();
        return new Block.TakeBar(place.placeS(), place.lengthS(), place.running(), marks);
    }

    private static List<Offer> moving(TakePlace place) {
        boolean ended = place.lengthS().isPresent()
                && !place.running()
                && place.placeS() >= place.lengthS().getAsDouble();
        Offer turning = place.running()
                ? Offer.plain("Pause", TURN_KEY, Wish.Plain.TURN_TAKE, "fades, and stands where it is")
                : Offer.sound(
                        ended ? "Once more" : "Go on",
                        TURN_KEY,
                        Wish.Plain.TURN_TAKE,
                        "the recording goes on, and sounds where sound is open");
        return List.of(
                turning,
                Offer.plain("5 s back", "ctrl LEFT", new Wish.Skip(-STEP_S), "5 s back in the recording"),
                Offer.plain("5 s on", "ctrl RIGHT", new Wish.Skip(STEP_S), "5 s on in the recording"),
                Offer.plain("1 min back", "ctrl shift LEFT", new Wish.Skip(-STRIDE_S), "60 s back in the recording"),
                Offer.plain("1 min on", "ctrl shift RIGHT", new Wish.Skip(STRIDE_S), "60 s on in the recording"),
                Offer.plain("Start", "ctrl HOME", new Wish.Jump(0), "to the first line of the recording"));
    }

    private static void making(List<Block> blocks, Taking taking) {
        taking.made().ifPresent(made -> {
            String lines = Figures.count(made.lines()) + (made.lines() == 1 ? " line" : " lines");
            blocks.add(
                    made.running()
                            ? new Block.Words(
                                    Tone.GOOD,
                                    "Recording what the board sends: " + Moments.words(made.seconds()) + " (min:s), "
                                            + lines + ", into " + made.file())
                            : new Block.Words(
                                    Tone.PLAIN,
                                    "Recorded: " + Moments.words(made.seconds()) + " (min:s), " + lines + " in "
                                            + made.file()));
        });
        if (!taking.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, ArriveScene.capital(taking.trouble())));
        }
    }

    /** To begin a recording, or to end it. */
    static Offer recording(EveningView evening) {
        boolean runs = evening.taking().made().map(Taking.Made::running).orElse(false);
        boolean replay = evening.arrival()
                .source()
                .filter(source -> source.kind() == Source.Kind.TAKE)
                .isPresent();
        return runs
                ? Offer.plain("End the recording", "ctrl T", Wish.Plain.TURN_RECORDING, "closes its file")
                : Offer.plain(
                                "Record",
                                "ctrl T",
                                Wish.Plain.TURN_RECORDING,
                                "keeps what the board sends, line for line with its times, in a new file")
                        .unless(
                                evening.snapshot().isEmpty()
                                        ? "no instrument is open: arrive first"
                                        : replay ? "this is a recording already" : "");
    }

    /** Recordings to choose from, newest first. */
    static List<Block.Row> rows(Taking taking) {
        List<Block.Row> rows = new ArrayList<>();
        for (Taking.Kept kept : taking.shelf()) {
            Source source = new Source(Source.Kind.TAKE, kept.file().toString());
            rows.add(new Block.Row(
                    List.of(source.shortText(), kept.words(), "recording", ""),
                    Optional.of(new Wish.Open(source.text())),
                    "plays " + kept.file() + " in place of a board; it can be paused and taken elsewhere"));
        }
        return rows;
    }
}
