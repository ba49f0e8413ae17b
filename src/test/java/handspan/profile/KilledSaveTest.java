package handspan.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Programs killed while they save (SIGKILL, which no program can answer: POSIX.1-2017, signal concepts). A temporary
 * file that is left behind proves that the kill fell between its opening and its renaming.
 */
class KilledSaveTest {
    private static final String ROOM = "Copper Attic";
    private static final int AT_ONCE = 3;
    private static final int FEWEST_HITS = 20;
    private static final long MOST_WAIT_S = 30;

    @TempDir
    Path folder;

    @Test
    void aKilledSaveLeavesTheOldOrTheNewFile() throws Exception {
        kill(5);
    }

    @Test
    @Tag("deep")
    void twoHundredKilledSavesLeaveTheOldOrTheNewFile() throws Exception {
        int hits = kill(200);
        assertTrue(hits >= FEWEST_HITS, hits + " kills between open and rename");
    }

    /** How many of the kills fell between opening and renaming the room's own temporary file. */
    private int kill(int times) throws InterruptedException, ExecutionException {
        Random random = new Random(7);
        ExecutorService workers = Executors.newFixedThreadPool(AT_ONCE);
        try {
            List<Future<Boolean>> kills = new ArrayList<>();
            for (int i = 0; i < times; i++) {
                Path own = folder.resolve("rooms-" + i);
                // two saves take about 40 ms; every other kill is aimed at a temporary file that has been seen
                boolean aimed = i % 2 == 1;
                long micros = random.nextInt(aimed ? 500 : 40_000);
                kills.add(workers.submit(() -> isHit(own, micros, aimed)));
            }
            int hits = 0;
            for (Future<Boolean> kill : kills) {
                hits += kill.get() ? 1 : 0;
            }
            System.out.println(hits + " of " + times + " kills fell between open and rename");
            return hits;
        } finally {
            workers.shutdownNow();
        }
    }

    private static boolean isHit(Path own, long micros, boolean aimed)
            throws IOException, ProfileException, InterruptedException {
        Process child = SavingProgram.start(own, ROOM, 1, 10_000);
        ProfileFolder profiles = new ProfileFolder(own);
        Path second = own.resolve(".history").resolve(ROOM).resolve("000001.json");
        long deadline = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_WAIT_S);
        while (!Files.exists(second) && child.isAlive() && System.nanoTime() < deadline) {
            Thread.sleep(1);
        }
        while (aimed && !hasTemporary(own) && child.isAlive() && System.nanoTime() < deadline) {
            Thread.onSpinWait();
        }
        LockSupport.parkNanos(TimeUnit.MICROSECONDS.toNanos(micros));
        assertTrue(child.isAlive(), "it ended by itself");
        child.destroyForcibly();
        assertTrue(child.waitFor(MOST_WAIT_S, TimeUnit.SECONDS));

        int newest = profiles.versions(ROOM).get(0);
        RoomProfile left = profiles.load(ROOM);
        // numbers of versions and of saves agree: a version is kept just before its successor is saved
        assertTrue(
                left.equals(SavingProgram.version(ROOM, newest))
                        || left.equals(SavingProgram.version(ROOM, newest + 1)),
                "neither old nor new: " + left.tunings());
        for (int number : profiles.versions(ROOM)) {
            assertEquals(SavingProgram.version(ROOM, number), profiles.version(ROOM, number));
        }
        boolean hit = hasTemporary(own);
        // the next program finds nothing in its way
        profiles.save(SavingProgram.version(ROOM, 9_999));
        assertEquals(SavingProgram.version(ROOM, 9_999), profiles.load(ROOM));
        return hit;
    }

    private static boolean hasTemporary(Path own) throws IOException {
        try (Stream<Path> files = Files.list(own)) {
            return files.anyMatch(file -> file.toString().endsWith(".tmp"));
        }
    }
}
