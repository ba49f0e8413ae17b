package handspan.outside.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RollingTextTest {
    private static final int LINES = 1000;
    private static final int CHARACTERS = 40;
    private static final long MOST_WAIT_S = 60;

    @TempDir
    Path folder;

    /** What a program of its own does: file, full size, first number. */
    public static void main(String[] args) throws IOException {
        RollingText text = new RollingText(Path.of(args[0]), Long.parseLong(args[1]));
        int first = Integer.parseInt(args[2]);
        for (int i = first; i < first + LINES; i++) {
            text.append(line(i));
        }
    }

    private static String line(int number) {
        String text = String.valueOf(number);
        return text + ".".repeat(CHARACTERS - 1 - text.length());
    }

    @Test
    void aFullFileBeginsAnewAndTwoOldOnesAreKept() throws IOException {
        Path file = folder.resolve("new").resolve("x.log");
        RollingText text = new RollingText(file, 10L * CHARACTERS);
        for (int i = 100; i < 145; i++) {
            text.append(line(i));
        }
        assertEquals(5, Files.readAllLines(file).size());
        assertEquals(
                line(130), Files.readAllLines(folder.resolve("new/x.log.1")).get(0));
        assertEquals(
                line(120), Files.readAllLines(folder.resolve("new/x.log.2")).get(0));
        assertFalse(Files.exists(folder.resolve("new/x.log.3")));
    }

    @Test
    void aLineStaysOneLine() throws IOException {
        Path file = folder.resolve("x.log");
        new RollingText(file, 1000).append("one\r\ntwo");
        assertEquals(List.of("one  two"), Files.readAllLines(file));
    }

    @Test
    void aFolderThatCannotBeIsSaid() throws IOException {
        Files.writeString(folder.resolve("file"), "in the way");
        assertThrows(
                IOException.class, () -> new RollingText(folder.resolve("file").resolve("x.log"), 1000).append("x"));
    }

    /** Two thousand lines of forty bytes are 80 kB; full at 35 kB, the three files hold them all. */
    @Test
    void twoProgramsLoseNoLineAndTearNone() throws Exception {
        Path file = folder.resolve("x.log");
        List<Process> programs = new ArrayList<>();
        for (int first : List.of(1000, 5000)) {
            programs.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                            RollingTextTest.class.getName(),
                            file.toString(),
                            "35000",
                            String.valueOf(first))
                    .redirectErrorStream(true)
                    .redirectOutput(folder.resolve("words." + first).toFile())
                    .start());
        }
        for (Process program : programs) {
            assertTrue(program.waitFor(MOST_WAIT_S, TimeUnit.SECONDS));
            assertEquals(0, program.exitValue());
        }
        Set<String> lines = new HashSet<>();
        int count = 0;
        for (String name : List.of("x.log", "x.log.1", "x.log.2")) {
            // while one program begins anew the other writes on, so that on a busy machine two files may hold all
            Path part = folder.resolve(name);
            List<String> all = Files.exists(part) ? Files.readAllLines(part) : List.of();
            lines.addAll(all);
            count += all.size();
        }
        assertEquals(2 * LINES, count);
        for (int i = 0; i < LINES; i++) {
            assertTrue(lines.contains(line(1000 + i)) && lines.contains(line(5000 + i)), "line " + i);
        }
    }
}
