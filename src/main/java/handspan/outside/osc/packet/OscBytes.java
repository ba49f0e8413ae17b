package handspan.outside.osc.packet;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The building blocks of a packet as Open Sound Control 1.0 lays them out (M. Wright, 2002, sections "Atomic Data
 * Types", "OSC Messages" and "OSC Bundles"): big-endian, every block a multiple of 4 bytes long.
 */
public final class OscBytes {
    /** Bytes of a bundle before its first element: the word {@code #bundle} and the time tag. */
    public static final int BUNDLE_HEAD_BYTES = 16;

    /** Bytes of the length before each element of a bundle. */
    public static final int SIZE_BYTES = 4;

    /** The most a datagram carries over IPv4: 65,535 less 20 of IP head (RFC 791) and 8 of UDP head (RFC 768). */
    public static final int MAX_PACKET_BYTES = 65_507;

    private static final byte[] BUNDLE_WORD = string("#bundle");

    private OscBytes() {}

    /** {@code text}, at least one zero byte after it, and zero bytes up to a multiple of 4. */
    public static byte[] string(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == 0 || c > 127) {
                throw new IllegalArgumentException(
                        "text '" + text + "': character " + (i + 1) + " is not allowed there (ASCII): leave it out");
            }
        }
        byte[] plain = text.getBytes(StandardCharsets.US_ASCII);
        return Arrays.copyOf(plain, (plain.length / 4 + 1) * 4);
    }

    /**
     * What a message has before its arguments: address and type tags.
     *
     * @param types tags without the leading comma, for example {@code if}
     */
    public static byte[] messageHead(String address, String types) {
        byte[] first = string(address);
        byte[] second = string("," + types);
        byte[] head = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, head, first.length, second.length);
        return head;
    }

    /** Writes what a bundle has before its first element. */
    public static void putBundleHead(ByteBuffer packet, long timeTag) {
        packet.put(BUNDLE_WORD).putLong(timeTag);
    }

    /** Whether the packet, from its position on, calls itself a bundle. */
    public static boolean startsAsBundle(ByteBuffer packet) {
        if (packet.remaining() < BUNDLE_WORD.length) {
            return false;
        }
        for (int i = 0; i < BUNDLE_WORD.length; i++) {
            if (packet.get(packet.position() + i) != BUNDLE_WORD[i]) {
                return false;
            }
        }
        return true;
    }
}
