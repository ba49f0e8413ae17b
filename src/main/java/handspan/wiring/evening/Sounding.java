package handspan.wiring.evening;

import handspan.live.path.TargetStatus;
import handspan.live.session.PlayDesk;
import handspan.music.send.SendTarget;
import java.util.List;
import java.util.Optional;

/**
 * Where sound goes.
 *
 * @param wanted targets of the room, or of the next one that is made
 * @param setting how the desk is set while it plays; empty when it does not
 * @param targets how those that are open stand
 * @param trying whether the sound for trying runs
 * @param tried whether it has run to its end once
 * @param trouble what went wrong, in words with what to do; empty when nothing did
 */
public record Sounding(
        List<SendTarget> wanted,
        Optional<PlayDesk.Setting> setting,
        List<TargetStatus> targets,
        boolean trying,
        boolean tried,
        String trouble) {
    /** Copies the lists. */
    public Sounding {
        wanted = List.copyOf(wanted);
        targets = List.copyOf(targets);
    }

    Sounding to(List<SendTarget> others) {
        return new Sounding(others, setting, targets, trying, tried, "");
    }

    Sounding standing(Optional<PlayDesk.Setting> now, List<TargetStatus> status) {
        return new Sounding(wanted, now, status, trying, tried, trouble);
    }

    Sounding trying(boolean on, boolean once, List<TargetStatus> status) {
        return new Sounding(wanted, setting, status, on, once, trouble);
    }

    Sounding troubled(String words) {
        return new Sounding(wanted, setting, targets, trying, tried, words);
    }
}
