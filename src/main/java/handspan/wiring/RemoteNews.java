package handspan.wiring;

/**
 * Something that came to the remote control.
 *
 * @param fate what became of it
 * @param what it was, or what was wrong with it, in words
 * @param from address and port of its sender
 * @param more how many of the same fate have come since the last that was told
 */
public record RemoteNews(Fate fate, String what, String from, long more) {
    /** What becomes of packets and messages. */
    public enum Fate {
        /** Done. */
        OBEYED("obeyed"),
        /** A question, answered to its sender. */
        ANSWERED("answered"),
        /** An argument of the wrong kind, or a setting that can't be. */
        REFUSED("refused"),
        /** An address that means nothing here. */
        UNKNOWN("unknown"),
        /** A packet that breaks the rules of Open Sound Control; nothing of it is obeyed. */
        MALFORMED("malformed"),
        /** A packet that is longer than any order is. */
        TOO_LONG("tooLong"),
        /** More than is allowed in so short a time. */
        TOO_FAST("tooFast");

        private final String word;

        Fate(String word) {
            this.word = word;
        }

        /** Its name in JSON. */
        public String word() {
            return word;
        }
    }
}
