package handspan.live.session;

import handspan.instrument.line.Learning;
import handspan.instrument.line.LineShape;
import handspan.instrument.survey.WavePart;
import handspan.live.path.LightTaken;
import handspan.music.practice.Attempt;
import handspan.music.practice.WantedNote;
import handspan.music.send.PlayState;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.StepKind;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.Steadiness;
import handspan.room.calibrate.Step;
import java.util.List;
import java.util.Optional;

/**
 * What has happened, in order.
 *
 * @param number counts up from 1 within a session
 * @param timeNanos when
 * @param what it was
 */
public record Event(long number, long timeNanos, What what) {
    /** Kinds of events. */
    public sealed interface What {}

    /**
     * The link changed.
     *
     * @param state to what
     * @param reason in words; may be empty
     */
    public record Linked(LinkState state, String reason) implements What {}

    /**
     * What comes over the link is not what the board prints.
     *
     * @param words what is the matter, and what to do
     */
    public record LinkDoubt(String words) implements What {}

    /** A line shape was learned. */
    public record Learned(LineShape shape) implements What {}

    /** The lines can be read in two ways; nothing goes on before the player has said which. */
    public record Ambiguous(Learning.Ambiguous either) implements What {}

    /**
     * The board's program has changed.
     *
     * @param shape of the lines now
     * @param gone names of the numbers that are not there any more
     */
    public record BoardChanged(LineShape shape, List<String> gone) implements What {
        /** Copies the names. */
        public BoardChanged {
            gone = List.copyOf(gone);
        }

        /** In words. */
        public String words() {
            String missing = gone.isEmpty() ? "" : "; not there any more: " + String.join(", ", gone);
            return "the board's program has changed: " + shape.words() + missing;
        }
    }

    /**
     * The player is asked for a step.
     *
     * @param step which
     * @param readySeconds time to get the hand there, before anything is judged
     */
    public record Asked(Step step, double readySeconds) implements What {}

    /** The player is asked to move a hand to and fro, or to take both away. */
    public record WaveAsked(WavePart part) implements What {}

    /**
     * A step was captured.
     *
     * @param step which
     * @param hold what was captured; empty for a rest without a reading
     * @param steadiness how still it was; as present as the hold
     * @param fromNanos start of the hold
     * @param toNanos end of the hold
     */
    public record Captured(
            Step step, Optional<Hold> hold, Optional<Steadiness> steadiness, long fromNanos, long toNanos)
            implements What {
        /** What, in words that go on from "captured". */
        public String words() {
            if (step.kind() == StepKind.AIM) {
                // to say how far off it was would aid the next one
                return " " + step.reach().orElseThrow().number() + " of " + CalibrationPlan.REACHES;
            }
            return hold.map(this::words).orElse(": nothing there, as it should be");
        }

        private String words(Hold held) {
            StepKind kind = step.kind();
            boolean light = kind == StepKind.OPEN
                    || kind == StepKind.COVERED
                    || (kind == StepKind.MID && held.hand() == HandRole.LEVEL);
            int decimals = light || held.physical() < 10 ? 3 : 1;
            String there =
                    kind == StepKind.REST ? " something steady (if it is a hand, take it away and the step again)" : "";
            return there + ": " + Figures.text(held.physical(), decimals) + " +- "
                    + Figures.text(held.standardUncertainty(), decimals + 1)
                    + (light ? " in log light" : "") + ", noise " + Figures.text(held.noise(), decimals + 1)
                    + steadiness
                            .filter(steady -> steady.slow() > 0)
                            .map(steady -> ", wander " + Figures.text(steady.slow(), decimals + 1))
                            .orElse("");
        }
    }

    /**
     * A step is being held as it should be; it only has to last.
     *
     * @param step which
     * @param remainingSeconds how much longer, above 0
     */
    public record Holding(Step step, double remainingSeconds) implements What {}

    /**
     * The last captured step was dropped; it is asked for again next.
     *
     * @param step which
     * @param reason in words
     */
    public record Undone(Step step, String reason) implements What {}

    /**
     * A step can't be captured yet.
     *
     * @param step which
     * @param reason in words, with figures
     */
    public record NotYet(Step step, String reason) implements What {}

    /** What the instrument is doing changed. */
    public record Playing(PlayState state) implements What {}

    /**
     * The player is asked for a note.
     *
     * @param note which
     * @param placeMm where the room's map has it
     */
    public record NoteAsked(WantedNote note, double placeMm) implements What {}

    /**
     * A note that was asked for is answered.
     *
     * @param attempt what became of it
     * @param reason why no rest was seen in its time; empty where one was
     */
    public record NoteAnswered(Attempt attempt, String reason) implements What {}

    /**
     * The hand does not count as resting yet.
     *
     * @param note that is asked for
     * @param reason in words, with figures
     */
    public record NoteNotYet(WantedNote note, String reason) implements What {}

    /**
     * The light closes the sound, because it changes as no hand could change it, or opens it again.
     *
     * @param muted which of both
     * @param reason why, in words; empty when it opens
     */
    public record LightMute(boolean muted, String reason) implements What {}

    /** The open light level was to be taken again. */
    public record OpenTaken(LightTaken light) implements What {}

    /** Another tuning plays. */
    public record Tuned(Tuning tuning) implements What {}

    /**
     * A tuning can't be played in this room; what played before plays on.
     *
     * @param tuning its name
     * @param reason in words, with figures
     */
    public record TuningRefused(String tuning, String reason) implements What {}

    /**
     * Something is wrong with a hand's sensor while lines still come, or no longer is.
     *
     * @param trouble in words; empty when it is over
     */
    public record Sensor(String trouble) implements What {}

    /** Something between songs is worth a word; never while a hand plays. */
    public record Hint(String words) implements What {}

    /** A mistake in this program: what sounded has been silenced, what ran has ended. */
    public record Failed(String reason) implements What {}

    /** A command could not be carried out. */
    public record Refused(String reason) implements What {}
}
