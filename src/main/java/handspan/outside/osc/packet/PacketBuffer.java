package handspan.outside.osc.packet;

import java.nio.ByteBuffer;
import java.util.Arrays;

/** Collects a packet; grows with what has come, not with what was announced. */
final class PacketBuffer {
    private static final int FIRST_BYTES = 2048;

    private byte[] bytes = new byte[FIRST_BYTES];
    private int size;

    int size() {
        return size;
    }

    void clear() {
        size = 0;
    }

    void add(byte next) {
        makeRoom(1);
        bytes[size++] = next;
    }

    /** Takes {@code count} bytes of {@code from}. */
    void add(ByteBuffer from, int count) {
        makeRoom(count);
        from.get(bytes, size, count);
        size += count;
    }

    private void makeRoom(int more) {
        if (size + more > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(size + more, 2 * bytes.length));
        }
    }

    /** All of it, valid until the next change. */
    ByteBuffer whole() {
        return ByteBuffer.wrap(bytes, 0, size);
    }
}
