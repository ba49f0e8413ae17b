package handspan.outside.take;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * A file that cannot be read as a take or a log. The message is for the user: which file and line, what, what to do.
 */
public final class TakeException extends IOException {
    private static final long serialVersionUID = 1L;

    TakeException(String message) {
        super(message);
    }

    private TakeException(String message, Throwable cause) {
        super(message, cause);
    }

    /** A file that could not be opened, with the remedy that fits the cause. */
    static TakeException opening(Path file, IOException cause) {
        if (cause instanceof NoSuchFileException) {
            Path folder = file.toAbsolutePath().getParent();
            boolean folderThere = folder != null && Files.isDirectory(folder);
            return new TakeException(
                    file + " does not exist"
                            + (folderThere
                                    ? ": check the file's name"
                                    : ", nor does its folder: check the folder's name"),
                    cause);
        }
        if (cause instanceof AccessDeniedException) {
            return new TakeException(
                    file + " may not be read by this user: change its permissions or copy it to a folder of your own",
                    cause);
        }
        return new TakeException(file + " cannot be opened (" + cause.getMessage() + "): check the disk", cause);
    }

    /** Reading stopped in the middle of a file. */
    static TakeException reading(Path file, long lineNumber, IOException cause) {
        return new TakeException(
                file + ", after line " + lineNumber + ": reading failed (" + cause.getMessage()
                        + "): check the disk or the cable to it, or copy the file and try again",
                cause);
    }
}
