package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.budget.Adviser;
import handspan.room.budget.StartingTuning;
import handspan.room.calibrate.Outcome;
import handspan.wiring.NewRoom;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The end of a calibration: keeps the room, or says why there is none.
 *
 * @param talk to whom it is told
 * @param file in which the room is kept
 */
record Conclusion(Talk talk, Path file) {
    /**
     * Keeps the outcome's room, if it has one.
     *
     * @param before whose tunings, level and sends it takes over; null for the usual
     * @return the exit code
     */
    int of(Outcome outcome, NewRoom newRoom, @Nullable RoomProfile before) throws ProfileException {
        Map<String, Object> result = new LinkedHashMap<>();
        if (outcome.room().isEmpty()) {
            talk.say("no room was kept, because:");
            outcome.reasons().forEach(reason -> talk.say("  " + reason));
            result.put("exitCode", Exit.NO);
            result.put("saved", false);
            result.put("reasons", outcome.reasons());
            talk.event("result", result);
            return Exit.NO;
        }
        RoomProfile profile = newRoom.keep(outcome, before);
        ObjectNode summary = RoomSummary.node(profile);
        talk.say("kept as " + file);
        RoomSummary.lines(profile).forEach(talk::say);
        advice(profile).forEach(talk::say);
        result.put("exitCode", Exit.DONE);
        result.put("saved", true);
        result.put("file", file.toString());
        result.put("room", summary);
        outcome.byEar().ifPresent(heard -> {
            talk.say(heard.words());
            result.put(
                    "byEar",
                    Map.of(
                            "residualCents", heard.residualCents(),
                            "uncertaintyCents", heard.uncertaintyCents(),
                            "warp", heard.warp()));
        });
        talk.event("result", result);
        return Exit.DONE;
    }

    /** What the room holds, and what its first tuning asks too much of, if it does. */
    private static List<String> advice(RoomProfile profile) {
        Tuning tuning = profile.tunings().get(0);
        Adviser adviser = Adviser.of(profile.room(), profile.room().aim());
        List<String> lines = new ArrayList<>();
        lines.add("advice: " + adviser.sentence(tuning));
        StartingTuning starting = StartingTuning.by(adviser);
        if (starting.playable().tuning().equals(tuning)) {
            lines.add(starting.words());
        } else {
            adviser.warning(tuning).ifPresent(lines::add);
        }
        return lines;
    }
}
