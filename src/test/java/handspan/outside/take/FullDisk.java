package handspan.outside.take;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.atomic.AtomicInteger;

/** Takes so many bytes, the last write in part, as a disk does; later there is room again, which must not be used. */
final class FullDisk extends OutputStream {
    private static final int LATER = 1 << 20;

    private final ByteArrayOutputStream stored = new ByteArrayOutputStream();
    private int room;
    private final AtomicInteger closings = new AtomicInteger();

    FullDisk(int room) {
        this.room = room;
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        int fits = Math.min(room, length);
        stored.write(bytes, from, fits);
        room -= fits;
        if (fits < length) {
            room = LATER;
            throw new IOException("no space left");
        }
    }

    @Override
    public void close() {
        closings.incrementAndGet();
    }

    byte[] stored() {
        return stored.toByteArray();
    }

    int closings() {
        return closings.get();
    }
}
