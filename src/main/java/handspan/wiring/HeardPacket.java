package handspan.wiring;

import handspan.outside.osc.packet.OscPart;
import handspan.outside.osc.packet.OscTimeTag;
import handspan.outside.osc.packet.PacketWords;
import handspan.outside.osc.packet.PlainValues;
import handspan.outside.osc.packet.ReceivedMessage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A packet that was heard, laid flat.
 *
 * @param timeNanos when it arrived
 * @param from address and port of its sender
 * @param parts at least one
 */
public record HeardPacket(long timeNanos, String from, List<HeardPart> parts) {
    /** Copies the parts. */
    public HeardPacket {
        parts = List.copyOf(parts);
    }

    static HeardPacket of(OscPart part, String from, long timeNanos) {
        List<HeardPart> parts = new ArrayList<>();
        add(part, 0, Optional.empty(), parts);
        return new HeardPacket(timeNanos, from, parts);
    }

    private static void add(OscPart part, int depth, Optional<String> timeTag, List<HeardPart> parts) {
        if (part instanceof OscPart.Bundle bundle) {
            boolean atOnce = bundle.timeTag() == OscTimeTag.IMMEDIATELY;
            parts.add(new HeardPart.Bundle(
                    depth, PacketWords.of(bundle), atOnce && bundle.remark().isEmpty()));
            Optional<String> inner = atOnce ? Optional.empty() : Optional.of(PacketWords.date(bundle.timeTag()));
            bundle.parts().forEach(each -> add(each, depth + 1, inner, parts));
        } else if (part instanceof OscPart.Message message) {
            ReceivedMessage heard = message.message();
            parts.add(new HeardPart.Message(
                    depth,
                    PacketWords.of(message),
                    timeTag,
                    heard.address(),
                    heard.typeTags(),
                    PlainValues.of(heard),
                    message.remark()));
        } else if (part instanceof OscPart.Defect defect) {
            parts.add(new HeardPart.Malformed(
                    depth, PacketWords.of(defect), defect.rule(), defect.atByte(), defect.bytes(), defect.hex()));
        }
    }
}
