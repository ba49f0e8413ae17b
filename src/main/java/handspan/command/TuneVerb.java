package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.Direction;
import handspan.music.tuning.NoteName;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Changes a tuning of a room, or adds one. */
@Command(name = "tune", description = "shows, changes or adds a tuning of a room")
final class TuneVerb extends Verb {
    /** One end then carries e, 2.7 times, the cents of the other in a millimetre. */
    private static final double USUAL_WARP = 1;

    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "which tuning (default: the first); a new name adds one")
    @Nullable
    String name;

    @Option(names = "--scale", paramLabel = "SCALE", description = "one of 'handspan scales'")
    @Nullable
    String scale;

    @Option(names = "--key", paramLabel = "NOTE", description = "tonic of the scale, for example D or Bb")
    @Nullable
    String key;

    @Option(names = "--low", paramLabel = "NOTE", description = "lowest note, for example A3")
    @Nullable
    String low;

    @Option(names = "--high", paramLabel = "NOTE", description = "highest note, for example A5")
    @Nullable
    String high;

    @Option(names = "--snap", paramLabel = "HOW", description = "free or steps")
    @Nullable
    String snap;

    @Option(names = "--direction", paramLabel = "WAY", description = "high-far or high-near")
    @Nullable
    String direction;

    @Option(names = "--transpose", paramLabel = "SEMITONES", description = "-48..48")
    @Nullable
    Integer transpose;

    @Option(names = "--trim", paramLabel = "CENTS", description = "-100..100")
    @Nullable
    Double trimCents;

    @Option(
            names = "--curve",
            paramLabel = "HOW",
            description = "even, finer-near, finer-far, or a number from -3 (finer far) to 3 (finer near)")
    @Nullable
    String curve;

    @Option(names = "--a4", paramLabel = "HZ", description = "reference pitch, 415..466")
    @Nullable
    Double a4Hz;

    @Override
    int run(Talk talk) throws UsageException, ProfileException {
        RoomProfile profile = room.load();
        String wanted = name == null ? profile.tunings().get(0).name() : name;
        boolean there =
                profile.tunings().stream().anyMatch(tuning -> tuning.name().equals(wanted));
        Tuning before = there ? profile.tuning(wanted) : profile.tunings().get(0);
        Tuning after = UsageException.reading(() -> changed(before, wanted));
        UsageException.reading(after::ladder);
        RoomProfile changed = profile.with(after);
        if (!changed.equals(profile)) {
            room.folder().save(changed);
        }
        ObjectNode result = Talk.node();
        result.put("room", room.room);
        result.put("saved", !changed.equals(profile));
        result.set("tuning", RoomSummary.tuning(after, profile.room().pitch().zone()));
        RoomSummary.lines(new RoomProfile(profile.room(), List.of(after), profile.level(), profile.send())).stream()
                .filter(line -> line.startsWith("tuning") || line.startsWith("feel"))
                .forEach(talk::say);
        talk.object(result);
        return Exit.DONE;
    }

    private Tuning changed(Tuning before, String wanted) {
        return new Tuning(
                wanted,
                a4Hz == null ? before.reference() : new ReferencePitch(a4Hz),
                scale == null ? before.scale() : Scales.named(scale),
                key == null ? before.tonic() : NoteName.parsePitchClass(key),
                low == null ? before.lowKey() : NoteName.parse(low),
                high == null ? before.highKey() : NoteName.parse(high),
                direction == null ? before.direction() : Direction.parse(direction),
                snap == null ? before.snap() : Snap.parse(snap),
                transpose == null ? before.transpose() : transpose,
                trimCents == null ? before.trimCents() : trimCents,
                curve == null ? before.warp() : warp(curve));
    }

    private static double warp(String text) {
        return switch (text) {
            case "even" -> 0;
            case "finer-near" -> USUAL_WARP;
            case "finer-far" -> -USUAL_WARP;
            default -> {
                try {
                    yield Double.parseDouble(text);
                } catch (NumberFormatException e) {
                    throw new IllegalArgumentException(
                            "curve '" + text + "' (even, finer-near, finer-far, or -3..3)", e);
                }
            }
        };
    }
}
