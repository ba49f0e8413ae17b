package handspan.outside.osc;

/**
 * A receiver's counters.
 *
 * @param packets datagrams that arrived
 * @param messages messages handed to the listener
 * @param discarded messages with a type tag that is not known
 * @param malformed datagrams that break the rules of Open Sound Control 1.0
 * @param trouble the latest trouble in words; empty when there has been none
 */
public record ReceiverStatus(long packets, long messages, long discarded, long malformed, String trouble) {}
