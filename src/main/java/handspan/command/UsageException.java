package handspan.command;

/** The command line asks for something that does not exist or does not fit together. */
final class UsageException extends Exception {
    UsageException(String message) {
        super(message);
    }

    /** Something that reads what a person has written. */
    interface Reader<T> {
        T read();
    }

    /** Reads what a person has written; what is wrong with it becomes a usage error. */
    static <T> T reading(Reader<T> reader) throws UsageException {
        try {
            return reader.read();
        } catch (IllegalArgumentException e) {
            throw new UsageException(String.valueOf(e.getMessage()));
        }
    }
}
