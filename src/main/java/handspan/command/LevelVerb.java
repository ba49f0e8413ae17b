package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import handspan.number.units.Figures;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Changes the level curve of a room. */
@Command(
        name = "level",
        description = "shows or changes the level curve of a room",
        footer = {
            "",
            "Caution: start with the monitors low. The ceiling protects ears; leave it where it is, and follow the venue's and"
                    + " local rules on loudness."
        })
final class LevelVerb extends Verb {
    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--floor", paramLabel = "DB", description = "level at the knee, -120..-20")
    @Nullable
    Double floorDb;

    @Option(names = "--ceiling", paramLabel = "DB", description = "highest level, never passed, at most 0")
    @Nullable
    Double ceilingDb;

    @Option(names = "--knee", paramLabel = "SHARE", description = "place of the floor, 0..0.5 of the zone")
    @Nullable
    Double knee01;

    @Option(names = "--rise", paramLabel = "DB_PER_MS", description = "how fast level may rise")
    @Nullable
    Double riseDbPerMs;

    @Option(names = "--loud", paramLabel = "END", description = "which end is loud: near or far")
    @Nullable
    String loud;

    @Option(
            names = "--on-leaving",
            paramLabel = "CHOICE",
            description = "when the hand leaves: fade, or hold the note until the next hand comes")
    @Nullable
    String onLeaving;

    @Option(names = "--fade-ms", paramLabel = "MS", description = "how long that fade takes, 5..2000")
    @Nullable
    Double fadeMs;

    @Override
    int run(Talk talk) throws UsageException, ProfileException {
        RoomProfile profile = room.load();
        LevelCurve before = profile.level();
        if (loud != null && !loud.equals("near") && !loud.equals("far")) {
            throw new UsageException("loud end '" + loud + "' (near, far)");
        }
        if (onLeaving != null && !onLeaving.equals("fade") && !onLeaving.equals("hold")) {
            throw new UsageException("on leaving '" + onLeaving + "' (fade, hold)");
        }
        LevelCurve after = UsageException.reading(() -> new LevelCurve(
                floorDb == null ? before.floorDb() : floorDb,
                ceilingDb == null ? before.ceilingDb() : ceilingDb,
                knee01 == null ? before.knee01() : knee01,
                loud == null ? before.loudFar() : loud.equals("far"),
                riseDbPerMs == null ? before.riseDbPerMs() : riseDbPerMs,
                new Leaving(
                        onLeaving == null ? before.leaving().holds() : onLeaving.equals("hold"),
                        fadeMs == null ? before.leaving().fadeMs() : fadeMs)));
        boolean changed = !after.equals(before);
        if (changed) {
            room.folder().save(profile.with(after));
        }
        ObjectNode result = Talk.node();
        result.put("room", room.room);
        result.put("saved", changed);
        result.put("floorDb", after.floorDb());
        result.put("ceilingDb", after.ceilingDb());
        result.put("knee01", after.knee01());
        result.put("loudEnd", after.loudFar() ? "far" : "near");
        result.put("riseDbPerMs", after.riseDbPerMs());
        result.put("onLeaving", after.leaving().word());
        result.put("fadeMs", after.leaving().fadeMs());
        talk.say("level from " + Figures.text(after.floorDb(), 0) + " dB to " + Figures.text(after.ceilingDb(), 0)
                + " dB, loud " + (after.loudFar() ? "far" : "near") + " (light: far is open), silent below "
                + Figures.percent(after.knee01()) + " of the zone, rising at most "
                + Figures.text(after.riseDbPerMs(), 2) + " dB/ms; when the hand leaves, the note "
                + (after.leaving().holds()
                        ? "is held until the next hand comes"
                        : "fades in " + Figures.text(after.leaving().fadeMs(), 0) + " ms"));
        talk.object(result);
        return Exit.DONE;
    }
}
