package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.path.PathParts;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.LinkException;
import handspan.live.session.LinkState;
import handspan.live.session.Snapshot;
import handspan.music.send.PlayState;
import handspan.music.send.SendTarget;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.NoteName;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Decibels;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.wiring.Recording;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.Targets;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plays. */
@Command(
        name = "play",
        description = "plays: from the instrument to the sound patch",
        footer = {
            "",
            "While it plays, type a key and Enter: m (or Enter alone) mutes and opens, t next tuning,",
            "q fades and quits; light (both hands away) takes the present light as open until it quits.",
            "Without an instrument: 'handspan play sim:hall --room saltmill-hall --go' or"
                    + " 'handspan play sim:attic --room fennel-attic --go'.",
            "Caution: start with the monitors low; the level ceiling protects ears. This is no safety device."
        })
final class PlayVerb extends Verb {
    @Mixin
    SourceArguments source = new SourceArguments();

    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--go", description = "sound from the start (otherwise muted until a key opens it)")
    boolean go;

    @Option(names = "--tuning", paramLabel = "NAME", description = "which tuning (default: the first)")
    @Nullable
    String tuningName;

    @Option(names = "--snap", paramLabel = "HOW", description = "free or steps, for this time")
    @Nullable
    String snap;

    @Option(names = "--send", paramLabel = "TARGET", description = "send there, for this time: udp:HOST:PORT")
    List<String> send = List.of();

    @Option(names = "--seconds", paramLabel = "S", description = "stop after this long; counts as --go")
    @Nullable
    Double seconds;

    @Option(names = "--no-glide", description = "a message with each reading instead of 200 a second in between")
    boolean noGlide;

    @Option(names = "--record", paramLabel = "FILE", description = "record what comes as a take")
    @Nullable
    Path record;

