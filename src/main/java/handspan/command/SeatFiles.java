package handspan.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The files of one of several instruments, each in the folder that stands where one instrument names its file. */
final class SeatFiles {
    private final int number;
    private final String name;

    /**
     * The files of a seat.
     *
     * @param number of the seat, so that no two files have one name
     * @param name of the instrument
     */
    SeatFiles(int number, String name) {
        this.number = number;
        this.name = name;
    }

    /**
     * Its file in a folder, which is made where it is missing.
     *
     * @param folder null where none is wanted
     * @param option that names the folder
     * @param suffix of the file
     */
    @Nullable
    Path in(@Nullable Path folder, String option, String suffix) throws UsageException, IOException {
        if (folder == null) {
            return null;
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new UsageException(option + " " + folder
                    + " is a file: with several rooms name a folder, and each instrument gets a file of its own in it");
        }
        Files.createDirectories(folder);
        // only what every file system takes
        return folder.resolve(number + "-" + name.replaceAll("[^A-Za-z0-9_-]", "_") + suffix);
    }
}
