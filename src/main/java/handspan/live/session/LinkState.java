package handspan.live.session;

import java.util.Locale;

/** How the link stands. */
public enum LinkState {
    /** Not open yet. */
    CLOSED,
    /** Open, no line yet: boards start anew when their port is opened. */
    WAITING,
    /** Lines come. */
    UP,
    /** No lines come for now, on purpose: a recording that is paused, or that goes on elsewhere. */
    PAUSED,
    /** It was there and has gone; it is being looked for. */
    LOST,
    /** The recording or simulation is over. */
    ENDED;

    /** The word in events. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
