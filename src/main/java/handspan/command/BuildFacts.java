package handspan.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/**
 * Which build this is.
 *
 * @param version of the program
 * @param commit what it was built from, abbreviated; empty where the history was not at hand
 * @param committed day of that, like 2026-11-26; empty likewise
 * @param changed whether files differed from it
 */
record BuildFacts(String version, String commit, String committed, boolean changed) {
    private static final String RESOURCE = "/handspan/build.properties";

    /** What the build wrote down. */
    static BuildFacts ofThisBuild() {
        try (InputStream in = BuildFacts.class.getResourceAsStream(RESOURCE)) {
            Properties properties = new Properties();
            if (in != null) {
                properties.load(in);
            }
            return of(properties);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static BuildFacts of(Properties properties) {
        return new BuildFacts(
                properties.getProperty("git.build.version", "of an unknown version"),
                properties.getProperty("git.commit.id.abbrev", ""),
                properties.getProperty("git.commit.time", ""),
                Boolean.parseBoolean(properties.getProperty("git.dirty")));
    }

    /** In words, with the Java that runs it: what to send along with a report of a fault. */
    String words() {
        StringBuilder words = new StringBuilder("handspan ").append(version);
        if (!commit.isEmpty()) {
            words.append(", build ").append(commit).append(" of ").append(committed);
            if (changed) {
                words.append(" with changes");
            }
        }
        return words.append(", Java ")
                .append(System.getProperty("java.version"))
                .append(" on ")
                .append(System.getProperty("os.name"))
                .append(' ')
                .append(System.getProperty("os.arch"))
                .toString();
    }
}
