package handspan.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** A JVM of its own for what is measured, so that its time, processor and heap are its own. */
final class Child implements AutoCloseable {
    private static final Path JAR = Path.of("target", "handspan.jar");
    private static final long PATIENCE_S = 10;

    private final Process process;
    private final Path words;

    private Child(List<String> command, Map<String, String> environment) throws IOException {
        words = Files.createTempFile("handspan-bench", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(words.toFile());
        builder.environment().putAll(environment);
        process = builder.start();
    }

    /** The packaged program, with nothing but its own defaults. */
    static Child program(String... arguments) throws IOException {
        if (!Files.isRegularFile(JAR)) {
            throw new IllegalStateException("no " + JAR + ": package it first, or run all with -Pbench verify");
        }
        List<String> all = new ArrayList<>(List.of("-jar", JAR.toString()));
        all.addAll(List.of(arguments));
        return java(all, Map.of());
    }

    /** The launcher of the application with its own runtime. */
    static Child image(Path launcher, String... arguments) throws IOException {
        List<String> all = new ArrayList<>(List.of(launcher.toString()));
        all.addAll(List.of(arguments));
        return new Child(all, Map.of());
    }

    private static Child java(List<String> arguments, Map<String, String> environment) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(arguments);
        return new Child(command, environment);
    }

    /** A class of this package. */
    static Child of(Class<?> main, String... arguments) throws IOException {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path", ""));
        List<String> all = new ArrayList<>(List.of("-cp", path));
        all.add(main.getName());
        all.addAll(List.of(arguments));
        return java(all, Map.of());
    }

    /** A class of the test tree on a screen; without one where there is none. */
    static Child onScreen(Optional<String> screen, Class<?> main, String... arguments) throws IOException {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path", ""));
        List<String> all = new ArrayList<>(List.of("-Djava.awt.headless=" + screen.isEmpty(), "-cp", path));
        all.add(main.getName());
        all.addAll(List.of(arguments));
        return java(all, screen.map(name -> Map.of("DISPLAY", name)).orElseGet(Map::of));
    }

    /** Processor time so far. */
    Duration processorTime() {
        return process.toHandle().info().totalCpuDuration().orElse(Duration.ZERO);
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** What it said on standard error. */
    String words() throws IOException {
        return Files.readString(words);
    }

    /** Ends it as a person would, by SIGTERM. */
    @Override
    public void close() throws IOException {
        process.destroy();
        try {
            if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Files.deleteIfExists(words);
    }
}
