package handspan.outside.osc.packet;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;

/**
 * Writes small bundles, meant at once, for whatever is sent seldom: answers. Not for frames, see {@link OscEncoder}.
 */
public final class BundleWriter {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    /** A bundle without messages. */
    public BundleWriter() {
        ByteBuffer head = ByteBuffer.allocate(OscBytes.BUNDLE_HEAD_BYTES);
        OscBytes.putBundleHead(head, OscTimeTag.IMMEDIATELY);
        bytes.writeBytes(head.array());
    }

    /** Adds a message with a text and a whole number. */
    public BundleWriter add(String address, String text, int number) {
        return add(OscBytes.messageHead(address, "si"), OscBytes.string(ascii(text)), int32(number));
    }

    /** Adds a message with a text; what is not ASCII in it becomes a question mark. */
    public BundleWriter add(String address, String text) {
        return add(OscBytes.messageHead(address, "s"), OscBytes.string(ascii(text)));
    }

    /** Adds a message with a whole number. */
    public BundleWriter add(String address, int number) {
        return add(OscBytes.messageHead(address, "i"), int32(number));
    }

    /** Adds a message with a number. */
    public BundleWriter add(String address, float number) {
        return add(OscBytes.messageHead(address, "f"), int32(Float.floatToIntBits(number)));
    }

    /** All of it. */
    public ByteBuffer packet() {
        return ByteBuffer.wrap(bytes.toByteArray());
    }

    private BundleWriter add(byte[]... blocks) {
        int length = 0;
        for (byte[] block : blocks) {
            length += block.length;
        }
        bytes.writeBytes(int32(length));
        for (byte[] block : blocks) {
            bytes.writeBytes(block);
        }
        return this;
    }

    private static byte[] int32(int number) {
        return ByteBuffer.allocate(Integer.BYTES).putInt(number).array();
    }

    private static String ascii(String text) {
        return text.replaceAll("[^\\x01-\\x7f]", "?");
    }
}
