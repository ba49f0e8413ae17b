package handspan.wiring;

import handspan.live.session.ActivityView;
import handspan.live.session.LinkState;
import handspan.live.session.Snapshot;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.budget.RoomCheck;
import handspan.room.budget.VenueLine;
import java.util.ArrayList;
import java.util.List;

/**
 * All that a sound check in a saved room comes to.
 *
 * @param room whether the room still fits
 * @param lines link, sensors, room and targets, each with a grade and what to do
 */
public record VenueCheck(RoomCheck room, List<VenueLine> lines) {
    /** Copies the lines. */
    public VenueCheck {
        lines = List.copyOf(lines);
    }

    /**
     * From fresh holds. Sends a few silent messages to each target, which takes up to a second.
     *
     * @param profile the room's file
     * @param kept its room, in tonight's air
     * @param link how the link stands, see {@link #link}
     * @param holds near, far and open as far as they were taken
     * @param byMark whether the ends were held at a ruler or at fixed marks
     */
    public static VenueCheck of(RoomProfile profile, Room kept, VenueLine link, List<Hold> holds, boolean byMark) {
        double centsPerMm =
                profile.tunings().get(0).centsPerMm(kept.pitch().zone().lengthMm());
        RoomCheck check = RoomCheck.of(kept, profile.level(), centsPerMm, holds, byMark);
        List<VenueLine> lines = new ArrayList<>();
        lines.add(link);
        lines.add(VenueLine.sensor(kept, HandRole.PITCH, holds));
        if (kept.level() != null) {
            lines.add(VenueLine.sensor(kept, HandRole.LEVEL, holds));
        }
        lines.add(VenueLine.room(check));
        lines.addAll(TargetCheck.lines(profile));
        return new VenueCheck(check, lines);
    }

    /**
     * Of a room whose instrument was rebuilt since: nothing is held.
     *
     * @param reason that, in words
     */
    public static VenueCheck rebuilt(String reason) {
        RoomCheck rebuilt = RoomCheck.rebuilt(reason);
        return new VenueCheck(
                rebuilt, List.of(VenueLine.notChecked("link", "the instrument was rebuilt"), VenueLine.room(rebuilt)));
    }

    /** How the link stands, from what is seen of it. */
    public static VenueLine link(Snapshot seen, Room kept) {
        if (seen.link() == LinkState.LOST) {
            return new VenueLine("link", VenueLine.Grade.BAD, "lost: " + seen.linkReason(), "look at cable and port");
        }
        double ratePerS = 0;
        if (seen.activity() instanceof ActivityView.Calibrating calibrating) {
            ratePerS = calibrating.ratePerS();
        } else if (seen.activity() instanceof ActivityView.Watching watching) {
            ratePerS = watching.ratePerS();
        }
        return VenueLine.link(seen.lines(), seen.rejections(), ratePerS, kept.ratePerS());
    }
}
