package handspan.outside.osc.packet;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * Goes through the bytes of one message or bundle and takes atoms of Open Sound Control 1.0 (section "Atomic Data
 * Types") from them. What is cut off or not ended is a {@link BrokenRule} with its place; what is only odd is kept as a
 * remark.
 */
final class PacketCursor {
    private final ByteBuffer bytes;
    private final int start;
    private String remark = "";

    /**
     * A cursor.
     *
     * @param element big-endian; its position moves
     * @param start where the element begins in its packet
     */
    PacketCursor(ByteBuffer element, int start) {
        this.bytes = element;
        this.start = start;
    }

    /** Where it stands in the packet. */
    int at() {
        return start + bytes.position();
    }

    int left() {
        return bytes.remaining();
    }

    /** The next byte, which stays; there must be one. */
    int next() {
        return bytes.get(bytes.position());
    }

    /** What is odd about what was read, in words; empty when nothing is. */
    String remark() {
        return remark;
    }

    void odd(String words) {
        remark += (remark.isEmpty() ? "" : "; ") + words;
    }

    int int32(String what) throws BrokenRule {
        need(4, what);
        return bytes.getInt();
    }

    long int64(String what) throws BrokenRule {
        need(8, what);
        return bytes.getLong();
    }

    /** Characters, a zero byte at least, and zero bytes up to a multiple of 4. */
    String string(String what) throws BrokenRule {
        int from = bytes.position();
        int end = from;
        while (end < bytes.limit() && bytes.get(end) != 0) {
            end++;
        }
        if (end == bytes.limit()) {
            throw new BrokenRule(at(), what + " is not ended: no zero byte follows");
        }
        ByteBuffer text = bytes.slice(from, end - from);
        bytes.position(end);
        skipTo(from + ((end - from) / 4 + 1) * 4, what);
        return decoded(text, what);
    }

    /** A length, that many bytes, and zero bytes up to a multiple of 4. */
    byte[] blob(String what) throws BrokenRule {
        int place = at();
        int length = int32(what);
        if (length < 0 || length > left()) {
            throw new BrokenRule(place, what + " says it has " + length + " bytes, " + left() + " are left");
        }
        byte[] blob = new byte[length];
        int from = bytes.position();
        bytes.get(blob);
        skipTo(from + (length + 3) / 4 * 4, what);
        return blob;
    }

    /** Goes on over zero bytes to a place that is a multiple of 4 from where the atom began. */
    private void skipTo(int place, String what) {
        int end = Math.min(place, bytes.limit());
        boolean zero = true;
        while (bytes.position() < end) {
            zero &= bytes.get() == 0;
        }
        if (!zero) {
            odd("the padding of " + what + " holds something");
        }
    }

    private String decoded(ByteBuffer text, String what) {
        boolean ascii = true;
        for (int i = 0; i < text.limit(); i++) {
            ascii &= text.get(i) >= 0;
        }
        if (ascii) {
            return StandardCharsets.US_ASCII.decode(text).toString();
        }
        odd(what + " is not ASCII");
        try {
            CharBuffer utf = StandardCharsets.UTF_8.newDecoder().decode(text.duplicate());
            return utf.toString();
        } catch (CharacterCodingException e) {
            return StandardCharsets.ISO_8859_1.decode(text).toString();
        }
    }

    private void need(int count, String what) throws BrokenRule {
        if (left() < count) {
            throw new BrokenRule(at(), what + " is cut off: " + count + " bytes are needed, " + left() + " are left");
        }
    }
}
