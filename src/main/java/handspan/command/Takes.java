package handspan.command;

import handspan.wiring.Recording;
import handspan.wiring.Rigs;
import java.io.IOException;
import java.nio.file.Path;

/** New takes, headed with when and what. */
final class Takes {
    private Takes() {}

    static Recording into(Path file, SourceArguments source) throws IOException {
        return Recording.into(file, now(), source.name(), source.source(), source.baud());
    }

    /** The moment as ISO 8601 text. */
    static String now() {
        return Rigs.dateAndTime();
    }
}
