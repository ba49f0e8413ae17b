package handspan.profile;

import org.jspecify.annotations.Nullable;

/**
 * A room or instrument file that cannot be read or written. The message names the file, the key or line, the value with
 * what is allowed, and what to do.
 */
public final class ProfileException extends Exception {
    private static final long serialVersionUID = 1;

    /** What went wrong, for callers that must tell these apart. */
    public enum Kind {
        /** No room of that name is in the folder. */
        UNKNOWN_ROOM,
        /** The file is there, but is no readable profile: broken, of another format, or kept from us by the system. */
        DAMAGED,
        /** The folder or file cannot be written. */
        NOT_WRITABLE,
        /** The name cannot be a file's name everywhere, or would lead out of the folder. */
        BAD_NAME,
        /** The file, folder or version asked for is not there. */
        NOT_FOUND
    }

    private final Kind kind;
    private final String happened;
    private final String remedy;

    /**
     * A failure.
     *
     * @param kind for callers
     * @param message what happened: which value (what is allowed); what to do
     */
    public ProfileException(Kind kind, String message) {
        super(message);
        this.kind = kind;
        this.happened = message;
        this.remedy = "";
    }

    /**
     * A failure whose remedy may be added to.
     *
     * @param kind for callers
     * @param happened what happened, naming file and value
     * @param remedy what to do, for people
     * @param cause what it came from; null when there is nothing beneath
     */
    ProfileException(Kind kind, String happened, String remedy, @Nullable Throwable cause) {
        super(happened + "; " + remedy, cause);
        this.kind = kind;
        this.happened = happened;
        this.remedy = remedy;
    }

    /** What went wrong. */
    public Kind kind() {
        return kind;
    }

    /** The same failure with more to its remedy, before and after it. */
    ProfileException advising(String before, String after) {
        return new ProfileException(kind, happened, before + remedy + after, this);
    }
}
