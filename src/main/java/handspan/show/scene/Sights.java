package handspan.show.scene;

import handspan.instrument.line.LineShape;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.ActivityView;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.calibrate.Step;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.HoldTask;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which charts that move there are tonight. */
final class Sights {
    private Sights() {}

    /** What all of them are told, whatever page is looked at. */
    static Screen.Live live(EveningView evening) {
        List<Sight> sights = new ArrayList<>(readings(evening).values());
        sights.addAll(noises(evening).values());
        evening.keeping().profile().ifPresent(profile -> {
            sights.addAll(responses(profile.room()).values());
            evening.keeping().edited().ifPresent(tuning -> {
                sights.add(ladder(profile, tuning));
                sights.add(feel(profile, tuning));
            });
            sights.add(new Sight.Level(profile));
            sights.add(sent(profile));
        });
        return new Screen.Live(evening.snapshot(), sights);
    }

    private static List<HandRole> roles(Instrument instrument) {
        return instrument.level() == null ? List.of(HandRole.PITCH) : List.of(HandRole.PITCH, HandRole.LEVEL);
    }

    /** Readings by what they are called: the hands where they are known, else every number that lives. */
    static Map<String, Sight> readings(EveningView evening) {
        Map<String, Sight> sights = new LinkedHashMap<>();
        Optional<Instrument> known = evening.arrival().instrument();
        if (evening.snapshot().isEmpty()) {
            return sights;
        }
        if (known.isPresent()) {
            Optional<Room> room = evening.keeping()
                    .profile()
                    .map(RoomProfile::room)
                    .filter(kept ->
                            kept.instrument().channels().equals(known.get().channels()));
            for (HandRole role : roles(known.get())) {
                sights.put(
                        hand(role),
                        room.<Sight>map(kept -> new Sight.HandInRoom(kept, role))
                                .orElseGet(() -> new Sight.Hand(known.get(), role)));
            }
        } else if (evening.snapshot().get().activity() instanceof ActivityView.Watching watching) {
            for (int i = 0;
                    i < Math.min(watching.names().size(), watching.guesses().size());
                    i++) {
                if (watching.guesses().get(i).nature() == LineShape.Nature.LIVE) {
                    String channel = watching.names().get(i);
                    sights.put("number " + channel, new Sight.Slot(channel));
                }
            }
        }
        return sights;
    }

    /** Responses of a room's hands by what they are called. */
    static Map<String, Sight> responses(Room room) {
        Map<String, Sight> sights = new LinkedHashMap<>();
        sights.put("response, " + hand(HandRole.PITCH), new Sight.Response(room, HandRole.PITCH));
        if (room.level() != null) {
            sights.put("response, " + hand(HandRole.LEVEL), new Sight.Response(room, HandRole.LEVEL));
        }
        return sights;
    }

    /** Puts the readings of a hand on a page. */
    static void readings(List<Block> blocks, EveningView evening, Showing showing) {
        chosen(blocks, readings(evening), showing);
    }

    /** Puts on a page what holds have told: how the sensors respond, and the noise of the latest hold. */
    static void measured(List<Block> blocks, EveningView evening, Showing showing) {
        Map<String, Sight> sights = new LinkedHashMap<>();
        evening.keeping().profile().ifPresent(profile -> sights.putAll(responses(profile.room())));
        if (!sights.isEmpty()) {
            sights.putAll(noises(evening));
        }
        chosen(blocks, sights, showing);
    }

    /** One of several charts, and the choice between them. */
    private static void chosen(List<Block> blocks, Map<String, Sight> sights, Showing showing) {
        if (sights.isEmpty()) {
            return;
        }
        String seen = showing.seen(sights.keySet());
        if (sights.size() > 1) {
            blocks.add(new Block.Fields(List.of(choice("Chart", seen, sights.keySet()))));
        }
        Sight sight = sights.get(seen);
        if (sight != null) {
            blocks.add(new Block.Live(sight));
        }
    }

    /** Noises of the latest holds by what they are called. */
    private static Map<String, Sight> noises(EveningView evening) {
        Map<String, Sight> sights = new LinkedHashMap<>();
        evening.arrival()
                .instrument()
                .ifPresent(instrument -> roles(instrument)
                        .forEach(role -> sights.put(
                                "noise of the last hold, " + hand(role), new Sight.HoldNoise(instrument, role))));
        return sights;
    }

    /** The noise of the hold that was captured last. */
    static Optional<Sight> lastHold(EveningView evening, HoldTask task, int captured) {
        for (int i = Math.min(captured, task.plan().steps().size()) - 1; i >= 0; i--) {
            Step step = task.plan().steps().get(i);
            if (step.kind() != StepKind.REST) {
                return evening.arrival().instrument().map(instrument -> new Sight.HoldNoise(instrument, step.hand()));
            }
        }
        return Optional.empty();
    }

    /** A choice between charts. */
    static Block.Field choice(String label, String chosen, Collection<String> choices) {
        return new Block.Field(Ask.CHART, label, chosen, List.copyOf(choices), "", "which chart is looked at");
    }

    static Sight ladder(RoomProfile profile, Tuning tuning) {
        return new Sight.Ladder(profile, tuning);
    }

    static Sight feel(RoomProfile profile, Tuning tuning) {
        return new Sight.Feel(profile, tuning);
    }

    static Sight sent(RoomProfile profile) {
        return new Sight.Sent(profile.tunings().get(0));
    }

    private static String hand(HandRole role) {
        return role.word() + " hand";
    }
}
