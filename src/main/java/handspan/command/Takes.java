package handspan.command;

import handspan.wiring.Recording;
import handspan.wiring.Rigs;
import java.io.IOException;
import java.nio.file.Path;

/** New takes, headed with when and what. */
final class Takes {
    private Takes() {}

    static Recording into(Path file, SourceArguments source, Talk talk) throws IOException {
        return told(Recording.into(file, now(), source.name(), source.source(), source.baud()), talk);
    }

    /** Says where a take is that was there before. */
    static Recording told(Recording recording, Talk talk) {
        recording
                .setAside()
                .ifPresent(other -> talk.say(recording.file() + " was there already: that take is now " + other));
        return recording;
    }

    /** The moment as ISO 8601 text. */
    static String now() {
        return Rigs.dateAndTime();
    }
}
