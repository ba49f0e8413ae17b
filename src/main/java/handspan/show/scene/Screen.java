package handspan.show.scene;

import handspan.live.session.Snapshot;
import java.util.List;
import java.util.Optional;

/**
 * All that a window shows.
 *
 * @param showing what is looked at, and how
 * @param marks of the stations, in their order
 * @param page the station that is looked at
 * @param always what can be done wherever one is
 * @param status short words along the foot
 * @param live what charts are told, seen or not
 */
public record Screen(Showing showing, List<Mark> marks, Page page, List<Offer> always, List<Status> status, Live live) {
    /** Copies the lists. */
    public Screen {
        marks = List.copyOf(marks);
        always = List.copyOf(always);
        status = List.copyOf(status);
    }

    /**
     * What charts that move are told.
     *
     * @param snapshot of the open instrument
     * @param sights that there are tonight, on whatever page
     */
    public record Live(Optional<Snapshot> snapshot, List<Sight> sights) {
        /** Copies the list. */
        public Live {
            sights = List.copyOf(sights);
        }
    }

    /**
     * A station along the edge.
     *
     * @param station which
     * @param tone good where it is done, look or bad where something is to be seen to, else quiet
     * @param words what is known there already, in a few words
     */
    public record Mark(Station station, Tone tone, String words) {}

    /**
     * A short word along the foot.
     *
     * @param what about
     * @param words how it stands
     * @param tone how that is meant
     */
    public record Status(String what, String words, Tone tone) {}
}
