package handspan.outside.osc.packet;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The arguments of a message as numbers, texts, truth values, nothing and lists alone, for whoever prints data. */
public final class PlainValues {
    private PlainValues() {}

    /** Blobs, colours and midi messages become hex digits, time tags dates, an impulse the word for it. */
    public static List<@Nullable Object> of(ReceivedMessage message) {
        return plain(message.typeTags().chars().iterator(), message.arguments());
    }

    private static List<@Nullable Object> plain(Iterator<Integer> tags, List<? extends @Nullable Object> arguments) {
        List<@Nullable Object> plain = new ArrayList<>();
        for (Object argument : arguments) {
            char tag = (char) tags.next().intValue();
            if (argument instanceof List<?> inner) {
                plain.add(plain(tags, inner));
                tags.next();
            } else {
                plain.add(plain(tag, argument));
            }
        }
        return plain;
    }

    private static @Nullable Object plain(char tag, @Nullable Object argument) {
        if (argument instanceof byte[] blob) {
            StringBuilder hex = new StringBuilder();
            for (byte one : blob) {
                hex.append(PacketWords.hex(one));
            }
            return hex.toString();
        } else if (argument instanceof Long time && tag == 't') {
            return PacketWords.date(time);
        } else if (argument instanceof Integer bits && (tag == 'r' || tag == 'm')) {
            return String.format(Locale.ROOT, "%08x", bits);
        } else if (argument == OscPart.Impulse.IMPULSE) {
            return "impulse";
        }
        return argument instanceof Character c ? c.toString() : argument;
    }
}
