package handspan.outside.osc.packet;

import java.util.List;

/**
 * What a packet held.
 *
 * @param messages in the order of the packet, bundles laid flat; what came before a defect is kept
 * @param discarded messages left out because a type tag is not known, as Open Sound Control 1.0 asks
 * @param defect what is wrong with the packet, in words; empty when it is well formed
 */
public record OscPacket(List<ReceivedMessage> messages, int discarded, String defect) {
    /** Copies the list. */
    public OscPacket {
        messages = List.copyOf(messages);
    }

    /** Whether the packet breaks the rules. */
    public boolean malformed() {
        return !defect.isEmpty();
    }
}
