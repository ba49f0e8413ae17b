package handspan.outside.midi;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Messages as a standard MIDI file of format 0, kept in memory until it is written. A tick is 1/1920 s (0.52 ms): 960
 * to the quarter, 120 quarters a minute.
 *
 * <p>Source: Standard MIDI Files 1.0 (MIDI Manufacturers Association, 1988), chunks, delta times, meta events.
 */
final class MidiTrack implements MidiMessages {
    private static final int TICKS_PER_QUARTER = 960;
    private static final int MICROS_PER_QUARTER = 500_000;
    private static final long TICKS_PER_S = 1_000_000L * TICKS_PER_QUARTER / MICROS_PER_QUARTER;
    private static final long NANOS_PER_S = 1_000_000_000L;

    /** Statuses from here to the next have one data byte. */
    private static final int PROGRAM = 0xC0;

    private static final int BEND = 0xE0;

    private static final int META = 0xFF;
    private static final int META_NAME = 0x03;
    private static final int META_END = 0x2F;
    private static final int META_TEMPO = 0x51;

    /** Pieces, so that the path never waits for a large copy. */
    private static final int PIECE = 65_536;

    private final List<byte[]> full = new ArrayList<>();
    private byte[] piece = new byte[PIECE];
    private int used;
    private final long startNanos;
    private long nowNanos;
    private long tick;

    /** An empty track that begins at a time. */
    MidiTrack(String name, long startNanos) {
        this.startNanos = startNanos;
        this.nowNanos = startNanos;
        byte[] text = name.getBytes(StandardCharsets.UTF_8);
        meta(META_NAME, text);
        meta(META_TEMPO, new byte[] {
            (byte) (MICROS_PER_QUARTER >> 16), (byte) (MICROS_PER_QUARTER >> 8), (byte) MICROS_PER_QUARTER
        });
    }

    /** What follows happens at that time, not before the last. */
    void at(long timeNanos) {
        nowNanos = Math.max(nowNanos, timeNanos);
    }

    @Override
    public void send(int status, int first, int second) {
        delta();
        put(status);
        put(first);
        int kind = status & 0xF0;
        if (kind < PROGRAM || kind >= BEND) {
            put(second);
        }
    }

    /** How many bytes it has. */
    long length() {
        return (long) full.size() * PIECE + used;
    }

    /** Ends and writes it; nothing may be added afterwards. */
    void writeTo(OutputStream out) throws IOException {
        meta(META_END, new byte[0]);
        ByteBuffer head = ByteBuffer.allocate(22);
        head.put("MThd".getBytes(StandardCharsets.US_ASCII)).putInt(6);
        head.putShort((short) 0).putShort((short) 1).putShort((short) TICKS_PER_QUARTER);
        head.put("MTrk".getBytes(StandardCharsets.US_ASCII)).putInt((int) length());
        out.write(head.array());
        for (byte[] one : full) {
            out.write(one);
        }
        out.write(piece, 0, used);
    }

    private void meta(int type, byte[] content) {
        delta();
        put(META);
        put(type);
        number(content.length);
        for (byte one : content) {
            put(one);
        }
    }

    private void delta() {
        long now = ((nowNanos - startNanos) * TICKS_PER_S + NANOS_PER_S / 2) / NANOS_PER_S;
        number(now - tick);
        tick = now;
    }

    /** Seven bits a byte, the highest first, all but the last marked. */
    private void number(long value) {
        for (int shift = 21; shift > 0; shift -= 7) {
            if (value >> shift != 0) {
                put((int) (value >> shift & 0x7F) | 0x80);
            }
        }
        put((int) (value & 0x7F));
    }

    private void put(int value) {
        if (used == PIECE) {
            full.add(piece);
            piece = new byte[PIECE];
            used = 0;
        }
        piece[used] = (byte) value;
        used++;
    }
}
