package handspan.profile;

import handspan.music.level.LevelCurve;
import handspan.music.send.SendPlan;
import handspan.music.tuning.Tuning;
import handspan.room.Aim;
import handspan.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One room's file: what was measured, and what it should sound like.
 *
 * @param room what was measured, with a copy of the instrument
 * @param tunings at least one, told apart by name; the first is played unless another is named
 * @param level from place to gain
 * @param send what goes out, and where to
 */
public record RoomProfile(Room room, List<Tuning> tunings, LevelCurve level, SendPlan send) {
    /** Copies the tunings and checks their names. */
    public RoomProfile {
        tunings = List.copyOf(tunings);
        if (tunings.isEmpty()) {
            throw new IllegalArgumentException("a room without a tuning (at least one)");
        }
        if (tunings.stream().map(Tuning::name).distinct().count() < tunings.size()) {
            throw new IllegalArgumentException("two tunings of one name: rename one");
        }
    }

    /**
     * The tuning with a name.
     *
     * @throws IllegalArgumentException naming the tunings there are
     */
    public Tuning tuning(String name) {
        return tunings.stream()
                .filter(tuning -> tuning.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("tuning '" + name + "' is not in room '" + room.name()
                        + "': it has " + tunings.stream().map(Tuning::name).collect(Collectors.joining(", "))));
    }

    /** The same room with a tuning put in, in the place of one with the same name, else at the end. */
    public RoomProfile with(Tuning tuning) {
        List<Tuning> changed = new ArrayList<>(tunings);
        for (int i = 0; i < changed.size(); i++) {
            if (changed.get(i).name().equals(tuning.name())) {
                changed.set(i, tuning);
                return new RoomProfile(room, changed, level, send);
            }
        }
        changed.add(tuning);
        return new RoomProfile(room, changed, level, send);
    }

    /**
     * The same room without a tuning.
     *
     * @throws IllegalArgumentException when it has none of that name, or no other
     */
    public RoomProfile without(String name) {
        Tuning gone = tuning(name);
        if (tunings.size() == 1) {
            throw new IllegalArgumentException(
                    "tuning '" + name + "' is the only one of room '" + room.name() + "': add another first");
        }
        return new RoomProfile(
                room, tunings.stream().filter(tuning -> !tuning.equals(gone)).toList(), level, send);
    }

    /**
     * The same room with a tuning as its first.
     *
     * @throws IllegalArgumentException when it has none of that name
     */
    public RoomProfile startingWith(String name) {
        List<Tuning> ordered = new ArrayList<>(tunings);
        Tuning first = tuning(name);
        ordered.remove(first);
        ordered.add(0, first);
        return new RoomProfile(room, ordered, level, send);
    }

    /**
     * The same room with a tuning by another name.
     *
     * @throws IllegalArgumentException when it has none of that name, or another of the new one
     */
    public RoomProfile renaming(String name, String other) {
        Tuning before = tuning(name);
        return new RoomProfile(
                room,
                tunings.stream()
                        .map(tuning -> tuning.equals(before) ? tuning.named(other) : tuning)
                        .toList(),
                level,
                send);
    }

    /** The same room with another aim of its player. */
    public RoomProfile with(Aim aim) {
        return new RoomProfile(room.with(aim), tunings, level, send);
    }

    /** The same room with another level curve. */
    public RoomProfile with(LevelCurve curve) {
        return new RoomProfile(room, tunings, curve, send);
    }

    /** The same room sending otherwise. */
    public RoomProfile with(SendPlan plan) {
        return new RoomProfile(room, tunings, level, plan);
    }
}
