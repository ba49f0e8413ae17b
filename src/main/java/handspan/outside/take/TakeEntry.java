package handspan.outside.take;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * One thing a take holds. Times are whole microseconds from the take's start, 0 or more. Lines come in the order of
 * their times; a mark stands where it was written and may be a little older or newer than the lines around it.
 */
public sealed interface TakeEntry {
    /**
     * A line as it was received.
     *
     * @param micros when its end arrived
     * @param bytes what stood in it, without its line end; any byte but CR and LF; handed on, not copied
     */
    // bytes rather than text: a board may send anything, and a garbled line must come back exactly as it was
    @SuppressWarnings("ArrayRecordComponent")
    record Line(long micros, byte[] bytes) implements TakeEntry {
        public Line {
            checkMicros(micros);
            for (byte b : bytes) {
                if (b == '\n' || b == '\r') {
                    throw new IllegalArgumentException(
                            "line holds a line end: byte " + b + " (allowed: all but 10 and 13): split it before");
                }
            }
        }

        /** The line as text, one character a byte (Latin-1), so that nothing can fail to decode. */
        public String text() {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Line line && line.micros == micros && Arrays.equals(line.bytes, bytes);
        }

        @Override
        public int hashCode() {
            return 31 * Long.hashCode(micros) + Arrays.hashCode(bytes);
        }

        @Override
        public String toString() {
            return "Line[" + micros + ", " + text() + "]";
        }
    }

    /**
     * A step of a guided calibration began.
     *
     * @param name one line of text, not blank
     */
    record Step(long micros, String name) implements TakeEntry {
        public Step {
            checkMicros(micros);
            checkName(name);
        }
    }

    /**
     * A hold was captured from the lines between two times.
     *
     * @param toMicros not before {@code fromMicros}
     * @param name one line of text, not blank
     */
    record Captured(long fromMicros, long toMicros, String name) implements TakeEntry {
        public Captured {
            checkMicros(fromMicros);
            if (toMicros < fromMicros) {
                throw new IllegalArgumentException("captured until " + toMicros + " microseconds (allowed from "
                        + fromMicros + ", where it begins): give the earlier time first");
            }
            checkName(name);
        }
    }

    private static void checkMicros(long micros) {
        if (micros < 0) {
            throw new IllegalArgumentException(
                    "time " + micros + " microseconds (allowed 0 and more): count from the take's start");
        }
    }

    private static void checkName(String name) {
        if (name.isBlank() || name.indexOf('\n') >= 0 || name.indexOf('\r') >= 0) {
            throw new IllegalArgumentException(
                    "name '" + name + "' (allowed: one line of text, not blank): give the mark a name");
        }
    }
}
