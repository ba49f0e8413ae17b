package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A recording that begins at a place, by the command line. */
class BeginTest {
    @TempDir
    Path folder;

    /** Ten seconds at 50 a second; from 6 s on there are 200 lines, the first of them of 6 s. */
    @Test
    void onlyWhatComesFromThereOnIsHeard() throws IOException {
        Path take = folder.resolve("ten.take");
        Files.writeString(
                take,
                IntStream.range(0, 500)
                        .mapToObj(i -> i * 20_000 + "\t" + (100 + i) + ",300")
                        .collect(Collectors.joining("\n", "# handspan-take/1\n", "\n")));
        Path copy = folder.resolve("copy.take");
        Cli cli = Cli.run("record", "take:" + take, "--begin", "6", "--out", copy.toString(), "--json");
        assertEquals(0, cli.exitCode(), cli.err());
        assertEquals(
                200, cli.objects().get(cli.objects().size() - 1).get("lines").asInt());
        List<String> lines = Files.readAllLines(copy).stream()
                .filter(line -> line.contains("\t") && !line.endsWith("\t"))
                .toList();
        assertEquals("0\t400,300", lines.get(0).replaceFirst("^\\d+", "0"));
        assertEquals(200, lines.size());
    }
}
