package handspan.outside.take;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * One line of a file.
 *
 * @param number from 1
 * @param bytes without the line end
 * @param terminated whether a line end followed; false only for what stands after the last one
 * @param tooLong whether it was cut at {@link RawLines#LONGEST_BYTES}
 * @param endByte bytes of the file up to and with its line end
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, and made once per line: no need to copy
record RawLine(long number, byte[] bytes, boolean terminated, boolean tooLong, long endByte) {
    /** UTF-8 where the bytes are valid UTF-8, else Latin-1, which cannot fail. */
    String text() {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, StandardCharsets.ISO_8859_1);
        }
    }

    boolean isBlank() {
        for (byte b : bytes) {
            if (b != ' ' && b != '\t') {
                return false;
            }
        }
        return true;
    }

    boolean startsWith(char c) {
        return bytes.length > 0 && bytes[0] == c;
    }
}
