package handspan.outside.serial;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A process that has a port open, as far as the system tells: only Linux does, and only of processes of the same user.
 *
 * @param pid its number
 * @param program its name
 * @param isHandspan whether it is another copy of this program
 */
record PortHolder(long pid, String program, boolean isHandspan) {
    private static final Path PROCESSES = Path.of("/proc");
    private static final String MAIN_CLASS = "handspan.command.Handspan";

    /** The process in words. */
    String words() {
        return (isHandspan ? "a second handspan" : "'" + program + "'") + " (process " + pid + ")";
    }

    /**
     * Who else has a port open.
     *
     * @param port its path, links resolved or not
     */
    static List<PortHolder> othersOf(Path port) {
        List<PortHolder> holders = new ArrayList<>();
        try (DirectoryStream<Path> processes = Files.newDirectoryStream(PROCESSES, "[0-9]*")) {
            Path device = port.toRealPath();
            long own = ProcessHandle.current().pid();
            for (Path process : processes) {
                long pid = Long.parseLong(String.valueOf(process.getFileName()));
                if (pid != own && holds(process.resolve("fd"), device)) {
                    holders.add(of(process, pid));
                }
            }
        } catch (IOException | SecurityException | NumberFormatException e) {
            // a system that does not tell
            return List.copyOf(holders);
        }
        return List.copyOf(holders);
    }

    private static boolean holds(Path descriptors, Path device) {
        try (DirectoryStream<Path> open = Files.newDirectoryStream(descriptors)) {
            for (Path descriptor : open) {
                if (isLinkTo(descriptor, device)) {
                    return true;
                }
            }
        } catch (IOException | java.nio.file.DirectoryIteratorException e) {
            // another user's, or ended meanwhile
            return false;
        }
        return false;
    }

    private static boolean isLinkTo(Path descriptor, Path device) {
        try {
            return Files.readSymbolicLink(descriptor).equals(device);
        } catch (IOException e) {
            // closed meanwhile
            return false;
        }
    }

    private static PortHolder of(Path process, long pid) {
        String[] words = text(process.resolve("cmdline")).split("\0", -1);
        return new PortHolder(pid, text(process.resolve("comm")).strip(), isHandspan(List.of(words)));
    }

    /** Whether a command line is one of this program: its main class, its jar, its start script. */
    static boolean isHandspan(List<String> commandLine) {
        for (String word : commandLine) {
            String last = word.substring(word.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
            if (word.equals(MAIN_CLASS)
                    || last.equals("handspan")
                    || (last.startsWith("handspan") && last.endsWith(".jar") && !word.contains(":"))) {
                return true;
            }
        }
        return false;
    }

    private static String text(Path file) {
        try {
            return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return "";
        }
    }
}
