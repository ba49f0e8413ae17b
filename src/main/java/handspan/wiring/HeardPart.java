package handspan.wiring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A part of a packet that was heard, in the order of the packet. */
public sealed interface HeardPart {
    /** How many bundles lie around it. */
    int depth();

    /** A line for people. */
    String words();

    /**
     * A message.
     *
     * @param timeTag date of the innermost bundle around it; empty where there is none or it is meant at once
     * @param values its arguments as numbers, texts, truth values, nothing and lists
     * @param remark what is odd about it; empty when nothing is
     */
    record Message(
            int depth,
            String words,
            Optional<String> timeTag,
            String address,
            String typeTags,
            List<@Nullable Object> values,
            String remark)
            implements HeardPart {
        /** Copies the values. */
        public Message {
            values = Collections.unmodifiableList(new ArrayList<>(values));
        }
    }

    /**
     * The head of a bundle, whose parts follow.
     *
     * @param usual whether it is meant at once and nothing is odd about it
     */
    record Bundle(int depth, String words, boolean usual) implements HeardPart {}

    /**
     * What is no Open Sound Control.
     *
     * @param rule which rule is broken
     * @param atByte where, from 0 at the start of the packet
     * @param bytes how many there are
     * @param hex the first of them
     */
    record Malformed(int depth, String words, String rule, int atByte, int bytes, String hex) implements HeardPart {}
}
