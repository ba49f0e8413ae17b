package handspan.live.session;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** The latest events, as a list that never changes once handed out. Owned by the path thread. */
final class EventLog {
    private static final int MOST = 256;

    private final Consumer<Event> listener;
    private List<Event> latest = List.of();
    private long number;

    EventLog(Consumer<Event> listener) {
        this.listener = listener;
    }

    void add(Event.What what, long timeNanos) {
        number++;
        Event event = new Event(number, timeNanos, what);
        List<Event> next = new ArrayList<>(latest.size() == MOST ? latest.subList(1, MOST) : latest);
        next.add(event);
        latest = List.copyOf(next);
        listener.accept(event);
    }

    List<Event> latest() {
        return latest;
    }

    long number() {
        return number;
    }
}
