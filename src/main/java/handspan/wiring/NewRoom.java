package handspan.wiring;

import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.send.SendTarget;
import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.Adviser;
import handspan.room.budget.StartingTuning;
import handspan.room.calibrate.Outcome;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a freshly calibrated room starts with, or keeps from the room of the same name before it. */
public final class NewRoom {
    /** Where a fresh room sends: the sound patch on this machine. */
    public static final String USUAL_TARGET = "udp:127.0.0.1:9000";

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
    public NewRoom(ProfileFolder folder, String name, @Nullable List<String> targets) {
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
    public RoomProfile keep(Outcome outcome, @Nullable RoomProfile before) throws ProfileException {
        RoomProfile profile = made(outcome, before);
        keep(profile);
        return profile;
    }

    /** Keeps a room that was {@link #made}, and its instrument. */
    public void keep(RoomProfile profile) throws ProfileException {
        folder.save(profile);
        new InstrumentShelf(folder).keep(profile.room().instrument());
    }

    /** What {@link #keep} would keep. */
    public RoomProfile made(Outcome outcome, @Nullable RoomProfile before) throws ProfileException {
        Room room = outcome.room().orElseThrow();
        RoomProfile template = before == null && folder.has(name) ? folder.load(name) : before;
        Optional<Outcome.ByEar> byEar = outcome.byEar();
        RoomProfile profile;
        if (template != null) {
            profile = again(template, room);
        } else {
            // who says by ear where notes should be has chosen the range, and any note may be meant
            profile = byEar.isPresent() ? started(room, Tuning.usual()) : first(room);
        }
        if (byEar.isPresent()) {
            Outcome.ByEar heard = byEar.get();
            Tuning first = profile.tunings().get(0);
            profile = profile.with(first.with(new PitchRange(
                    heard.lowKey(),
                    heard.highKey(),
                    heard.highNear() ? Direction.HIGH_NEAR : Direction.HIGH_FAR,
                    heard.warp())));
        }
        return profile;
    }

    private RoomProfile again(RoomProfile before, Room room) {
        SendPlan send = targetsNamed ? before.send().to(targets) : before.send();
        return new RoomProfile(room, before.tunings(), before.level(), send);
    }

    /** A room with the tuning that the adviser chooses for it. */
    public RoomProfile first(Room room) {
        Tuning tuning =
                StartingTuning.by(Adviser.of(room, room.aim())).playable().tuning();
        return started(room, tuning);
    }

    private RoomProfile started(Room room, Tuning tuning) {
        return new RoomProfile(
                room,
                List.of(tuning),
                LevelCurve.USUAL,
                SendPlan.byDefault(room.instrument().name(), targets));
    }
}
