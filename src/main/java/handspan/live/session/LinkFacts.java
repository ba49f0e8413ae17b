package handspan.live.session;

import handspan.instrument.sensor.PortIdentity;
import org.jspecify.annotations.Nullable;

/**
 * What is known of an open link.
 *
 * @param port name of the port that is open; empty for what is none
 * @param baud link speed; 0 for what has none
 * @param identity of the board; null where none is told
 * @param note what a player should know of how it was opened; may be empty
 */
public record LinkFacts(String port, int baud, @Nullable PortIdentity identity, String note) {
    /** Of what is no port. */
    public static final LinkFacts NONE = new LinkFacts("", 0, null, "");
}
