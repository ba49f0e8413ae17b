package handspan.outside.tone;

import java.io.Closeable;
import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Writes a WAV file: the RIFF form WAVE with a format and a data chunk, 44 bytes of header and then samples. The
 * lengths in the header are set right with each {@link #flush}, so that a file is whole up to there when the program is
 * killed, and for the samples that fit when a disk is full. Owned by one thread.
 *
 * <p>Source: IBM Corporation and Microsoft Corporation, Multimedia Programming Interface and Data Specifications 1.0,
 * 1991, "Waveform Audio File Format" (layout from memory).
 */
final class WavFile implements Closeable {
    static final int HEADER_BYTES = 44;

    /** What a length of 32 bits without a sign can tell, less the header: 12.4 hours. */
    static final long MOST_BYTES = 0xFFFF_FFFFL - HEADER_BYTES;

    private static final int BUFFER_BYTES = 1 << 15;
    private static final int PCM = 1;
    private static final int FORMAT_BYTES = 16;

    private final SeekableByteChannel file;
    private final ByteBuffer buffer = ByteBuffer.allocate(BUFFER_BYTES);
    private final byte[] bytes = new byte[BUFFER_BYTES];
    private long inFile;
    private boolean headed;
    private boolean broken;
    private boolean closed;

    /**
     * Nothing is written yet.
     *
     * @param file empty; closed by {@link #close}
     */
    WavFile(SeekableByteChannel file) {
        this.file = file;
    }

    /** Into a file, which is made or emptied. */
    static WavFile into(Path path) throws IOException {
        return new WavFile(FileChannel.open(
                path, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE));
    }

    /**
     * Adds samples.
     *
     * @param count how many from the beginning of the array
     */
    void add(short[] samples, int count) throws IOException {
        if (inFile + buffer.position() + (long) Pcm.BYTES * count > MOST_BYTES) {
            throw new IOException("a WAV file holds no more than 12.4 hours");
        }
        Pcm.bytes(samples, count, bytes);
        int done = 0;
        while (done < Pcm.BYTES * count) {
            int now = Math.min(buffer.remaining(), Pcm.BYTES * count - done);
            buffer.put(bytes, done, now);
            done += now;
            if (!buffer.hasRemaining()) {
                drain();
            }
        }
    }

    /** Hands on all that was added, and sets the lengths right. */
    void flush() throws IOException {
        drain();
        head();
    }

    /** Samples in the file so far. */
    long written() {
        return inFile / Pcm.BYTES;
    }

    private void drain() throws IOException {
        if (!headed) {
            head();
        }
        buffer.flip();
        try {
            while (buffer.hasRemaining()) {
                inFile += put(buffer);
            }
        } catch (IOException e) {
            broken = true;
            throw e;
        } finally {
            buffer.clear();
        }
    }

    private void head() throws IOException {
        ByteBuffer header = header(inFile - inFile % Pcm.BYTES);
        file.position(0);
        try {
            while (header.hasRemaining()) {
                put(header);
            }
        } catch (IOException e) {
            broken = true;
            throw e;
        }
        headed = true;
        file.position(HEADER_BYTES + inFile);
    }

    private int put(ByteBuffer some) throws IOException {
        int count = file.write(some);
        if (count <= 0) {
            throw new EOFException("the file takes no more");
        }
        return count;
    }

    private static ByteBuffer header(long dataBytes) {
        ByteBuffer header = ByteBuffer.allocate(HEADER_BYTES).order(ByteOrder.LITTLE_ENDIAN);
        header.put(name("RIFF")).putInt((int) (dataBytes + HEADER_BYTES - 8)).put(name("WAVE"));
        header.put(name("fmt ")).putInt(FORMAT_BYTES).putShort((short) PCM).putShort((short) 1);
        header.putInt(Pcm.SAMPLES_PER_S).putInt(Pcm.SAMPLES_PER_S * Pcm.BYTES);
        header.putShort((short) Pcm.BYTES).putShort((short) Pcm.BITS);
        header.put(name("data")).putInt((int) dataBytes);
        return header.flip();
    }

    private static byte[] name(String chunk) {
        return chunk.getBytes(StandardCharsets.US_ASCII);
    }

    /** Flushes, or, after a refusal, only sets the lengths right for what is in the file. */
    @Override
    public void close() throws IOException {
        if (closed) {
            return;
        }
        closed = true;
        try (file) {
            if (broken) {
                head();
            } else {
                flush();
            }
        }
    }
}
