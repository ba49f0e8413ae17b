package handspan.music.send;

/** Where frames go, as written on the command line and in profiles. */
public sealed interface SendTarget permits NetworkTarget, MidiTarget {
    /** The written form, as {@link #parse} reads it. */
    String text();

    /**
     * Reads the written form.
     *
     * @param text a way over the network, see {@link NetworkTarget}, or {@code midi:DEVICE}
     * @throws IllegalArgumentException saying what is wrong
     */
    static SendTarget parse(String text) {
        int colon = text.indexOf(':');
        String way = colon < 0 ? text : text.substring(0, colon);
        if (colon >= 0 && way.equals(MidiTarget.WAY)) {
            return new MidiTarget(text.substring(colon + 1));
        }
        for (NetworkTarget.Protocol protocol : NetworkTarget.Protocol.values()) {
            if (colon >= 0 && way.equals(protocol.word())) {
                return NetworkTarget.parse(protocol, text);
            }
        }
        throw new IllegalArgumentException("target '" + text + "': '" + way + "' is not a way out ("
                + NetworkTarget.Protocol.words() + ", " + MidiTarget.WAY + "): write it like udp:127.0.0.1:9000");
    }
}
