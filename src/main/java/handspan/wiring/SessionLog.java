package handspan.wiring;

import handspan.live.session.Event;
import handspan.outside.log.RollingText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Map;

/**
 * What happened to instruments, in a small rolling text file of the user's own: links that came and went, what was
 * rejected, verdicts. Written by the thread of the verb, never by a path thread. A folder that can't be written costs a
 * word, nothing else.
 */
public final class SessionLog {
    private static final long MOST_BYTES = 256 * 1024;
    private static final String NAME = "handspan.log";

    private final RollingText text;
    private final String verb;

    /** Keys and the end of the program come from other threads. */
    private final Object lock = new Object();

    private String trouble = "";
    private boolean used;

    /**
     * A log of one run.
     *
     * @param folder made by the first line
     * @param verb what runs
     */
    public SessionLog(Path folder, String verb) {
        this.text = new RollingText(folder.resolve(NAME), MOST_BYTES);
        this.verb = verb;
    }

    /** The log of this user: a line says which of several programs wrote it. */
    public static SessionLog of(String verb) {
        return new SessionLog(folder(), verb);
    }

    private static Path folder() {
        String named = System.getProperty("handspan.state", "");
        return named.isEmpty()
                ? userFolder(System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."))
                : Path.of(named);
    }

    /**
     * The user's folder for such files by the custom of each system: on Linux {@code XDG_STATE_HOME} of the XDG Base
     * Directory Specification 0.8, which passes over paths that are not absolute.
     */
    static Path userFolder(Map<String, String> environment, String osName, String home) {
        String os = osName.toLowerCase(Locale.ROOT);
        String localAppData = environment.getOrDefault("LOCALAPPDATA", "");
        String stateHome = environment.getOrDefault("XDG_STATE_HOME", "");
        if (os.contains("windows") && !localAppData.isBlank()) {
            return Path.of(localAppData, "handspan");
        }
        if (os.contains("mac")) {
            return Path.of(home, "Library", "Logs", "handspan");
        }
        return stateHome.startsWith("/")
                ? Path.of(stateHome, "handspan")
                : Path.of(home, ".local", "state", "handspan");
    }

    /** Where it is. */
    public Path file() {
        return text.file();
    }

    /** Adds a line. */
    public void note(String words) {
        synchronized (lock) {
            used = true;
            if (!trouble.isEmpty()) {
                return;
            }
            Instant now = Instant.now().truncatedTo(ChronoUnit.MILLIS);
            try {
                text.append(now + " " + ProcessHandle.current().pid() + " " + verb + ": " + words);
            } catch (IOException | RuntimeException e) {
                trouble = "no log is kept: " + text.file() + " can't be written (" + e + ")";
            }
        }
    }

    /** The end of a run; nothing where nothing was written. */
    public void end(int exitCode) {
        synchronized (lock) {
            if (used) {
                note("ended with exit code " + exitCode);
            }
        }
    }

    /** Why no log is kept, in words; empty when it is. */
    public String trouble() {
        synchronized (lock) {
            return trouble;
        }
    }

    /** A rig whose doings are written down while a verb follows it. */
    public Rig following(Rig rig, String source) {
        note("opened " + source);
        return new LoggedRig(rig, this, source);
    }

    /** An event in a line; empty for what is not worth one. */
    static String words(Event event) {
        if (event.what() instanceof Event.Linked linked) {
            return "link " + linked.state().word() + (linked.reason().isEmpty() ? "" : ": " + linked.reason());
        } else if (event.what() instanceof Event.Learned learned) {
            return "learned " + learned.shape().words();
        } else if (event.what() instanceof Event.LightMute light) {
            return light.muted() ? "muted by light: " + light.reason() : "light is as usual again";
        } else if (event.what() instanceof Event.OpenTaken open) {
            return open.light().words();
        } else if (event.what() instanceof Event.Hint hint) {
            return "hint: " + hint.words();
        } else if (event.what() instanceof Event.LinkDoubt doubt) {
            return doubt.words();
        } else if (event.what() instanceof Event.Sensor sensor) {
            return sensor.trouble().isEmpty() ? "the sensors give readings again" : sensor.trouble();
        } else if (event.what() instanceof Event.BoardChanged changed) {
            return changed.words();
        } else if (event.what() instanceof Event.Ambiguous ambiguous) {
            return "asked: " + ambiguous.either().question();
        } else if (event.what() instanceof Event.Captured captured) {
            return "captured " + captured.step().id();
        } else if (event.what() instanceof Event.Refused refused) {
            return "refused: " + refused.reason();
        } else if (event.what() instanceof Event.Failed failed) {
            return "failed: " + failed.reason();
        } else if (event.what() instanceof Event.TuningRefused refused) {
            return "tuning '" + refused.tuning() + "' refused: " + refused.reason();
        }
        return "";
    }
}
