package handspan.command;

import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.tuning.Direction;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.calibrate.Outcome;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a freshly calibrated room starts with, or keeps from the room of the same name before it. */
final class NewRoom {
    private static final String USUAL_TARGET = "udp:127.0.0.1:9000";

    /** Two octaves need this much travel to stay at about 6 cents a mm; shorter zones start with one, mm. */
    private static final double TWO_OCTAVES_MM = 280;

    private final ProfileFolder folder;
    private final String name;
    private final List<SendTarget> targets;
    private final boolean targetsNamed;

    /**
     * A room to be kept.
     *
     * @param folder where
     * @param name as what
     * @param targets as written on the command line; null for the usual one
     * @throws IllegalArgumentException when a target is none
     */
    NewRoom(ProfileFolder folder, String name, @Nullable List<String> targets) {
        this.folder = folder;
        this.name = name;
        this.targetsNamed = targets != null;
        this.targets = (targets == null ? List.of(USUAL_TARGET) : targets)
                .stream().map(SendTarget::parse).toList();
    }

    /**
     * Keeps a new room.
     *
     * @param outcome that has a room
     * @param before a room whose tunings, level and sends it takes over; null for those of its own name, if there are
     *     any
     */
    RoomProfile keep(Outcome outcome, @Nullable RoomProfile before) throws ProfileException {
        Room room = outcome.room().orElseThrow();
        RoomProfile template = before == null && folder.has(name) ? folder.load(name) : before;
        RoomProfile profile = template == null ? first(room) : again(template, room);
        Optional<Outcome.ByEar> byEar = outcome.byEar();
        if (byEar.isPresent()) {
            Outcome.ByEar heard = byEar.get();
            Tuning first = profile.tunings().get(0);
            profile = profile.with(new Tuning(
                    first.name(),
                    first.reference(),
                    first.scale(),
                    first.tonic(),
                    heard.lowKey(),
                    heard.highKey(),
                    heard.highNear() ? Direction.HIGH_NEAR : Direction.HIGH_FAR,
                    first.snap(),
                    first.transpose(),
                    first.trimCents(),
                    heard.warp()));
        }
        folder.save(profile);
        new InstrumentShelf(folder).keep(room.instrument());
        return profile;
    }

    private RoomProfile again(RoomProfile before, Room room) {
        SendPlan send = targetsNamed ? before.send().to(targets) : before.send();
        return new RoomProfile(room, before.tunings(), before.level(), send);
    }

    RoomProfile first(Room room) {
        Tuning usual = Tuning.usual();
        boolean shortZone = room.pitch().zone().lengthMm() < TWO_OCTAVES_MM;
        Tuning tuning = shortZone ? usual.withRange(usual.lowKey(), usual.lowKey() + 12) : usual;
        return new RoomProfile(
                room,
                List.of(tuning),
                LevelCurve.USUAL,
                SendPlan.byDefault(room.instrument().name(), targets));
    }
}
