package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class BuildFactsTest {
    private static BuildFacts of(String text) throws IOException {
        Properties properties = new Properties();
        properties.load(new StringReader(text));
        return BuildFacts.of(properties);
    }

    @Test
    void aBuildTellsItsVersionCommitAndDay() throws IOException {
        String words =
                of("git.build.version=1.2.0\ngit.commit.id.abbrev=abc1234\ngit.commit.time=2026-03-01\ngit.dirty=false")
                        .words();
        assertTrue(words.startsWith("handspan 1.2.0, build abc1234 of 2026-03-01, Java "), words);
        assertTrue(words.contains(System.getProperty("java.version")), words);
    }

    @Test
    void aBuildOfChangedFilesSaysSo() throws IOException {
        String words =
                of("git.build.version=1.2.0\ngit.commit.id.abbrev=abc1234\ngit.commit.time=2026-03-01\ngit.dirty=true")
                        .words();
        assertTrue(words.contains("build abc1234 of 2026-03-01 with changes, Java "), words);
    }

    @Test
    void aBuildWithoutHistoryTellsItsVersionAlone() throws IOException {
        String words = of("git.build.version=1.2.0\n").words();
        assertTrue(words.startsWith("handspan 1.2.0, Java "), words);
    }

    @Test
    void theVersionOptionAsksThisBuild() throws IOException {
        Cli cli = Cli.run("--version");
        assertEquals(0, cli.exitCode(), cli.err());
        assertEquals(BuildFacts.ofThisBuild().words(), cli.out().strip());
        assertTrue(BuildFacts.ofThisBuild().version().matches("\\d+\\.\\d+\\.\\d+.*"), cli.out());
    }
}
