package handspan.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A screen in memory for windows that are measured; where there is none, they are drawn into memory themselves. */
final class VirtualScreen implements AutoCloseable {
    private final Process process;
    private final String name;

    private VirtualScreen(Process process, String name) {
        this.process = process;
        this.name = name;
    }

    /** Starts one on the first free number; empty where the machine has no such program. */
    static Optional<VirtualScreen> start() {
        try {
            Process process = new ProcessBuilder(
                            "Xvfb", "-displayfd", "1", "-screen", "0", "1400x1000x24", "-nolisten", "tcp")
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            BufferedReader said =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII));
            String number = said.readLine();
            if (number == null) {
                process.destroy();
                return Optional.empty();
            }
            return Optional.of(new VirtualScreen(process, ":" + number.strip()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** As {@code DISPLAY} has it. */
    String name() {
        return name;
    }

    @Override
    public void close() {
        process.destroy();
    }
}
