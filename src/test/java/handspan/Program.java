package handspan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program as a process of its own, from the compiled classes, that can be sent signals. */
public final class Program implements AutoCloseable {
    private static final long PATIENCE_S = 20;
    private static final Path ENV = Path.of("/usr/bin/env");

    private final Process process;
    private final Path out;
    private final Path err;

    private Program(Process process, Path out, Path err) {
        this.process = process;
        this.out = out;
        this.err = err;
    }

    /** Starts it; its output goes to files in a folder. */
    public static Program start(Path folder, String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        if (Files.isExecutable(ENV) && System.getProperty("os.name", "").startsWith("Linux")) {
            // whoever runs the tests in the background may have SIGINT and SIGHUP ignored, and children inherit that
            command.addAll(List.of(ENV.toString(), "--default-signal=INT,TERM,HUP"));
        }
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xmx96m", "-cp"));
        command.add(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path", "")));
        command.add("handspan.command.Handspan");
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        return new Program(process, out, err);
    }

    /** Its number. */
    public long pid() {
        return process.pid();
    }

    /** What it has written to standard output so far. */
    public String out() {
        return text(out);
    }

    /** All that it has said so far. */
    public String words() {
        return text(out) + text(err);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Types a line. */
    public void type(String line) throws IOException {
        process.outputWriter().write(line + "\n");
        process.outputWriter().flush();
    }

    /**
     * Sends a signal.
     *
     * @param name such as {@code TERM}
     */
    public void signal(String name) throws IOException, InterruptedException {
        new ProcessBuilder("sh", "-c", "kill -" + name + " " + pid()).start().waitFor();
    }

    /** Waits for its end: the exit code. */
    public int await() throws InterruptedException {
        if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
            throw new IllegalStateException("does not end within " + PATIENCE_S + " s: " + words());
        }
        return process.exitValue();
    }

    /** Kills it where it still runs, and waits until it writes no more. */
    @Override
    public void close() {
        process.destroyForcibly();
        try {
            process.waitFor(PATIENCE_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
