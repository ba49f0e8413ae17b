package handspan.profile;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;

/**
 * One program at a time changes a folder. The system lets go of the lock when a program ends, however it ends. The lock
 * is the system's lock of a file of this name, which stays: were it deleted, two programs could hold one each.
 *
 * <p>Where a system or a network folder has no locks, or lets nobody write the file, work goes on without: a single
 * file is whole in any case, only two saves at once could then lose one of their versions.
 */
final class FolderLock {
    private static final String NAME = ".lock";

    private static final long WAIT_MS = 10;
    private static final int MOST_WAITS = 500;

    private final @Nullable FileChannel channel;

    private FolderLock(@Nullable FileChannel channel) {
        this.channel = channel;
    }

    /** What is done while a folder is held. */
    interface Work<T> {
        /** Does it. */
        T done() throws ProfileException;
    }

    /**
     * Works while nobody else does.
     *
     * @param folder must exist
     */
    static <T> T during(Path folder, Work<T> work) throws ProfileException {
        FolderLock lock = of(folder);
        try {
            return work.done();
        } finally {
            lock.close();
        }
    }

    /**
     * Waits for a folder and takes it.
     *
     * @param folder must exist
     * @throws ProfileException when another program does not let go of it for five seconds
     */
    private static FolderLock of(Path folder) throws ProfileException {
        FileChannel channel;
        try {
            channel = FileChannel.open(folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException e) {
            return new FolderLock(null);
        }
        try {
            for (int waits = 0; waits < MOST_WAITS; waits++) {
                if (tried(channel)) {
                    return new FolderLock(channel);
                }
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(WAIT_MS));
            }
        } catch (IOException e) {
            return new FolderLock(channel);
        }
        closeQuietly(channel);
        throw new ProfileException(
                ProfileException.Kind.NOT_WRITABLE,
                "another program has been writing in " + folder + " for " + MOST_WAITS * WAIT_MS / 1000
                        + " s: nothing was saved",
                "end it, then save again",
                null);
    }

    private static boolean tried(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            // another part of this program holds it
            return false;
        }
    }

    private static boolean closeQuietly(FileChannel channel) {
        try {
            channel.close();
            return true;
        } catch (IOException e) {
            // nothing was written, and the lock has gone with the channel
            return false;
        }
    }

    private void close() {
        if (channel != null) {
            closeQuietly(channel);
        }
    }
}
