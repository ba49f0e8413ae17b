package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.survey.ChannelGuess;
import handspan.instrument.survey.FoundHands;
import handspan.instrument.survey.WavePart;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.wiring.Cues;
import handspan.wiring.EventReader;
import handspan.wiring.Rig;
import java.util.Map;
import java.util.Optional;

/** Leads a player through the search for the hands, and says what was found. */
final class WaveTalk {
    private final Talk talk;
    private final String source;

    WaveTalk(Talk talk, String source) {
        this.talk = talk;
        this.source = source;
    }

    /** Runs the search; closes the cues. */
    int lead(Rig rig, Cues cues) {
        Snapshot last;
        try (cues) {
            rig.submit(new Command.FindHands());
            EventReader events = new EventReader();
            last = rig.follow(snapshot -> {
                for (Event event : events.fresh(snapshot)) {
                    cues.onEvent(event);
                    tell(event);
                }
                return !snapshot.done();
            });
            if (last.done()) {
                cues.finished();
            }
        }
        Optional<FoundHands> found =
                last.activity() instanceof ActivityView.FindingHands finding ? finding.found() : Optional.empty();
        return found.map(this::conclude).orElseGet(() -> nothing(rig));
    }

    private void tell(Event event) {
        if (event.what() instanceof Event.WaveAsked asked) {
            WavePart part = asked.part();
            talk.say("-> " + part.prompt() + " (" + Figures.text(part.readySeconds() + part.seconds(), 0) + " s)");
            talk.event("step", Map.of("step", part.word(), "readyS", part.readySeconds(), "seconds", part.seconds()));
        } else {
            LinkTalk.tellTrouble(talk, event);
        }
    }

    private int conclude(FoundHands found) {
        ObjectNode result = Talk.node();
        result.put("event", "result");
        result.put("line", found.shape().words());
        ArrayNode channels = JsonViews.guesses(found.guesses());
        result.set("channels", channels);
        talk.say("lines: " + found.shape().words());
        for (int i = 0; i < found.guesses().size(); i++) {
            ChannelGuess guess = found.guesses().get(i);
            String hand = found.pitchSlot().orElse(-1) == i
                    ? "pitch"
                    : found.levelSlot().orElse(-1) == i ? "level" : "";
            ((ObjectNode) channels.get(i)).put("hand", hand);
            talk.say((hand.isEmpty() ? "no hand: " : hand + " hand: ") + "channel "
                    + guess.spec().channel() + ", " + (guess.sure() ? "" : "perhaps ")
                    + guess.spec().kind().word() + " in " + guess.spec().unit().word() + " (" + guess.evidence() + ")");
        }
        ObjectNode proposal = result.putObject("proposal");
        String pitch = found.pitch().map(guess -> guess.spec().text()).orElse(null);
        String level = found.level().map(guess -> guess.spec().text()).orElse(null);
        proposal.put("pitch", pitch);
        proposal.put("level", level);
        if (pitch == null) {
            talk.warn(
                    "no number followed the pitch hand: move it slowly, 10 to 50 cm over its sensor, all the time; and"
                            + " look at the sensor's wires");
        } else {
            talk.say("to go on: handspan calibrate " + source + " --room NAME --pitch " + LinesTalk.typed(pitch)
                    + (level == null ? "" : " --level " + LinesTalk.typed(level)));
        }
        int exit = pitch == null ? Exit.NO : Exit.DONE;
        result.put("exitCode", exit);
        talk.object(result);
        return exit;
    }

    private int nothing(Rig rig) {
        String reason =
                "the search for the hands was not finished: " + rig.snapshot().readings() + " readings came";
        talk.warn(reason);
        talk.event("result", Map.of("exitCode", Exit.NO, "error", reason));
        return Exit.NO;
    }
}
