package handspan.outside.osc.packet;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes packets of Open Sound Control 1.0 (M. Wright, 2002, section "OSC Syntax") apart as they are: bundles within
 * bundles, addresses that are patterns, and, where a rule is broken, which one and at which byte. Whatever the bytes,
 * the answer is a value, never an exception. Pure.
 */
public final class PacketDecoder {
    private static final int MAX_DEPTH = 8;
    private static final int MOST_SHOWN_BYTES = 24;
    private static final String MISSING_TAGS =
            "no type tags (senders older than Open Sound Control 1.0 left them out, and receivers should bear with"
                    + " that)";

    private final long timeNanos;

    private PacketDecoder(long timeNanos) {
        this.timeNanos = timeNanos;
    }

    /**
     * Takes a packet apart, from its position to its limit; both stay where they are.
     *
     * @param timeNanos when it arrived
     */
    public static OscPart decode(ByteBuffer packet, long timeNanos) {
        return new PacketDecoder(timeNanos).element(packet.slice(), 0, 1);
    }

    /** All messages of a part in their order, those within bundles too. */
    public static List<OscPart.Message> messages(OscPart part) {
        List<OscPart.Message> messages = new ArrayList<>();
        if (part instanceof OscPart.Message message) {
            messages.add(message);
        } else if (part instanceof OscPart.Bundle bundle) {
            bundle.parts().forEach(inner -> messages.addAll(messages(inner)));
        }
        return messages;
    }

    /** All defects of a part in their order, those within bundles too. */
    public static List<OscPart.Defect> defects(OscPart part) {
        List<OscPart.Defect> defects = new ArrayList<>();
        if (part instanceof OscPart.Defect defect) {
            defects.add(defect);
        } else if (part instanceof OscPart.Bundle bundle) {
            bundle.parts().forEach(inner -> defects.addAll(defects(inner)));
        }
        return defects;
    }

    private OscPart element(ByteBuffer element, int start, int depth) {
        try {
            int length = element.limit();
            if (length == 0) {
                throw new BrokenRule(start, "it is empty");
            }
            if (length % 4 != 0) {
                throw new BrokenRule(start, "length " + length + " bytes is not a multiple of 4");
            }
            if (OscBytes.startsAsBundle(element)) {
                return bundle(element, start, depth);
            }
            if (element.get(0) == '#') {
                throw new BrokenRule(start, "it starts with # and is no bundle: #bundle and a zero byte");
            }
            return message(new PacketCursor(element, start));
        } catch (BrokenRule e) {
            return defect(element, e);
        }
    }

    private OscPart message(PacketCursor cursor) throws BrokenRule {
        int addressAt = cursor.at();
        String address = cursor.string("address");
        if (!address.startsWith("/")) {
            throw new BrokenRule(addressAt, "address " + PacketWords.quoted(address) + " does not start with /");
        }
        if (address.indexOf(' ') >= 0 || address.indexOf('#') >= 0) {
            cursor.odd("a blank or # in the address");
        }
        if (cursor.left() == 0) {
            ReceivedMessage bare = new ReceivedMessage(timeNanos, address, "", List.of());
            boolean clean = cursor.remark().isEmpty();
            cursor.odd(MISSING_TAGS);
            return new OscPart.Message(bare, clean, cursor.remark());
        }
        int tagsAt = cursor.at();
        if (cursor.next() != ',') {
            throw new BrokenRule(
                    tagsAt,
                    "type tags do not start with a comma (senders older than Open Sound Control 1.0 left them out, and"
                            + " receivers should bear with that; but what these " + cursor.left()
                            + " bytes mean is not told)");
        }
        String tags = cursor.string("type tags").substring(1);
        ReceivedMessage message =
                new ReceivedMessage(timeNanos, address, tags, new ArgumentDecoder(cursor).read(tags, tagsAt + 1));
        if (cursor.left() > 0) {
            cursor.odd(cursor.left() + " bytes are left behind the last argument");
        }
        return new OscPart.Message(message, cursor.remark().isEmpty(), cursor.remark());
    }

    private OscPart bundle(ByteBuffer bundle, int start, int depth) throws BrokenRule {
        if (depth > MAX_DEPTH) {
            throw new BrokenRule(start, "bundles nested more than " + MAX_DEPTH + " deep");
        }
        bundle.position(OscBytes.BUNDLE_HEAD_BYTES - Long.BYTES);
        PacketCursor cursor = new PacketCursor(bundle, start);
        long timeTag = cursor.int64("time tag of the bundle");
        List<OscPart> parts = new ArrayList<>();
        try {
            while (cursor.left() > 0) {
                int lengthAt = cursor.at();
                int length = cursor.int32("length of element " + (parts.size() + 1));
                if (length < 0 || length > cursor.left() || length % 4 != 0) {
                    throw new BrokenRule(
                            lengthAt,
                            "element " + (parts.size() + 1) + " of the bundle says it has " + length
                                    + " bytes (a multiple of 4, and " + cursor.left() + " are left)");
                }
                parts.add(element(bundle.slice(bundle.position(), length), cursor.at(), depth + 1));
                bundle.position(bundle.position() + length);
            }
        } catch (BrokenRule e) {
            // where the next one begins can't be known; those before it are good
            parts.add(defect(bundle, e));
        }
        return new OscPart.Bundle(timeTag, parts, earlier(timeTag, parts));
    }

    /** OSC 1.0: the time tag of an enclosed bundle must not be before that of the bundle around it. */
    private static String earlier(long timeTag, List<OscPart> parts) {
        boolean earlier = parts.stream()
                .anyMatch(part -> part instanceof OscPart.Bundle inner
                        && inner.timeTag() != OscTimeTag.IMMEDIATELY
                        && Long.compareUnsigned(inner.timeTag(), timeTag) < 0);
        return earlier ? "a bundle within is dated before it" : "";
    }

    private static OscPart.Defect defect(ByteBuffer element, BrokenRule broken) {
        StringBuilder hex = new StringBuilder();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < Math.min(element.limit(), MOST_SHOWN_BYTES); i++) {
            byte one = element.get(i);
            hex.append(i == 0 ? "" : " ").append(PacketWords.hex(one));
            text.append(one > 32 && one < 127 ? (char) one : '.');
        }
        return new OscPart.Defect(broken.atByte(), broken.rule(), element.limit(), hex.toString(), text.toString());
    }
}
