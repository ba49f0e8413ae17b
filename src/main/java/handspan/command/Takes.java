package handspan.command;

import handspan.outside.take.TakeHeader;
import handspan.outside.take.TakeWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** New takes, headed with when and what. */
final class Takes {
    private Takes() {}

    static TakeWriter writer(Path file, SourceArguments source) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        TakeHeader header = new TakeHeader(now(), source.name(), source.source().text(), source.baud(), List.of());
        return new TakeWriter(Files.newOutputStream(file), header);
    }

    /** The moment as ISO 8601 text. */
    static String now() {
        return Instant.now().truncatedTo(ChronoUnit.SECONDS).toString();
    }
}
