package handspan.music.send;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * An address that may hold a number of the frame, for receivers that want one there: {@code /keys/{key}/level}. Braces
 * have no other meaning in what is sent, since Open Sound Control 1.0 keeps them for the patterns of a receiver's
 * peers.
 *
 * @param before what stands before the number; all of it where there is none
 * @param number which number; null for none
 * @param after what stands after it
 */
public record NumberedAddress(String before, @Nullable Part number, String after) {
    /** What can stand in an address. */
    public enum Part {
        /** Nearest key, 69 = A4. */
        KEY("key"),
        /** Degree of the nearest scale note. */
        DEGREE("degree"),
        /** Its octave. */
        OCTAVE("octave");

        private final String word;

        Part(String word) {
            this.word = word;
        }

        /** The number of a frame. */
        public int of(SoundFrame frame) {
            return switch (this) {
                case KEY -> frame.key();
                case DEGREE -> frame.degree();
                case OCTAVE -> frame.octave();
            };
        }

        private String placeholder() {
            return "{" + word + "}";
        }
    }

    /**
     * Reads the written form.
     *
     * @throws IllegalArgumentException naming the address and what is wrong with it
     */
    public static NumberedAddress parse(String text) {
        for (Part number : Part.values()) {
            int at = text.indexOf(number.placeholder());
            if (at >= 0) {
                NumberedAddress address = new NumberedAddress(
                        text.substring(0, at),
                        number,
                        text.substring(at + number.placeholder().length()));
                OscAddress.check(address.with(0));
                return address;
            }
        }
        if (text.indexOf('{') >= 0) {
            throw new IllegalArgumentException("address '" + text + "': in braces only "
                    + Arrays.stream(Part.values()).map(Part::placeholder).collect(Collectors.joining(", "))
                    + " can stand, and only one of them");
        }
        OscAddress.check(text);
        return new NumberedAddress(text, null, "");
    }

    /** The address with a number in its place. */
    public String with(int value) {
        return number == null ? before : before + value + after;
    }
}
