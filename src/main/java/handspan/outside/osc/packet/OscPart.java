package handspan.outside.osc.packet;

import java.util.List;

/** What a packet, or an element of a bundle, turned out to be. Immutable. */
public sealed interface OscPart {
    /**
     * A message.
     *
     * @param message with its arguments; those of tag {@code r} and {@code m} are Integer, of {@code I}
     *     {@link Impulse}, all others as {@link ReceivedMessage} has it
     * @param clean whether it keeps every rule that a sender has to keep
     * @param remark what is odd about it, in words; empty when nothing is
     */
    record Message(ReceivedMessage message, boolean clean, String remark) implements OscPart {}

    /**
     * A bundle.
     *
     * @param timeTag when it is meant, see {@link OscTimeTag}
     * @param parts in the order of the packet
     * @param remark what is odd about it, in words; empty when nothing is
     */
    record Bundle(long timeTag, List<OscPart> parts, String remark) implements OscPart {
        /** Copies the list. */
        public Bundle {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Bytes that break the rules.
     *
     * @param atByte where, counted from 0 at the start of the packet
     * @param rule which rule, in words
     * @param bytes how many bytes the packet or element has
     * @param hex its first bytes, two digits each
     * @param text the same bytes as characters, a dot for what is none
     */
    record Defect(int atByte, String rule, int bytes, String hex, String text) implements OscPart {}

    /** The value of the tag {@code I}, which has no bytes: something is to happen. */
    enum Impulse {
        /** The only one. */
        IMPULSE
    }
}
