package handspan.room.calibrate;

import handspan.number.units.Nanos;
import handspan.room.StepKind;
import java.util.Optional;

/** Why a step can't be captured yet, told now and then: at once when it is news, else seldom. Owned by one thread. */
final class Reminders {
    private static final long REMIND_NANOS = 6 * Nanos.PER_SECOND;

    /** Another reason may be told after so long: words and signals one on top of the other are not heard. */
    private static final long NEWS_NANOS = 2 * Nanos.PER_SECOND;

    private static final long UNKNOWN = Long.MIN_VALUE;

    private HoldJudge.Why told = HoldJudge.Why.NONE;
    private long toldNanos;
    private long firstNanos = UNKNOWN;
    private String reason = "";

    /** A step is asked for: nothing is wrong yet. */
    void clear() {
        told = HoldJudge.Why.NONE;
        toldNanos = 0;
        firstNanos = UNKNOWN;
        reason = "";
    }

    /** What to tell of a window that is no hold. */
    Optional<CalibrationEvent> onVerdict(Step step, HoldJudge.Verdict verdict, long timeNanos) {
        reason = step.kind() == StepKind.REST
                ? "a hand, or something else, is still moving there: " + verdict.reason()
                : verdict.reason();
        return isDue(verdict, step.kind() == StepKind.AIM, timeNanos)
                ? Optional.of(new CalibrationEvent.NotYet(step, reason))
                : Optional.empty();
    }

    /**
     * Whether to tell why a window is no hold; if so, it counts as told.
     *
     * @param reaching the stop that is waited for is so short that the reach itself fills it
     */
    boolean isDue(HoldJudge.Verdict verdict, boolean reaching, long timeNanos) {
        firstNanos = firstNanos == UNKNOWN ? timeNanos : firstNanos;
        if (reaching && timeNanos - firstNanos < NEWS_NANOS) {
            return false;
        }
        boolean first = told == HoldJudge.Why.NONE;
        boolean news = verdict.why() != told && verdict.why() != HoldJudge.Why.ARRIVING;
        long pauseNanos = news ? NEWS_NANOS : REMIND_NANOS;
        if (first ? !news : timeNanos - toldNanos < pauseNanos) {
            return false;
        }
        told = verdict.why();
        toldNanos = timeNanos;
        return true;
    }

    /** The last reason, told or not; empty when nothing is wrong. */
    String reason() {
        return reason;
    }
}