    private final Pulse pulse = new Pulse(Nanos.PER_SECOND);
    private String toldTrouble = "";

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        RoomProfile kept = room.load();
        Room tonight = kept.room().in(source.air(kept.room().air()));
        RoomProfile stored = new RoomProfile(tonight, kept.tunings(), kept.level(), kept.send());
        new InstrumentShelf(room.folder()).rebuiltSince(tonight).ifPresent(talk::warn);
        RoomProfile profile = send.isEmpty()
                ? stored
                : stored.with(stored.send()
                        .to(UsageException.reading(
                                () -> send.stream().map(SendTarget::parse).toList())));
        Tuning tuning = UsageException.reading(() -> chosen(profile));
        Optional<String> refusal = PathParts.stepsRefusal(profile.room(), tuning);
        if (refusal.isPresent()) {
            throw new UsageException(refusal.get());
        }
        if (source.source().kind() == Source.Kind.SIMULATION) {
            source.told();
        }
        PathSettings settings = PathSettings.USUAL.muted(!go && seconds == null).gliding(!noGlide);
        SourceOptions options = source.options(true)
                .at(source.baudNamed == null ? profile.room().instrument().baud() : source.baudNamed);
        Path file = record;
        try (Targets targets = Targets.open(profile.send());
                Recording recording = file == null ? null : Takes.into(file, source);
                Rig rig = Rigs.open(
                        source.source(), options, profile.room().instrument().shape(), targets.all(), recording);
                Keys keys = Keys.read(talk, parent().in());
                AtExit atExit = AtExit.run(rig::close)) {
            rig.submit(new handspan.live.session.Command.Play(profile, tuning, settings));
            AtomicBoolean quit = keys(keys, rig, profile, tuning, settings.startMuted());
            int exit = play(talk, rig, quit, settings.startMuted());
            rig.close();
            return conclude(talk, rig.snapshot(), targets.status(), exit);
        }
    }

    private Tuning chosen(RoomProfile profile) {
        Tuning tuning = tuningName == null ? profile.tunings().get(0) : profile.tuning(tuningName);
        return snap == null ? tuning : tuning.withSnap(Snap.parse(snap));
    }

    private static AtomicBoolean keys(Keys keys, Rig rig, RoomProfile profile, Tuning first, boolean startMuted) {
        AtomicBoolean quit = new AtomicBoolean();
        AtomicBoolean muted = new AtomicBoolean(startMuted);
        AtomicInteger index = new AtomicInteger(Math.max(
                0, profile.tunings().stream().map(Tuning::name).toList().indexOf(first.name())));
        Runnable mute = () -> {
            muted.set(!muted.get());
            rig.submit(new handspan.live.session.Command.Mute(muted.get()));
        };
        keys.on("", mute);
        keys.on("m", mute);
        keys.on(
                "t",
                () -> rig.submit(new handspan.live.session.Command.Tune(profile.tunings()
                        .get(index.incrementAndGet() % profile.tunings().size()))));
        keys.on("light", () -> rig.submit(new handspan.live.session.Command.RetakeLight()));
        keys.on("q", () -> quit.set(true));
        return quit;
    }

    private int play(Talk talk, Rig rig, AtomicBoolean quit, boolean muted) {
        EventReader events = new EventReader();
        AtomicInteger exit = new AtomicInteger(Exit.DONE);
        long startNanos = rig.snapshot().timeNanos();
        if (muted) {
            talk.say("muted: press Enter to let sound through, q and Enter to quit");
        }
        rig.follow(snapshot -> {
            for (Event event : events.fresh(snapshot)) {
                tell(talk, event);
                if (event.what() instanceof Event.Refused) {
                    exit.set(Exit.USAGE);
                } else if (event.what() instanceof Event.Failed) {
                    exit.set(Exit.INTERNAL);
                }
            }
            show(talk, snapshot);
            boolean over = seconds != null && Nanos.toSeconds(snapshot.timeNanos() - startNanos) >= seconds;
            return !over && !quit.get() && exit.get() == Exit.DONE;
        });
        return exit.get();
    }

    private static void tell(Talk talk, Event event) {
        if (event.what() instanceof Event.Linked linked) {
            String words = switch (linked.state()) {
                case WAITING -> "link open, waiting for the board";
                case UP -> "lines come";
                case LOST -> "link lost: " + linked.reason() + "; fading, and looking for it";
                case ENDED -> "the recording is over";
                case CLOSED -> "link closed";
            };
            talk.say(words);
            talk.event("link", Map.of("state", linked.state().word(), "reason", linked.reason()));
        } else if (event.what() instanceof Event.Playing playing) {
            talk.event("state", Map.of("state", playing.state().word()));
        } else if (event.what() instanceof Event.LightMute light) {
            talk.say(light.muted() ? light.reason() : "light is as usual again");
            talk.event("light", Map.of("muted", light.muted(), "reason", light.reason()));
        } else if (event.what() instanceof Event.OpenTaken open) {
            talk.say(open.light().words());
            talk.object(JsonViews.lightTaken(open.light()));
        } else if (event.what() instanceof Event.Hint hint) {
            talk.say("hint: " + hint.words());
            talk.event("hint", Map.of("hint", hint.words()));
        } else if (event.what() instanceof Event.Refused refused) {
            talk.warn("handspan: " + refused.reason());
        } else if (event.what() instanceof Event.Failed failed) {
            talk.warn("handspan: " + failed.reason() + ": please report it with what you did");
        } else if (event.what() instanceof Event.Learned learned) {
            talk.say("lines: " + learned.shape().words());
        }
    }

    private void show(Talk talk, Snapshot snapshot) {
        for (TargetStatus target : snapshot.targets()) {
            if (!target.trouble().isEmpty() && !target.trouble().equals(toldTrouble)) {
                toldTrouble = target.trouble();
                talk.warn(target.trouble());
            }
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
        node.put("noteName", NoteName.of(frame.key()));
        node.put("centsFromNote", frame.centsFromKey());
        node.put("gain01", frame.gain01());
        JsonViews.number(node, "levelDb", levelDb);
        node.put("frames", playing.frames());
        JsonViews.number(node, "ratePerS", playing.ratePerS());
        node.put("lightMute", playing.lightMute());
        node.put("hint", playing.hint());
        talk.object(node);
        if (!talk.isJson()) {
            talk.say(playing.state() == PlayState.PLAYING ? sounding(frame, levelDb) : silent(playing));
        }
    }

    private static String silent(ActivityView.Playing playing) {
        String why = playing.lightMute().isEmpty() ? "" : " by light (type light to take the open level again)";
        String hint = playing.hint().isEmpty() ? "" : "  hint: " + playing.hint();
        return playing.state().word() + why + hint;
    }

    private static String sounding(SoundFrame frame, double levelDb) {
        return String.format(
                Locale.ROOT,
                "%-4s %+4.0f cents  %8s Hz  %s",
                NoteName.of(frame.key()),
                frame.centsFromKey(),
                Figures.text(frame.pitchHz(), 2),
                Double.isFinite(levelDb) ? Figures.text(levelDb, 1) + " dB" : "silent");
    }

    private static int conclude(Talk talk, Snapshot last, List<TargetStatus> targets, int exit) {
        ObjectNode result = Talk.node();
        result.put("event", "result");
        long frames = last.activity() instanceof ActivityView.Playing playing ? playing.frames() : 0;
        result.put("readings", last.readings());
        result.put("frames", frames);
        result.set("rejections", JsonViews.rejections(last.rejections()));
        result.set("targets", JsonViews.targets(targets));
        int code = exit == Exit.DONE && last.link() != LinkState.ENDED && last.readings() == 0 ? Exit.NO : exit;
        result.put("exitCode", code);
        talk.say(Figures.count(last.readings()) + " readings, " + Figures.count(frames) + " frames");
        for (TargetStatus target : targets) {
            talk.say("  " + target.target() + ": " + Figures.count(target.sent()) + " sent, "
                    + Figures.count(target.refused()) + " refused, " + Figures.count(target.dropped()) + " dropped");
        }
        talk.object(result);
        return code;
    }
}
