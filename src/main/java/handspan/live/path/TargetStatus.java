package handspan.live.path;

/**
 * A target's counters.
 *
 * @param target the written form, for example {@code udp:127.0.0.1:9000}
 * @param sent frames handed to the network
 * @param refused frames that met "nobody listens there"
 * @param dropped frames lost for another reason (network full, target unresolved or vanished)
 * @param trouble the latest trouble in words; empty when there is none
 */
public record TargetStatus(String target, long sent, long refused, long dropped, String trouble) {}
