package handspan.show.scene;

import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.room.StepKind;
import handspan.room.calibrate.Step;
import handspan.wiring.evening.HoldTask;
import org.jspecify.annotations.Nullable;

/**
 * How far a hold has come, from what has happened last: between two words of how much longer it takes, the ring runs on
 * with the clock; when no such word comes any more, the hand is not still, and it is empty.
 *
 * @param step that is asked for
 * @param fill01 how much of the ring
 * @param remainingSeconds how much longer; 0 where nothing is held
 * @param reason why it is not, in words; empty where it is
 */
record HoldRing(@Nullable Step step, double fill01, double remainingSeconds, String reason) {
    /** They come every half second while the hand is still; looks are up to a quarter of a second apart. */
    private static final double STALE_SECONDS = 0.9;

    static HoldRing of(Snapshot snapshot, HoldTask task) {
        Step asked = null;
        Event still = null;
        String reason = "";
        for (Event event : snapshot.events()) {
            if (event.number() <= task.afterEvent()) {
                continue;
            }
            if (event.what() instanceof Event.Asked next) {
                asked = next.step();
                still = null;
                reason = "";
            } else if (event.what() instanceof Event.Holding) {
                still = event;
                reason = "";
            } else if (event.what() instanceof Event.NotYet not) {
                still = null;
                reason = not.reason();
            } else if (event.what() instanceof Event.Captured) {
                still = null;
            } else if (event.what() instanceof Event.Undone undone) {
                reason = "once more (" + undone.reason() + ")";
            }
        }
        if (asked == null || still == null || !(still.what() instanceof Event.Holding holding)) {
            return new HoldRing(asked, 0, 0, reason);
        }
        double sinceSeconds = Nanos.toSeconds(snapshot.timeNanos() - still.timeNanos());
        if (sinceSeconds > STALE_SECONDS && holding.remainingSeconds() - sinceSeconds > 0) {
            return new HoldRing(asked, 0, 0, "not still any more");
        }
        double total = task.rules().forStep(asked).holdSeconds();
        double remaining = Math.max(0, holding.remainingSeconds() - sinceSeconds);
        return new HoldRing(asked, Math.max(0, Math.min(1, 1 - remaining / total)), remaining, "");
    }

    Block.Ring block() {
        String inside = fill01 > 0 ? Figures.text(remainingSeconds, 1) + " s" : "";
        return new Block.Ring(fill01, inside, fill01 > 0 ? "" : reason);
    }

    /** Few words that can be read from afar. */
    String prompt() {
        Step wanted = step;
        if (wanted == null) {
            return "Get ready";
        }
        return wanted.kind() == StepKind.REST ? "Both hands away" : ArriveScene.capital(wanted.prompt());
    }
}
