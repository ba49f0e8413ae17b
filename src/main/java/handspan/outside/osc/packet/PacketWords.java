package handspan.outside.osc.packet;

import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * What packets hold, in words: floats with all their digits, strings quoted, blobs by length and hex, defects with the
 * rule, the place and the first bytes. However large a packet is, its words are bounded.
 */
public final class PacketWords {
    private static final int MOST_TEXT = 200;
    private static final int MOST_BLOB_BYTES = 32;
    private static final int MOST_WORDS = 2_000;

    private PacketWords() {}

    /** A message: {@code /moth/note ,if 57 -3.5}, and behind it what is odd. */
    public static String of(OscPart.Message message) {
        ReceivedMessage heard = message.message();
        StringBuilder words = new StringBuilder(plain(heard.address()));
        words.append(" ,").append(plain(heard.typeTags()));
        append(words, heard.typeTags().chars().iterator(), heard.arguments());
        return words + (message.remark().isEmpty() ? "" : "   (odd: " + message.remark() + ")");
    }

    /** The head of a bundle. */
    public static String of(OscPart.Bundle bundle) {
        int parts = bundle.parts().size();
        String holds = parts == 0 ? "empty" : parts == 1 ? "1 part" : parts + " parts";
        return "bundle, " + time(bundle.timeTag()) + ", " + holds
                + (bundle.remark().isEmpty() ? "" : "   (odd: " + bundle.remark() + ")");
    }

    /** What is wrong with bytes. */
    public static String of(OscPart.Defect defect) {
        return "not Open Sound Control 1.0: " + defect.rule() + ", at byte " + defect.atByte() + "; " + defect.bytes()
                + " bytes: " + defect.hex() + (defect.bytes() * 3 > defect.hex().length() + 1 ? " ..." : "") + "  |"
                + defect.text() + "|";
    }

    /** A time tag: at once, or its date with microseconds. */
    public static String time(long timeTag) {
        return timeTag == OscTimeTag.IMMEDIATELY ? "at once" : "at " + date(timeTag);
    }

    /** The date of a time tag, to the microsecond below. */
    public static String date(long timeTag) {
        return OscTimeTag.instant(timeTag).truncatedTo(ChronoUnit.MICROS).toString();
    }

    /** Text in quotes, with what can't be seen spelled out, cut where it is long. */
    public static String quoted(String text) {
        return '"' + plain(text) + '"';
    }

    /** Two digits. */
    static String hex(byte one) {
        return HexFormat.of().toHexDigits(one);
    }

    private static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < Math.min(text.length(), MOST_TEXT); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                plain.append('\\').append(c);
            } else if (c == '\n') {
                plain.append("\\n");
            } else if (Character.isISOControl(c)
                    || Character.isSurrogate(c)
                    || Character.getType(c) == Character.FORMAT) {
                plain.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                plain.append(c);
            }
        }
        return plain + (text.length() > MOST_TEXT ? "..." : "");
    }

    private static void append(
            StringBuilder words, Iterator<Integer> tags, List<? extends @Nullable Object> arguments) {
        int told = 0;
        for (Object argument : arguments) {
            if (words.length() > MOST_WORDS) {
                words.append(" ... ").append(arguments.size() - told).append(" more");
                return;
            }
            char tag = (char) tags.next().intValue();
            if (argument instanceof List<?> inner) {
                words.append(" [");
                append(words, tags, inner);
                if (words.length() <= MOST_WORDS) {
                    tags.next();
                }
                words.append(" ]");
            } else {
                words.append(' ').append(value(tag, argument));
            }
            told++;
        }
    }

    private static String value(char tag, @Nullable Object argument) {
        if (argument == null) {
            return "nil";
        } else if (argument instanceof String text) {
            return quoted(text);
        } else if (argument instanceof byte[] blob) {
            return blob(blob);
        } else if (argument instanceof Character c) {
            return "'" + plain(c.toString()) + "'";
        } else if (argument instanceof Long time && tag == 't') {
            return time(time);
        } else if (argument instanceof Integer bits && (tag == 'r' || tag == 'm')) {
            return String.format(Locale.ROOT, tag == 'r' ? "#%08x" : "midi %08x", bits);
        }
        return argument == OscPart.Impulse.IMPULSE ? "impulse" : argument.toString();
    }

    private static String blob(byte[] blob) {
        StringBuilder words = new StringBuilder("blob of " + blob.length + (blob.length == 1 ? " byte" : " bytes"));
        for (int i = 0; i < Math.min(blob.length, MOST_BLOB_BYTES); i++) {
            words.append(i == 0 ? ": " : " ").append(hex(blob[i]));
        }
        return words + (blob.length > MOST_BLOB_BYTES ? " ..." : "");
    }
}
