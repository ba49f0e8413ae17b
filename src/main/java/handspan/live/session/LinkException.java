package handspan.live.session;

/** A link can't be opened: why, in words with the remedy. */
public final class LinkException extends Exception {
    /** What is the matter. */
    public enum Kind {
        /** Nothing of that name is there. */
        MISSING,
        /** Somebody else has it open. */
        BUSY,
        /** It may not be opened by this user. */
        DENIED,
        /** It is there but is no serial port. */
        NOT_A_PORT,
        /** It can't be opened for a reason that the system does not tell. */
        REFUSED
    }

    private final Kind kind;

    /**
     * A refusal.
     *
     * @param kind what is the matter
     * @param message what, which, what to do
     */
    public LinkException(Kind kind, String message) {
        super(message);
        this.kind = kind;
    }

    /** What is the matter. */
    public Kind kind() {
        return kind;
    }
}
