package handspan.instrument.line;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** What a board prints, as text for people: UTF-8 where it is that, as in most boards' programs; else Latin-1. */
public final class LineText {
    private LineText() {}

    /** The text between two positions of a line. */
    public static String of(byte[] line, int from, int to) {
        for (int i = from; i < to; i++) {
            if (line[i] < 0) {
                return beyondAscii(line, from, to);
            }
        }
        return new String(line, from, to - from, StandardCharsets.ISO_8859_1);
    }

    private static String beyondAscii(byte[] line, int from, int to) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(line, from, to - from))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(line, from, to - from, StandardCharsets.ISO_8859_1);
        }
    }

    /** Whether three letters stand side by side: garbled bytes seldom make a word. */
    public static boolean hasWord(byte[] line, int length) {
        int letters = 0;
        for (int i = 0; i < length && letters < 3; i++) {
            letters = line[i] >= 0 && Character.isLetter(line[i]) ? letters + 1 : 0;
        }
        return letters == 3;
    }

    /** The bytes of a text in UTF-8, each as a character: how its letters stand in a line. */
    static String asBytes(String text) {
        return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    }
}
