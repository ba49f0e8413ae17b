package handspan.outside.osc.packet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A message that arrived.
 *
 * @param timeNanos when its packet arrived, on the clock of whoever reads
 * @param address where it goes, for example {@code /Moth/pitch}
 * @param typeTags one character an argument, without the leading comma; empty when there are none
 * @param arguments {@code i} Integer, {@code f} Float, {@code s} and {@code S} String, {@code b} byte array, {@code h}
 *     Long, {@code d} Double, {@code c} Character, {@code T F} Boolean, {@code N} null, {@code t} the 64-bit time tag
 *     as Long, {@code [ ]} List; what else may come is left as the library reads it
 */
public record ReceivedMessage(long timeNanos, String address, String typeTags, List<@Nullable Object> arguments) {
    /** Copies the arguments. */
    public ReceivedMessage {
        arguments = Collections.unmodifiableList(new ArrayList<>(arguments));
    }
}
