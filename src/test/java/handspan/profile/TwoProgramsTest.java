package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two that save into one folder at once: each save finds the one before it, so none is lost from the history. */
class TwoProgramsTest {
    private static final String ROOM = "Copper Attic";
    private static final int SAVES = 50;
    private static final long MOST_WAIT_S = 60;

    @TempDir
    Path parent;

    @Test
    void twoProgramsLoseNoVersion() throws Exception {
        Path folder = parent.resolve("rooms");
        Process one = SavingProgram.start(folder, ROOM, 1000, SAVES);
        Process other = SavingProgram.start(folder, ROOM, 2000, SAVES);
        for (Process program : List.of(one, other)) {
            assertTrue(program.waitFor(MOST_WAIT_S, TimeUnit.SECONDS));
            assertEquals(0, program.exitValue(), Files.readString(parent.resolve("rooms.log")));
        }
        requireNoneLost(folder);
    }

    @Test
    void twoThreadsLoseNoVersion() throws Exception {
        Path folder = parent.resolve("rooms");
        ExecutorService workers = Executors.newFixedThreadPool(2);
        try {
            List<Future<?>> saves = new ArrayList<>();
            for (int first : List.of(1000, 2000)) {
                saves.add(workers.submit(() -> {
                    SavingProgram.main(
                            new String[] {folder.toString(), ROOM, String.valueOf(first), String.valueOf(SAVES)});
                    return null;
                }));
            }
            for (Future<?> save : saves) {
                save.get(MOST_WAIT_S, TimeUnit.SECONDS);
            }
        } finally {
            workers.shutdownNow();
        }
        requireNoneLost(folder);
    }

    /** A hundred saves replaced 99 files; the newest twenty of these are kept. */
    private static void requireNoneLost(Path folder) throws Exception {
        ProfileFolder profiles = new ProfileFolder(folder);
        int replaced = 2 * SAVES - 1;
        List<Integer> numbers = profiles.versions(ROOM);
        assertEquals(
                IntStream.range(0, History.KEPT).mapToObj(i -> replaced - i).toList(), numbers);
        Set<Double> trims = new HashSet<>();
        trims.add(profiles.load(ROOM).tunings().get(0).trimCents());
        for (int number : numbers) {
            trims.add(profiles.version(ROOM, number).tunings().get(0).trimCents());
        }
        assertEquals(History.KEPT + 1, trims.size(), "a version is there twice: " + trims);
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(
                    List.of(),
                    files.filter(file -> file.toString().endsWith(".tmp")).toList());
        }
    }
}
