package handspan.outside.tone;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.util.Arrays;

/** A file on a disk with so much room: what is over is refused, what is there can still be written over. */
final class ScarceFile implements SeekableByteChannel {
    private final byte[] bytes;
    private int size;
    private int at;
    private boolean open = true;

    ScarceFile(int room) {
        bytes = new byte[room];
    }

    /** All that is in it. */
    byte[] contents() {
        return Arrays.copyOf(bytes, size);
    }

    @Override
    public int write(ByteBuffer some) throws IOException {
        int fits = Math.min(some.remaining(), bytes.length - at);
        if (fits <= 0 && some.hasRemaining()) {
            throw new IOException("No space left on device");
        }
        some.get(bytes, at, fits);
        at += fits;
        size = Math.max(size, at);
        return fits;
    }

    @Override
    public int read(ByteBuffer into) throws IOException {
        throw new IOException("for writing only");
    }

    @Override
    public long position() {
        return at;
    }

    @Override
    public SeekableByteChannel position(long position) {
        at = (int) position;
        return this;
    }

    @Override
    public long size() {
        return size;
    }

    @Override
    public SeekableByteChannel truncate(long length) {
        size = (int) Math.min(size, length);
        return this;
    }

    @Override
    public boolean isOpen() {
        return open;
    }

    @Override
    public void close() {
        open = false;
    }
}
