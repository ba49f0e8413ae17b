package handspan.command;

import handspan.live.path.PathSettings;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How it is played, for this time. */
final class PlayArguments {
    private static final double FEWEST_FRAMES = 100;
    private static final double MOST_FRAMES = 500;

    @Option(names = "--go", description = "sound from the start (otherwise muted until a key opens it)")
    boolean go;

    @Option(names = "--tuning", paramLabel = "NAME", description = "which tuning (default: the first)")
    @Nullable
    String tuningName;

    @Option(names = "--snap", paramLabel = "HOW", description = "free, pull, steps or onset, for this time")
    @Nullable
    String snap;

    @Option(names = "--seconds", paramLabel = "S", description = "stop after this long; counts as --go")
    @Nullable
    Double seconds;

    @Option(names = "--no-glide", description = "a message with each reading instead of 200 a second in between")
    boolean noGlide;

    @Option(
            names = "--frames",
            paramLabel = "N",
            description = "messages a second, 100..500 (default 200); not with --no-glide")
    @Nullable
    Double framesPerS;

    @Option(
            names = "--record",
            paramLabel = "FILE",
            description = "record what comes as a take; one that is there is moved first")
    @Nullable
    Path record;

    /** How the path runs. */
    PathSettings settings() throws UsageException {
        PathSettings settings = PathSettings.USUAL.muted(!go && seconds == null).gliding(!noGlide);
        Double frames = framesPerS;
        if (frames == null) {
            return settings;
        }
        if (noGlide) {
            throw new UsageException("--frames with --no-glide: without glide a message goes out with each reading");
        }
        if (!(frames >= FEWEST_FRAMES && frames <= MOST_FRAMES)) {
            throw new UsageException("--frames " + frames + " (100..500 messages a second)");
        }
        return settings.withFrames(frames);
    }

    /** The tuning that plays first. */
    Tuning chosen(RoomProfile profile) {
        return snapped(tuningName == null ? profile.tunings().get(0) : profile.tuning(tuningName));
    }

    /** All that can be gone through. */
    List<Tuning> tunings(RoomProfile profile) {
        return profile.tunings().stream().map(this::snapped).toList();
    }

    private Tuning snapped(Tuning tuning) {
        return snap == null ? tuning : tuning.withSnap(Snap.parse(snap));
    }

    /** Whether it has played for as long as it should. */
    boolean isOver(double playedSeconds) {
        return seconds != null && playedSeconds >= seconds;
    }
}
