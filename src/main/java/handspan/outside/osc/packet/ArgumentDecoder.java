package handspan.outside.osc.packet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Takes the arguments of a message from its bytes, by its type tags: those that Open Sound Control 1.0 requires
 * ({@code i f s b}), those it reserves ({@code h t d S c r m T F N I [ ]}), and no other.
 */
final class ArgumentDecoder {
    private static final int MAX_DEPTH = 8;

    private final PacketCursor cursor;
    private final Deque<List<@Nullable Object>> open = new ArrayDeque<>();
    private int number;

    ArgumentDecoder(PacketCursor cursor) {
        this.cursor = cursor;
    }

    /**
     * Reads all of them.
     *
     * @param tags without the comma
     * @param tagsAt where the first tag stands in the packet
     */
    List<@Nullable Object> read(String tags, int tagsAt) throws BrokenRule {
        List<@Nullable Object> arguments = new ArrayList<>();
        open.push(arguments);
        for (int i = 0; i < tags.length(); i++) {
            char tag = tags.charAt(i);
            if (tag == '[') {
                begin(tagsAt + i);
            } else if (tag == ']') {
                end(tagsAt + i);
            } else {
                number++;
                top().add(value(tag, tagsAt + i));
            }
        }
        if (open.size() > 1) {
            throw new BrokenRule(tagsAt + tags.length(), "type tags: an array [ is not closed by ]");
        }
        return arguments;
    }

    private List<@Nullable Object> top() {
        return open.element();
    }

    private void begin(int at) throws BrokenRule {
        if (open.size() > MAX_DEPTH) {
            throw new BrokenRule(at, "type tags: arrays nested more than " + MAX_DEPTH + " deep");
        }
        List<@Nullable Object> inner = new ArrayList<>();
        top().add(inner);
        open.push(inner);
    }

    private void end(int at) throws BrokenRule {
        if (open.size() == 1) {
            throw new BrokenRule(at, "type tags: ] closes no array");
        }
        open.pop();
    }

    private @Nullable Object value(char tag, int at) throws BrokenRule {
        String what = "argument " + number + " (" + tag + ")";
        return switch (tag) {
            case 'i', 'r', 'm' -> cursor.int32(what);
            case 'f' -> Float.intBitsToFloat(cursor.int32(what));
            case 's', 'S' -> cursor.string(what);
            case 'b' -> cursor.blob(what);
            case 'h', 't' -> cursor.int64(what);
            case 'd' -> Double.longBitsToDouble(cursor.int64(what));
            case 'c' -> (char) cursor.int32(what);
            case 'T' -> true;
            case 'F' -> false;
            case 'N' -> null;
            case 'I' -> OscPart.Impulse.IMPULSE;
            default ->
                throw new BrokenRule(
                        at,
                        "type tag " + PacketWords.quoted(String.valueOf(tag))
                                + " is not known: such a message should be discarded");
        };
    }
}
