package handspan.command;

import handspan.live.path.PathSettings;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.VibratoBudget;
import handspan.wiring.InstrumentShelf;
import handspan.wiring.Seat;
import handspan.wiring.SharedAddress;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Who sits where, when several rooms are played: what is asked of all goes to each. */
final class EnsembleSeats {
    private final PlayVerb verb;

    EnsembleSeats(PlayVerb verb) {
        this.verb = verb;
    }

    /**
     * A seat for each room, in their order.
     *
     * @throws UsageException where they could not be told apart
     */
    List<Seat> all(Talk talk) throws UsageException, ProfileException {
        List<RoomProfile> kept = verb.room.all();
        if (!verb.names.isEmpty() && verb.names.size() != kept.size()) {
            throw new UsageException(verb.names.size() + " times --as for " + kept.size()
                    + " rooms (one name for each room, in their order)");
        }
        List<RoomProfile> tonight = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            tonight.add(tonight(talk, kept.get(i), i));
        }
        refuseUnknownTuning(tonight);
        PathSettings settings = verb.how.settings();
        List<Seat> seats = new ArrayList<>();
        for (int i = 0; i < tonight.size(); i++) {
            seats.add(seat(talk, i + 1, name(tonight, i), tonight.get(i), settings));
        }
        Optional<SharedAddress> shared = SharedAddress.among(seats);
        if (shared.isPresent()) {
            throw new UsageException(shared.get().words());
        }
        return seats;
    }

    private RoomProfile tonight(Talk talk, RoomProfile kept, int index) throws UsageException, ProfileException {
        Room room = kept.room().in(verb.source.air(kept.room().air()));
        new InstrumentShelf(verb.room.folder()).rebuiltSince(room).ifPresent(talk::warn);
        RoomProfile sending = verb.outs.in(new RoomProfile(room, kept.tunings(), kept.level(), kept.send()));
        return verb.names.isEmpty()
                ? sending
                : sending.with(sending.send().renamed(room.instrument().name(), verb.names.get(index)));
    }

    /** What an instrument is called here: its own name, numbered where others have the same. */
    private String name(List<RoomProfile> rooms, int index) {
        List<String> own = verb.names.isEmpty()
                ? rooms.stream().map(room -> room.room().instrument().name()).toList()
                : verb.names;
        String name = own.get(index);
        return Collections.frequency(own, name) == 1 ? name : name + " " + (index + 1);
    }

    private void refuseUnknownTuning(List<RoomProfile> rooms) throws UsageException {
        String wanted = verb.how.tuningName;
        if (wanted != null && rooms.stream().noneMatch(room -> has(room, wanted))) {
            throw new UsageException("tuning '" + wanted + "' is in none of these rooms: 'handspan tune --room "
                    + rooms.get(0).room().name() + "' shows what one has");
        }
    }

    private Seat seat(Talk talk, int number, String name, RoomProfile profile, PathSettings settings)
            throws UsageException {
        List<Tuning> tunings = UsageException.reading(() -> verb.how.tunings(profile));
        String wanted = verb.how.tuningName;
        Tuning tuning = tunings.get(0);
        if (wanted != null && has(profile, wanted)) {
            tuning = UsageException.reading(() -> verb.how.chosen(profile));
        } else if (wanted != null) {
            talk.about(name).say("has no tuning '" + wanted + "': plays '" + tuning.name() + "'");
        }
        VibratoBudget vibrato = VibratoBudget.of(profile.room(), tuning);
        if (vibrato.isLost()) {
            talk.about(name).say(vibrato.words());
        }
        return new Seat(number, name, profile, tunings, tuning, settings);
    }

    private static boolean has(RoomProfile profile, String tuning) {
        return profile.tunings().stream().anyMatch(kept -> kept.name().equals(tuning));
    }
}
