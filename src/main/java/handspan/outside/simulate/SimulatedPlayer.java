package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A player with two hands, who does what is asked after a human reaction time and then holds still. Both hands begin
 * absent.
 *
 * <p>Reaction 0.25..0.45 s, moves of 0.6..1.0 s (assumed). May be asked from one thread while a board is read on
 * another.
 */
public final class SimulatedPlayer {
    /** Usual miss of an unaided reach, rms in mm (assumed). */
    public static final double USUAL_AIM_MM = 5;

    private static final double ENTER_SECONDS = 0.8;
    private static final double LEAVING_SHARE = 0.6;
    private static final double VIBRATO_FROM_SECONDS = 0.6;
    private static final double VIBRATO_AFTER_SECONDS = 0.2;

    private final SimulatedHand pitchHand;
    private final SimulatedHand levelHand;
    private final Stage pitchStage;
    private final Stage levelStage;
    private double aimMm;
    private final Random random;

    /**
     * A player.
     *
     * @param aimMm rms error of unaided reaches, mm
     */
    public SimulatedPlayer(Stage pitchStage, Stage levelStage, HandSettings hands, double aimMm, long seed) {
        this.pitchStage = pitchStage;
        this.levelStage = levelStage;
        this.aimMm = Allowed.within("aim", aimMm, 0, 100, "mm");
        pitchHand = new SimulatedHand(hands, Seeds.of(seed, "pitch hand"));
        levelHand = new SimulatedHand(hands, Seeds.of(seed, "level hand"));
        random = Seeds.random(seed, "player");
    }

    /**
     * From now on this player reaches better, or worse.
     *
     * @param rmsMm rms error of unaided reaches, 0..100 mm
     */
    public synchronized void aimWithin(double rmsMm) {
        aimMm = Allowed.within("aim", rmsMm, 0, 100, "mm");
    }

    /** One of the two hands. */
    public SimulatedHand hand(PlayerHand which) {
        return which == PlayerHand.PITCH ? pitchHand : levelHand;
    }

    /** Where the places of one hand truly are. */
    public Stage stage(PlayerHand which) {
        return which == PlayerHand.PITCH ? pitchStage : levelStage;
    }

    /**
     * Does what is asked and holds until the next cue.
     *
     * @param timeNanos when the cue is given
     * @return when the hand has arrived, or is gone
     */
    public synchronized long react(Cue cue, long timeNanos) {
        long start = timeNanos + Nanos.ofSeconds(Seeds.between(random, 0.25, 0.45));
        double seconds = Seeds.between(random, 0.6, 1.0);
        SimulatedHand hand = hand(cue.hand());
        Stage stage = stage(cue.hand());
        return switch (cue.kind()) {
            case REST, OPEN -> hand.leave(start, LEAVING_SHARE * seconds);
            case NEAR -> hand.goTo(stage.nearMm(), start, seconds);
            case FAR -> hand.goTo(stage.farMm(), start, seconds);
            case MID -> hand.goTo(stage.midMm(), start, seconds);
            case COVERED -> hand.goTo(stage.coveredMm(), start, seconds);
            case RULER, PLACE -> hand.goTo(cue.mm(), start, seconds);
            case REACH -> hand.goTo(reachedMm(cue.mm()), start, seconds);
        };
    }

    /**
     * Invents a passage between the near and the far end of the pitch stage: steps of up to five of its 24 parts, holds
     * of 0.3..1.2 s.
     *
     * @param notes how many notes
     */
    public synchronized List<PassageNote> improvise(int notes) {
        List<PassageNote> passage = new ArrayList<>();
        int part = 12;
        for (int i = 0; i < notes; i++) {
            part = Math.max(0, Math.min(24, part + random.nextInt(11) - 5));
            double mm = pitchStage.nearMm() + (pitchStage.farMm() - pitchStage.nearMm()) * part / 24;
            passage.add(new PassageNote(mm, 0.3 + 0.3 * random.nextInt(4)));
        }
        return passage;
    }

    /**
     * Plays a passage: the pitch hand glides from note to note, with a little vibrato on the longer ones, while the
     * level hand breathes between its near and its far place. Both hands stay where they end until the next cue.
     *
     * @param startNanos when the first move begins
     * @return when the last note is over
     */
    public synchronized long playPassage(List<PassageNote> notes, long startNanos) {
        long now = startNanos;
        for (PassageNote note : notes) {
            double glide = pitchHand.presentAt(now) ? Seeds.between(random, 0.12, 0.3) : ENTER_SECONDS;
            now = pitchHand.goTo(note.placeMm(), now, glide);
            if (note.holdSeconds() >= VIBRATO_FROM_SECONDS) {
                // 5.5..6.5 Hz: lower part of the rates found by R. Timmers, P. Desain, ICMPC 2000
                pitchHand.vibrato(
                        Seeds.between(random, 1, 3),
                        Seeds.between(random, 5.5, 6.5),
                        now + Nanos.ofSeconds(VIBRATO_AFTER_SECONDS),
                        note.holdSeconds() - VIBRATO_AFTER_SECONDS);
            }
            now += Nanos.ofSeconds(note.holdSeconds());
        }
        breathe(startNanos, now);
        return now;
    }

    private void breathe(long startNanos, long endNanos) {
        long now = startNanos;
        boolean swell = true;
        while (now < endNanos) {
            double mm = swell ? levelStage.farMm() : levelStage.nearMm();
            now = levelHand.goTo(mm, now, Seeds.between(random, 0.9, 1.8));
            swell = !swell;
        }
    }

    private double reachedMm(double wantedMm) {
        double reached = wantedMm + aimMm * random.nextGaussian();
        return Math.max(1, Math.min(SimulatedHand.AWAY_MM, reached));
    }
}
