package handspan.profile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Earlier versions of one room's file, numbered upwards. A number is not used again while a later one is kept.
 *
 * @param folder where they lie; need not exist
 */
record History(Path folder) {
    /** Versions kept. */
    static final int KEPT = 20;

    private static final Pattern NAME = Pattern.compile("([0-9]{6}|[1-9][0-9]{6,8})\\.json");

    /** Numbers of the versions there are, the newest first; none when the folder cannot be listed. */
    List<Integer> numbers() {
        try {
            return listed();
        } catch (IOException e) {
            return List.of();
        }
    }

    private List<Integer> listed() throws IOException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> NAME.matcher(String.valueOf(file.getFileName())))
                    .filter(Matcher::matches)
                    .map(matcher -> Integer.valueOf(matcher.group(1)))
                    .sorted(Comparator.reverseOrder())
                    .toList();
        }
    }

    Path file(int number) {
        return folder.resolve(String.format(Locale.ROOT, "%06d.json", number));
    }

    /**
     * Keeps a version under the next number, dated as it was.
     *
     * @param version its bytes
     * @param from the file they were read from
     */
    void add(byte[] version, Path from) throws ProfileException {
        List<Integer> numbers;
        try {
            numbers = listed();
        } catch (IOException e) {
            throw SafeFile.notWritable(folder, e);
        }
        Path kept = file(numbers.isEmpty() ? 1 : numbers.get(0) + 1);
        SafeFile.write(kept, version);
        dateLike(from, kept);
    }

    /** A date is good to have; a system that keeps none keeps the version all the same. */
    private static boolean dateLike(Path from, Path kept) {
        try {
            Files.setLastModifiedTime(kept, Files.getLastModifiedTime(from));
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    /**
     * Keeps what can't be read beside the versions, where nothing will ever replace or drop it.
     *
     * @param damaged its bytes
     * @return where
     */
    Path setAside(byte[] damaged) throws ProfileException {
        Path aside;
        int number = 0;
        do {
            number++;
            aside = folder.resolve("set-aside-" + number + ".json");
        } while (Files.exists(aside, LinkOption.NOFOLLOW_LINKS));
        SafeFile.write(aside, damaged);
        return aside;
    }

    /** When a version was saved first; the beginning of 1970 where the system does not tell. */
    Instant savedAt(int number) {
        try {
            return Files.getLastModifiedTime(file(number)).toInstant();
        } catch (IOException e) {
            return Instant.EPOCH;
        }
    }

    /**
     * Drops all but the newest {@value #KEPT}.
     *
     * @return whether it could; if not, the next time will
     */
    boolean prune() {
        List<Integer> numbers = numbers();
        boolean done = true;
        for (int number : numbers.subList(Math.min(KEPT, numbers.size()), numbers.size())) {
            try {
                Files.deleteIfExists(file(number));
            } catch (IOException e) {
                done = false;
            }
        }
        return done;
    }
}
