package handspan.wiring;

import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.budget.StepsBudget;
import java.util.List;
import java.util.Optional;

/**
 * An instrument's place in an ensemble: what it is called there, and what it plays.
 *
 * @param number from 1
 * @param name told apart from all others of the ensemble
 * @param profile its room, as it is to sound and to send tonight
 * @param tunings that it can go through; at least one
 * @param tuning that it begins with
 * @param settings how its path runs
 */
public record Seat(
        int number, String name, RoomProfile profile, List<Tuning> tunings, Tuning tuning, PathSettings settings) {
    /** Copies the tunings. */
    public Seat {
        tunings = List.copyOf(tunings);
        if (tunings.isEmpty()) {
            throw new IllegalArgumentException("seat " + number + " without a tuning (at least one)");
        }
    }

    /** Its room's name. */
    public String room() {
        return profile.room().name();
    }

    /** Why it can't play its tuning in its room; empty where it can. */
    public Optional<String> refusal() {
        return StepsBudget.refusal(profile.room(), tuning);
    }

    Command.Play play(boolean muted) {
        return new Command.Play(profile, tuning, settings.muted(muted));
    }
}
