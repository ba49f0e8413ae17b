package handspan.outside.take;

import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/** The marks of a take as text: {@code # step microseconds NAME} and {@code # captured fromMicros toMicros NAME}. */
final class TakeMarks {
    /** What a step mark begins with. */
    static final String STEP = "# step ";

    /** What a captured mark begins with. */
    static final String CAPTURED = "# captured ";

    private static final int LONGEST_DIGITS = 18;

    private TakeMarks() {}

    /** Whether a line wants to be a mark. */
    static boolean looksLikeMark(String line) {
        return line.startsWith(STEP) || line.startsWith(CAPTURED);
    }

    /** The mark in a line, null when it is damaged. */
    static @Nullable TakeEntry read(String line) {
        if (line.startsWith(STEP)) {
            String[] parts = line.substring(STEP.length()).split(" ", 2);
            long micros = micros(parts[0]);
            return parts.length == 2 && micros >= 0 && !parts[1].isBlank()
                    ? new TakeEntry.Step(micros, parts[1])
                    : null;
        }
        if (!line.startsWith(CAPTURED)) {
            return null;
        }
        String[] parts = line.substring(CAPTURED.length()).split(" ", 3);
        if (parts.length < 3 || parts[2].isBlank()) {
            return null;
        }
        long fromMicros = micros(parts[0]);
        long toMicros = micros(parts[1]);
        return fromMicros >= 0 && toMicros >= fromMicros
                ? new TakeEntry.Captured(fromMicros, toMicros, parts[2])
                : null;
    }

    private static long micros(String text) {
        byte[] digits = text.getBytes(StandardCharsets.ISO_8859_1);
        return micros(digits, digits.length);
    }

    /** The whole number in the first bytes, -1 when they are not 1 to 18 digits. */
    static long micros(byte[] bytes, int length) {
        if (length < 1 || length > LONGEST_DIGITS) {
            return -1;
        }
        long value = 0;
        for (int i = 0; i < length; i++) {
            if (bytes[i] < '0' || bytes[i] > '9') {
                return -1;
            }
            value = 10 * value + (bytes[i] - '0');
        }
        return value;
    }
}
