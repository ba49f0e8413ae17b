package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.path.TargetStatus;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.LinkState;
import handspan.live.session.PlayDesk;
import handspan.live.session.Snapshot;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Decibels;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.wiring.Listening;
import handspan.wiring.RemoteInstrument;
import handspan.wiring.Rig;
import handspan.wiring.Source;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says what happens while an instrument plays. */
final class PlayTalk {
    private final Talk talk;
    private final LinkTalk links;
    private final Listening tone;
    private final Pulse pulse = new Pulse(Nanos.PER_SECOND);
    private final Map<String, String> toldTroubles = new HashMap<>();
    private @Nullable RemoteTalk remote;

    /**
     * Nothing is said yet.
     *
     * @param tone asked for its own troubles and for what became of its file
     */
    PlayTalk(Talk talk, Source source, Listening tone) {
        this.talk = talk;
        this.tone = tone;
        this.links = new LinkTalk(talk, source);
    }

    /** Obeys orders from outside from now on, and says what becomes of them; null for none. */
    void follow(@Nullable RemoteTalk orders, RoomProfile profile, PlayDesk desk, Rig rig) {
        remote = orders;
        if (orders != null) {
            String instrument = profile.room().instrument().name();
            String room = profile.room().name();
            orders.obey(List.of(RemoteInstrument.of(instrument, room, desk, () -> Optional.of(rig.snapshot()))));
        }
    }

    /**
     * Something has happened: says it, and lets the desk know.
     *
     * @return the exit code that goes with it
     */
    int hear(Event event, Snapshot snapshot, PlayDesk desk) {
        tell(event);
        boolean plays = snapshot.activity() instanceof ActivityView.Playing;
        if (event.what() instanceof Event.TuningRefused
                && snapshot.activity() instanceof ActivityView.Playing playing) {
            desk.onRefused(playing.tuning());
        } else if (event.what() instanceof Event.Refused || (event.what() instanceof Event.Ambiguous && !plays)) {
            return Exit.USAGE;
        } else if (event.what() instanceof Event.Failed) {
            return Exit.INTERNAL;
        }
        return Exit.DONE;
    }

    /** Says what has happened. */
    void tell(Event event) {
        if (event.what() instanceof Event.Linked || event.what() instanceof Event.LinkDoubt) {
            links.tell(event);
        } else if (event.what() instanceof Event.Playing playing) {
            talk.event("state", Map.of("state", playing.state().word()));
        } else if (event.what() instanceof Event.Tuned tuned) {
            Tuning tuning = tuned.tuning();
            talk.say("tuning '" + tuning.name() + "', transposed by " + tuning.transpose()
                    + (Math.abs(tuning.transpose()) == 1 ? " semitone" : " semitones") + ", trimmed by "
                    + Figures.text(tuning.trimCents(), 1) + " cents, quickness "
                    + Figures.text(tuning.quickness().steps(), 1));
            talk.event(
                    "tuning",
                    Map.of(
                            "name", tuning.name(),
                            "transpose", tuning.transpose(),
                            "trimCents", tuning.trimCents(),
                            "quickness", tuning.quickness().steps()));
        } else if (event.what() instanceof Event.TuningRefused refused) {
            talk.warn("tuning '" + refused.tuning() + "' stays out: " + refused.reason());
            talk.event("tuningRefused", Map.of("name", refused.tuning(), "reason", refused.reason()));
        } else if (event.what() instanceof Event.LightMute light) {
            talk.say(light.muted() ? light.reason() : "light is as usual again");
            talk.event("light", Map.of("muted", light.muted(), "reason", light.reason()));
        } else if (event.what() instanceof Event.OpenTaken open) {
            talk.say(open.light().words());
            talk.object(JsonViews.lightTaken(open.light()));
        } else if (event.what() instanceof Event.Sensor sensor) {
            talk.warn(sensor.trouble().isEmpty() ? "the sensors give readings again" : sensor.trouble());
            talk.event("sensor", Map.of("trouble", sensor.trouble()));
        } else if (event.what() instanceof Event.Hint hint) {
            talk.say("hint: " + hint.words());
            talk.event("hint", Map.of("hint", hint.words()));
        } else if (event.what() instanceof Event.BoardChanged changed) {
            talk.warn(changed.words());
            talk.event("boardChanged", Map.of("words", changed.words(), "gone", changed.gone()));
        } else if (event.what() instanceof Event.Ambiguous ambiguous) {
            talk.warn("handspan: " + ambiguous.either().question());
        } else if (event.what() instanceof Event.Refused refused) {
            talk.warn("handspan: " + refused.reason());
        } else if (event.what() instanceof Event.Failed failed) {
            talk.warn("handspan: " + failed.reason() + ": please report it with what you did");
        } else if (event.what() instanceof Event.Learned learned) {
            talk.say("lines: " + learned.shape().words());
        }
    }

