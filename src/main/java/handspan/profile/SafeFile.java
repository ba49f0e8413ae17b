package handspan.profile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Whole files in and out. Writes so that at every moment, power cuts included, a file's name leads to the whole old or
 * the whole new bytes: a temporary file beside it, flushed to the disk, then moved over it in one go.
 */
final class SafeFile {
    private static final String TEMPORARY = ".tmp";

    private static final Pattern LEFT_OVER = Pattern.compile(".*\\.json\\.[0-9a-f-]{36}\\.tmp");

    /** Younger ones might be of a program that saves just now, in a folder that knows no locks. */
    private static final long LEFT_OVER_MS = 60_000;

    private SafeFile() {}

    /** A file's bytes; empty when no such file can be seen. */
    static Optional<byte[]> read(Path file) throws ProfileException {
        try {
            return Optional.of(Files.readAllBytes(file));
        } catch (IOException e) {
            if (!Files.exists(file)) {
                return Optional.empty();
            }
            throw new ProfileException(
                    ProfileException.Kind.DAMAGED, file + " cannot be read: " + reason(e), "allow reading it", e);
        }
    }

    /**
     * The bytes of a file that must be there.
     *
     * @param what it is, for the message
     */
    static byte[] needed(Path file, String what) throws ProfileException {
        return read(file)
                .orElseThrow(() -> new ProfileException(
                        ProfileException.Kind.NOT_FOUND, what + " " + file + " is not there", "check the name", null));
    }

    /** Refuses a write-protected file: a move would pass over the protection of the file it replaces. */
    static void requireWritable(Path file) throws ProfileException {
        if (Files.exists(file) && !Files.isWritable(file)) {
            throw notWritable(file, new AccessDeniedException(file.toString()));
        }
    }

    /** Writes a file; its folder is made where it is missing. */
    static void write(Path file, byte[] bytes) throws ProfileException {
        try {
            Path folder = folderOf(file);
            makeFolder(folder);
            // of a file that is a link the one it leads to is replaced, not the link
            replace(Files.exists(file) ? file.toRealPath() : folder.resolve(file.getFileName()), bytes);
        } catch (IOException e) {
            throw notWritable(file, e);
        }
    }

    /** Makes a folder where it is missing. */
    static void makeFolder(Path folder) throws IOException {
        // a folder that is a link is there already, but would not count as made
        if (!Files.isDirectory(folder)) {
            Files.createDirectories(folder);
        }
    }

    /** The folder that a file lies in. */
    static Path folderOf(Path file) {
        return file.toAbsolutePath().resolveSibling(".").normalize();
    }

    private static void replace(Path file, byte[] bytes) throws IOException {
        Path folder = file.resolveSibling(".").normalize();
        // a name of its own, so that two programs that save at once never write into one file
        Path temporary = folder.resolve(file.getFileName() + "." + UUID.randomUUID() + TEMPORARY);
        try {
            writeThrough(temporary, bytes);
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(temporary);
        }
        flushFolder(folder);
    }

    /**
     * Clears away what saves left behind that were ended in the middle: temporary files a minute older than a file that
     * has just been written.
     *
     * @param written a file, whose folder is looked through
     * @return whether it could; if not, the next time will
     */
    static boolean clearLeftOvers(Path written) {
        try (Stream<Path> files = Files.list(folderOf(written))) {
            long nowMs = Files.getLastModifiedTime(written).toMillis();
            List<Path> temporary = files.filter(file -> LEFT_OVER
                            .matcher(String.valueOf(file.getFileName()))
                            .matches())
                    .toList();
            for (Path file : temporary) {
                if (nowMs - Files.getLastModifiedTime(file).toMillis() > LEFT_OVER_MS) {
                    Files.deleteIfExists(file);
                }
            }
            return true;
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    private static void writeThrough(Path temporary, byte[] bytes) throws IOException {
        try (FileChannel channel =
                FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    /** Makes the new name durable, where the system lets a folder be opened; others see to it themselves. */
    private static boolean flushFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    static ProfileException notWritable(Path file, IOException e) {
        return new ProfileException(
                ProfileException.Kind.NOT_WRITABLE,
                file + " cannot be written: " + reason(e),
                "allow writing there, make room on the disk, or name another folder",
                e);
    }

    /** Why the system refused, in words. */
    static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access denied";
        }
        if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
            return "a file stands where a folder should be";
        }
        String words = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
        return words != null ? words : e.getClass().getSimpleName();
    }
}
