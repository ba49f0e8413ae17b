package handspan.wiring;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.budget.VenueLine;
import java.util.ArrayList;
import java.util.List;

/** Sends a few silent messages to each of a room's targets: the only way to learn that nobody listens there. */
public final class TargetCheck {
    private static final int MESSAGES = 4;

    /** A second in all, for a target that is being opened meanwhile. */
    private static final int MOST_MESSAGES = 20;

    /** Time for "nobody listens there" to come back. */
    private static final long PAUSE_MS = 50;

    private TargetCheck() {}

    /** A line for each target; takes up to a second. */
    public static List<VenueLine> lines(RoomProfile profile) {
        List<VenueLine> lines = new ArrayList<>();
        if (profile.send().targets().isEmpty()) {
            return List.of(new VenueLine(
                    "targets", VenueLine.Grade.BAD, "the room sends to nobody", "name one: handspan send --add"));
        }
        try (Targets targets = Targets.open(profile.send())) {
            Tuning tuning = profile.tunings().get(0);
            double hz = tuning.reference().a4Hz();
            for (int i = 0; i < MESSAGES || (i < MOST_MESSAGES && isAnyWaitedFor(targets)); i++) {
                SoundFrame silence =
                        new SoundFrame(System.nanoTime(), hz, 69, 0, 0, 0, 0, false, 0, 0, PlayState.MUTED);
                for (FrameTarget target : targets.all()) {
                    target.send(silence, true);
                }
                Thread.sleep(PAUSE_MS);
            }
            for (TargetStatus status : targets.status()) {
                lines.add(VenueLine.target(status.target(), status.sent(), status.refused(), status.trouble()));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return lines;
    }

    private static boolean isAnyWaitedFor(Targets targets) {
        return targets.status().stream().anyMatch(status -> status.sent() + status.refused() == 0);
    }
}
