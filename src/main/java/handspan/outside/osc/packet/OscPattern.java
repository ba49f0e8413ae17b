package handspan.outside.osc.packet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An address pattern of Open Sound Control 1.0 (M. Wright, 2002, section "OSC Message Dispatching and Pattern
 * Matching"): {@code ?} is any one character, {@code *} any number of them, {@code [a-z]} one of a set, {@code [!a-z]}
 * one outside of it, {@code {foo,bar}} one of several strings. Pattern and address must have equally many parts between
 * their {@code /}; nothing reaches across one. All else stands for itself, capitals told apart. An address without any
 * of these is a pattern of itself alone. Immutable.
 *
 * <p>All ways to match are followed side by side, so that the work never grows beyond the product of both lengths,
 * however many {@code *} there are.
 */
public final class OscPattern {
    private final String text;

    /** The pieces of each part. */
    private final List<List<Piece>> parts;

    private OscPattern(String text, List<List<Piece>> parts) {
        this.text = text;
        this.parts = parts;
    }

    /**
     * Reads a pattern.
     *
     * @throws IllegalArgumentException saying what is wrong with it
     */
    public static OscPattern of(String text) {
        if (!text.startsWith("/")) {
            throw new IllegalArgumentException("pattern '" + text + "' (it starts with /): write it like /moth/*");
        }
        List<List<Piece>> parts = new ArrayList<>();
        for (String part : text.substring(1).split("/", -1)) {
            parts.add(PatternReader.read(text, part));
        }
        return new OscPattern(text, List.copyOf(parts));
    }

    /** Whether an address is the pattern of more than itself. */
    public static boolean isPattern(String address) {
        return address.chars().anyMatch(c -> "?*[]{}".indexOf(c) >= 0);
    }

    /** Whether an address is meant; its characters stand for themselves. */
    public boolean matches(String address) {
        if (!address.startsWith("/")) {
            return false;
        }
        String[] names = address.substring(1).split("/", -1);
        if (names.length != parts.size()) {
            return false;
        }
        for (int i = 0; i < names.length; i++) {
            if (!matches(parts.get(i), names[i])) {
                return false;
            }
        }
        return true;
    }

    /** @return whether the pieces lead from the start of the name to its end */
    private static boolean matches(List<Piece> pieces, String name) {
        boolean[] from = new boolean[name.length() + 1];
        from[0] = true;
        for (Piece piece : pieces) {
            boolean[] to = new boolean[name.length() + 1];
            piece.step(name, from, to);
            from = to;
        }
        return from[name.length()];
    }

    @Override
    public String toString() {
        return text;
    }

    /** A piece of one part of a pattern. */
    sealed interface Piece {
        /**
         * Goes on from every place that has been reached.
         *
         * @param from places in the name, 0..length, reached so far
         * @param to those reached with this piece as well; set here
         */
        void step(String name, boolean[] from, boolean[] to);
    }

    /** {@code *}. */
    record Any() implements Piece {
        @Override
        public void step(String name, boolean[] from, boolean[] to) {
            boolean reached = false;
            for (int at = 0; at < from.length; at++) {
                reached |= from[at];
                to[at] = reached;
            }
        }
    }

    /**
     * {@code ?}, or a set in brackets, or its opposite.
     *
     * @param ranges first and last character of each range, one after the other
     */
    record OneOf(String ranges, boolean opposite) implements Piece {
        @Override
        public void step(String name, boolean[] from, boolean[] to) {
            for (int at = 0; at < name.length(); at++) {
                to[at + 1] = from[at] && holds(name.charAt(at)) != opposite;
            }
        }

        private boolean holds(char c) {
            for (int i = 0; i < ranges.length(); i += 2) {
                if (c >= ranges.charAt(i) && c <= ranges.charAt(i + 1)) {
                    return true;
                }
            }
            return false;
        }
    }

    /** Strings, one of which has to come: those in braces, or plain text. */
    record Strings(List<String> choices) implements Piece {
        @Override
        public void step(String name, boolean[] from, boolean[] to) {
            Arrays.fill(to, false);
            for (int at = 0; at < from.length; at++) {
                if (from[at]) {
                    for (String choice : choices) {
                        if (name.startsWith(choice, at)) {
                            to[at + choice.length()] = true;
                        }
                    }
                }
            }
        }
    }
}
