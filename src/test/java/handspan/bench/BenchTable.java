package handspan.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A table of figures, printed and kept in {@code target/bench}: what was measured beside the figure to reach. */
final class BenchTable {
    private static final Path FOLDER = Path.of("target", "bench");

    private final String name;
    private final String title;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();
    private final double loadBefore = load();

    /**
     * A table.
     *
     * @param name of the file
     * @param title what is measured and how
     * @param columns heads; the first is for words, the others for figures
     */
    BenchTable(String name, String title, String... columns) {
        this.name = name;
        this.title = title;
        rows.add(List.of(columns));
    }

    /** A row, as many cells as columns. */
    BenchTable row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    /** A figure to reach. */
    BenchTable figure(String wanted, String measured, boolean reached) {
        lines.add((reached ? "reached:     " : "NOT reached: ") + wanted + ": " + measured);
        return this;
    }

    /** A line of words below. */
    BenchTable note(String words) {
        lines.add(words);
        return this;
    }

    /** Prints it and writes it to its file. */
    void publish() {
        String text = text();
        System.out.println("\n" + text);
        try {
            Files.createDirectories(FOLDER);
            Files.writeString(FOLDER.resolve(name + ".txt"), text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String text() {
        List<String> out = new ArrayList<>();
        out.add(title);
        int columns = rows.get(0).size();
        int[] width = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                width[i] = Math.max(width[i], row.get(i).length());
            }
        }
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < columns; i++) {
                String form = i == 0 ? "%-" + width[i] + "s" : "  %" + width[i] + "s";
                line.append(String.format(Locale.ROOT, form, row.get(i)));
            }
            out.add(line.toString());
        }
        out.addAll(lines);
        out.add(String.format(
                Locale.ROOT, "%s; load %.1f before, %.1f after (busy others disturb)", machine(), loadBefore, load()));
        return String.join("\n", out) + "\n";
    }

    private static String machine() {
        return System.getProperty("os.name") + ", "
                + Runtime.getRuntime().availableProcessors() + " cores (" + processor() + "), Java "
                + Runtime.version();
    }

    private static String processor() {
        try (var lines = Files.lines(Path.of("/proc/cpuinfo"))) {
            return lines.filter(line -> line.startsWith("model name"))
                    .map(line -> line.substring(line.indexOf(':') + 1).strip())
                    .findFirst()
                    .orElse(System.getProperty("os.arch"));
        } catch (IOException | UncheckedIOException e) {
            return System.getProperty("os.arch");
        }
    }

    private static double load() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    }

    /** A figure with a point, whatever the locale. */
    static String figure(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
