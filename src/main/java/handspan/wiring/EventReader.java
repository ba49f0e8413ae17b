package handspan.wiring;

import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import java.util.List;

/** Picks from each snapshot the events that were not seen yet. */
public final class EventReader {
    private long seen;

    /** Those that are new in a snapshot, oldest first. */
    public List<Event> fresh(Snapshot snapshot) {
        List<Event> fresh = snapshot.events().stream()
                .filter(event -> event.number() > seen)
                .toList();
        if (!fresh.isEmpty()) {
            seen = fresh.get(fresh.size() - 1).number();
        }
        return fresh;
    }
}
