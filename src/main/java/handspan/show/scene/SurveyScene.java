package handspan.show.scene;

import handspan.instrument.survey.Verdict;
import handspan.number.units.Figures;
import handspan.room.budget.SurveyWords;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.Surveyed;
import java.util.ArrayList;
import java.util.List;

/** Whether the sensors are well. */
final class SurveyScene {
    /** So long the hands are away before they are held still, s. */
    private static final double AWAY_S = 3;

    private SurveyScene() {}

    static List<Block> blocks(EveningView evening) {
        List<Block> blocks = new ArrayList<>();
        Surveyed surveyed = evening.surveyed();
        if (surveyed.running()) {
            boolean both = evening.arrival()
                    .instrument()
                    .filter(instrument -> instrument.level() != null)
                    .isPresent();
            running(blocks, surveyed, both);
        } else {
            found(blocks, surveyed);
        }
        return blocks;
    }

    private static void running(List<Block> blocks, Surveyed surveyed, boolean both) {
        boolean away = surveyed.seconds() < AWAY_S;
        blocks.add(new Block.Prompt(
                away ? "Hands away" : both ? "Hold both hands still" : "Hold the hand still",
                away ? "from all sensors" : "each in the middle over its sensor"));
        blocks.add(new Block.Ring(
                surveyed.lengthS() <= 0 ? 0 : Math.min(1, surveyed.seconds() / surveyed.lengthS()),
                Figures.text(Math.max(0, surveyed.lengthS() - surveyed.seconds()), 0) + " s",
                ""));
        blocks.add(
                new Block.Offers(List.of(Offer.plain("End", "BACK_SPACE", Wish.Plain.END_SURVEY, "judges nothing"))));
    }

    private static void found(List<Block> blocks, Surveyed surveyed) {
        if (!surveyed.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.BAD, "The sensors could not be judged: " + surveyed.trouble()));
        }
        for (int i = 0; i < surveyed.channels().size(); i++) {
            SurveyWords each = surveyed.channels().get(i);
            blocks.add(new Block.Words(
                    tone(each.verdict()), (i == 0 ? "Pitch hand, " : "Level hand, ") + each.judgement()));
            if (!each.remedy().isEmpty()) {
                blocks.add(new Block.Words(Tone.LOOK, "To do: " + each.remedy()));
            }
            if (!each.held().isEmpty()) {
                blocks.add(new Block.Words(Tone.PLAIN, ArriveScene.capital(each.held())));
            }
            if (!each.feel().isEmpty()) {
                blocks.add(new Block.Words(Tone.PLAIN, ArriveScene.capital(each.feel())));
            }
        }
        if (surveyed.channels().isEmpty() && surveyed.trouble().isEmpty()) {
            blocks.add(new Block.Words(Tone.PLAIN, "Judging ..."));
        }
        blocks.add(new Block.Offers(List.of(
                Offer.next(
                        "On to the room", "ctrl ENTER", new Wish.Go(Station.ROOM), "takes the holds of tonight's room"),
                judging(Surveyed.nothing(), "Once more"),
                Offer.plain("Back to the lines", "BACK_SPACE", Wish.Plain.END_SURVEY, "shows what the board sends"))));
    }

    private static Tone tone(Verdict verdict) {
        return switch (verdict) {
            case GOOD -> Tone.GOOD;
            case USABLE -> Tone.LOOK;
            case POOR -> Tone.BAD;
        };
    }

    /** To have them judged. */
    static Offer offer(EveningView evening) {
        Offer offer = judging(evening.surveyed(), "Judge the sensors");
        return evening.arrival().instrument().isPresent()
                ? offer
                : offer.unless("which number is which hand is not known yet");
    }

    private static Offer judging(Surveyed surveyed, String words) {
        return Offer.plain(
                        words,
                        "ctrl J",
                        Wish.Plain.SURVEY,
                        "12 s: both hands away, then each held still; says how noisy, steady and quick each sensor is,"
                                + " and what to do")
                .unless(surveyed.running() ? "it is under way" : "");
    }
}
