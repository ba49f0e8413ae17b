package handspan.live.path;

/**
 * A target's counters. Over UDP they count datagrams, of which a frame is one, or one a message where messages travel
 * apart; over all else frames.
 *
 * @param target the written form, for example {@code udp:127.0.0.1:9000}
 * @param sent those handed to the network
 * @param refused those that met "nobody listens there"
 * @param dropped those lost for another reason (network full, target unresolved or vanished, left out for newer ones)
 * @param trouble the latest trouble in words; empty when there is none
 */
public record TargetStatus(String target, long sent, long refused, long dropped, String trouble) {}
