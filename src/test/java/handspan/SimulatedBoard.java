package handspan;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The board program on a simulated microcontroller, a process of its own behind a pseudo-terminal, with its scripted
 * hand ({@code src/test/firmware}; {@code .ci/firmware} builds it).
 */
public final class SimulatedBoard implements AutoCloseable {
    private static final long PATIENCE_S = 10;

    private final Process process;
    private final Path port;
    private final Path log;
    private final Path words;

    /**
     * What the module measured with one ping.
     *
     * @param sentMs when it went out, in the board's own milliseconds
     * @param distanceMm what the echo came back from; 0 for nothing
     * @param echoUs how long the echo line was high
     */
    public record Ping(double sentMs, double distanceMm, double echoUs) {}

    private SimulatedBoard(Process process, Path port, Path log, Path words) {
        this.process = process;
        this.port = port;
        this.log = log;
        this.words = words;
    }

    /**
     * Gives it power.
     *
     * @param built folder of the built programs
     * @param folder for its port and what it writes
     */
    public static SimulatedBoard start(Path built, Path folder) throws IOException {
        Path port = folder.resolve("board");
        Path log = folder.resolve("pings.txt");
        Path words = folder.resolve("board.txt");
        Process process = new ProcessBuilder(
                        built.resolve("board_port").toString(),
                        built.resolve("board.elf").toString(),
                        port.toString(),
                        log.toString())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(words.toFile())
                .start();
        SimulatedBoard board = new SimulatedBoard(process, port, log, words);
        Waits.until(() -> Files.exists(port) || !process.isAlive(), board::words);
        return board;
    }

    /** The port's name. */
    public String port() {
        return port.toString();
    }

    /** Gives the scripted hand an order; {@code hand.h} lists them. */
    public void order(String order) {
        try {
            process.outputWriter().write(order + "\n");
            process.outputWriter().flush();
        } catch (IOException e) {
            throw new UncheckedIOException(words(), e);
        }
    }

    /** The pings since the board last started anew. */
    public List<Ping> pings() throws IOException {
        List<Ping> pings = new ArrayList<>();
        String text = Files.readString(log);
        // the last line may be half written
        for (String line : text.substring(0, text.lastIndexOf('\n') + 1).lines().toList()) {
            String[] fields = line.split("\t", -1);
            Ping ping = new Ping(
                    Double.parseDouble(fields[1]), Double.parseDouble(fields[2]), Double.parseDouble(fields[3]));
            if (!pings.isEmpty() && ping.sentMs() < pings.get(pings.size() - 1).sentMs()) {
                pings.clear();
            }
            pings.add(ping);
        }
        return pings;
    }

    /** What it has said of itself. */
    public String words() {
        try {
            return Files.readString(words);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Takes its power away. */
    @Override
    public void close() {
        try {
            process.outputWriter().close();
            if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (IOException e) {
            process.destroyForcibly();
        } catch (InterruptedException e) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
