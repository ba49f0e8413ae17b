package handspan.outside.log;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A text file that grows line by line and begins anew when it is full; the two before it are kept. Several programs may
 * write at once: each line is one write at the end of the file, and only one program at a time begins anew.
 *
 * @param file the newest; older ones end in {@code .1} and {@code .2}
 * @param mostBytes when it is full
 */
public record RollingText(Path file, long mostBytes) {
    /** Files kept beside the newest. */
    private static final int KEPT = 2;

    /** Adds a line; opens and closes the file, so for the odd line only. Not for a path thread. */
    public void append(String line) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            Files.createDirectories(folder);
        }
        if (Files.exists(file) && Files.size(file) >= mostBytes) {
            roll();
        }
        String oneLine = line.replace('\r', ' ').replace('\n', ' ');
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            channel.write(ByteBuffer.wrap((oneLine + "\n").getBytes(StandardCharsets.UTF_8)));
        }
    }

    private Path older(int number) {
        return file.resolveSibling(file.getFileName() + "." + number);
    }

    private void roll() throws IOException {
        Path guard = file.resolveSibling(file.getFileName() + ".lock");
        try (FileChannel channel = FileChannel.open(guard, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            // whoever else rolls just now does it for all; and it may have been done since
            if (lock == null || !Files.exists(file) || Files.size(file) < mostBytes) {
                return;
            }
            for (int number = KEPT; number > 0; number--) {
                Path from = number == 1 ? file : older(number - 1);
                if (Files.exists(from)) {
                    Files.move(from, older(number), StandardCopyOption.REPLACE_EXISTING);
                }
            }
        } catch (OverlappingFileLockException e) {
            // another part of this program does it
            return;
        }
    }
}