    /** Once a second: what sounds; and at once: trouble with a target. */
    void show(Snapshot snapshot) {
        show(snapshot, snapshot.targets(), true);
    }

    /**
     * The same for targets that are told of apart.
     *
     * @param inWords whether it is said what sounds, too
     */
    void show(Snapshot snapshot, List<TargetStatus> targets, boolean inWords) {
        tellToneTrouble();
        targets.forEach(this::isNews);
        if (remote != null) {
            remote.look();
        }
        if (!(snapshot.activity() instanceof ActivityView.Playing playing)
                || playing.frame().isEmpty()
                || !pulse.isDue(snapshot.timeNanos())) {
            return;
        }
        SoundFrame frame = playing.frame().get();
        double levelDb = frame.gain01() > 0 ? Decibels.of(frame.gain01()) : Double.NEGATIVE_INFINITY;
        ObjectNode node = Talk.node();
        node.put("event", "frame");
        node.put("state", playing.state().word());
        node.put("pitchHz", frame.pitchHz());
        node.put("noteName", playing.tuning().spelling().name(frame.key()));
        node.put("tuning", playing.tuning().name());
        node.put("centsFromNote", frame.centsFromKey());
        node.put("gain01", frame.gain01());
        JsonViews.number(node, "levelDb", levelDb);
        node.put("frames", playing.frames());
        JsonViews.number(node, "ratePerS", playing.ratePerS());
        node.put("lightMute", playing.lightMute());
        node.put("hint", playing.hint());
        node.put("sensorTrouble", playing.sensorTrouble());
        talk.object(node);
        if (inWords && !talk.isJson()) {
            talk.say(playing.state() == PlayState.PLAYING ? sounding(playing, frame, levelDb) : silent(playing));
        }
    }

    private void tellToneTrouble() {
        for (TargetStatus status : tone.status()) {
            if (isNews(status)) {
                talk.event("tone", Map.of("target", status.target(), "trouble", status.trouble()));
            }
        }
    }

    /** Says each trouble of each target once; whether it has just been said. */
    private boolean isNews(TargetStatus target) {
        String trouble = target.trouble();
        boolean news = !trouble.isEmpty() && !trouble.equals(toldTroubles.put(target.target(), trouble));
        if (news) {
            talk.warn(trouble);
        }
        return news;
    }

    private static String silent(ActivityView.Playing playing) {
        String why = playing.lightMute().isEmpty() ? "" : " by light (type light to take the open level again)";
        String hint = playing.hint().isEmpty() ? "" : "  hint: " + playing.hint();
        return playing.state().word() + why + hint;
    }

    private static String sounding(ActivityView.Playing playing, SoundFrame frame, double levelDb) {
        return String.format(
                Locale.ROOT,
                "%-4s %+4.0f cents  %8s Hz  %s",
                playing.tuning().spelling().name(frame.key()),
                frame.centsFromKey(),
                Figures.text(frame.pitchHz(), 2),
                Double.isFinite(levelDb) ? Figures.text(levelDb, 1) + " dB" : "silent");
    }

    /**
     * The end, when the tone is closed too, so that its figures are final.
     *
     * @return the exit code
     */
    int conclude(Snapshot last, List<TargetStatus> targets, int exit) {
        ObjectNode result = Talk.node();
        result.put("event", "result");
        int code = sum(result, last, targets, exit);
        talk.object(result);
        return code;
    }

    /** Sums up, in words and into an object; the exit code. */
    int sum(ObjectNode result, Snapshot last, List<TargetStatus> targets, int exit) {
        tellToneTrouble();
        long frames = last.activity() instanceof ActivityView.Playing playing ? playing.frames() : 0;
        result.put("readings", last.readings());
        result.put("frames", frames);
        result.set("rejections", JsonViews.rejections(last.rejections()));
        result.set("targets", JsonViews.targets(targets));
        tone.written().ifPresent(wav -> result.set("wav", wav(wav)));
        if (remote != null) {
            remote.look();
            result.set("remote", remote.counters(talk));
        }
        int code = exit == Exit.DONE && last.link() != LinkState.ENDED && last.readings() == 0 ? Exit.NO : exit;
        result.put("exitCode", code);
        talk.say(Figures.count(last.readings()) + " readings, " + Figures.count(frames) + " frames");
        for (TargetStatus target : targets) {
            talk.say("  " + target.target() + ": " + Figures.count(target.sent()) + " sent, "
                    + Figures.count(target.refused()) + " refused, " + Figures.count(target.dropped()) + " dropped");
        }
        tone.written().ifPresent(wav -> talk.say(Figures.text(wav.seconds(), 2) + " s of sound are in " + wav.file()));
        return code;
    }

    private static ObjectNode wav(Listening.Written wav) {
        ObjectNode node = Talk.node();
        node.put("file", wav.file());
        node.put("seconds", wav.seconds());
        node.put("dropped", wav.dropped());
        node.put("trouble", wav.trouble());
        return node;
    }
}
