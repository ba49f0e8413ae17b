package handspan.command;

import handspan.live.path.PathSettings;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.LinkException;
import handspan.live.session.PlayDesk;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.StepsBudget;
import handspan.room.budget.VibratoBudget;
import handspan.wiring.EventReader;
import handspan.wiring.InstrumentShelf;
import handspan.wiring.Recording;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.WaysOut;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
            "While it plays, type a key and Enter: m (or Enter alone) mutes and opens, t next tuning of the room,",
            "+ and - a semitone up and down, ++ and -- an octave, > and < five cents, quicker and steadier half a step of"
                    + " quickness,",
            "= back to the tuning as it is kept,",
            "q fades and quits; light (both hands away) takes the present light as open until it quits.",
            "Transposition, trim and quickness by key are for this time, and stay when the tuning changes.",
            "Without an instrument: 'handspan play sim:hall --room saltmill-hall --go' or"
                    + " 'handspan play sim:attic --room fennel-attic --go'.",
            "Caution: start with the monitors low; the level ceiling protects ears. This is no safety device."
        })
final class PlayVerb extends Verb {
    private static final double FEWEST_FRAMES = 100;
    private static final double MOST_FRAMES = 500;

    @Mixin
    SourceArguments source = new SourceArguments();

    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--go", description = "sound from the start (otherwise muted until a key opens it)")
    boolean go;

    @Option(names = "--tuning", paramLabel = "NAME", description = "which tuning (default: the first)")
    @Nullable
    String tuningName;

    @Option(names = "--snap", paramLabel = "HOW", description = "free, pull, steps or onset, for this time")
    @Nullable
    String snap;

    @Option(names = "--seconds", paramLabel = "S", description = "stop after this long; counts as --go")
    @Nullable
    Double seconds;

    @Option(names = "--no-glide", description = "a message with each reading instead of 200 a second in between")
    boolean noGlide;

    @Option(
            names = "--frames",
            paramLabel = "N",
            description = "messages a second, 100..500 (default 200); not with --no-glide")
    @Nullable
    Double framesPerS;

    @Option(names = "--record", paramLabel = "FILE", description = "record what comes as a take")
    @Nullable
    Path record;

    @Mixin
    OutArguments outs = new OutArguments();

    @Mixin
    RemoteArguments remote = new RemoteArguments();

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        RoomProfile kept = room.load();
        Room tonight = kept.room().in(source.air(kept.room().air()));
        RoomProfile stored = new RoomProfile(tonight, kept.tunings(), kept.level(), kept.send());
        new InstrumentShelf(room.folder()).rebuiltSince(tonight).ifPresent(talk::warn);
        RoomProfile profile = outs.in(stored);
        Tuning tuning = UsageException.reading(() -> chosen(profile));
        Optional<String> refusal = StepsBudget.refusal(profile.room(), tuning);
        if (refusal.isPresent()) {
            throw new UsageException(refusal.get());
        }
        if (source.source().kind() == Source.Kind.SIMULATION) {
            source.told();
        }
        VibratoBudget vibrato = VibratoBudget.of(profile.room(), tuning);
        if (vibrato.isLost()) {
            talk.say(vibrato.words());
        }
        PathSettings settings = settings();
        SourceOptions options = source.options(true, profile.room().instrument());
        Path file = record;
        try (WaysOut out = outs.open(talk, source.source(), profile, options, file);
                Recording recording = file == null ? null : Takes.into(file, source);
                Rig rig = talk.log()
                        .following(
                                Rigs.open(
                                        source.source(),
                                        options,
                                        profile.room().instrument().shape(),
                                        out.all(),
                                        recording),
                                source.source().text());
                RemoteTalk orders = remote.open(talk, options.byTheClock(source.source()));
                Keys keys = new Keys(talk, parent().in());
                RecordingTalk taken = new RecordingTalk(talk, recording, "playing");
                AtExit atExit = AtExit.run(() -> {
                    rig.close();
                    out.close();
                    taken.close();
                })) {
            rig.submit(new handspan.live.session.Command.Play(profile, tuning, settings));
            if (settings.startMuted()) {
                talk.say("muted: press Enter to let sound through, q and Enter to quit");
            }
            PlayTalk words = new PlayTalk(talk, source.source(), out.tone());
            PlayDesk desk = new PlayDesk(tunings(profile), tuning, settings.startMuted(), rig::submit);
            PlayKeys playKeys = new PlayKeys(talk, desk);
            playKeys.bind(keys);
            keys.listen();
            words.follow(orders, profile, desk, rig);
            int exit = play(words, rig, playKeys, desk, taken);
            rig.close();
            out.close();
            taken.close();
            if (!out.midiFileTrouble().isEmpty()) {
                throw new IOException(out.midiFileTrouble());
            }
            int code = words.conclude(rig.snapshot(), out.status(), exit);
            talk.say("log: " + talk.log().file());
            return code;
        }
    }

    private PathSettings settings() throws UsageException {
        PathSettings settings = PathSettings.USUAL.muted(!go && seconds == null).gliding(!noGlide);
        Double frames = framesPerS;
        if (frames == null) {
            return settings;
        }
        if (noGlide) {
            throw new UsageException("--frames with --no-glide: without glide a message goes out with each reading");
        }
        if (!(frames >= FEWEST_FRAMES && frames <= MOST_FRAMES)) {
            throw new UsageException("--frames " + frames + " (100..500 messages a second)");
        }
        return settings.withFrames(frames);
    }

    private Tuning chosen(RoomProfile profile) {
        return snapped(tuningName == null ? profile.tunings().get(0) : profile.tuning(tuningName));
    }

    private List<Tuning> tunings(RoomProfile profile) {
        return profile.tunings().stream().map(this::snapped).toList();
    }

    private Tuning snapped(Tuning tuning) {
        return snap == null ? tuning : tuning.withSnap(Snap.parse(snap));
    }

    private int play(PlayTalk words, Rig rig, PlayKeys keys, PlayDesk desk, RecordingTalk taken) {
        EventReader events = new EventReader();
        AtomicInteger exit = new AtomicInteger(Exit.DONE);
        long startNanos = rig.snapshot().timeNanos();
        rig.follow(snapshot -> {
            for (Event event : events.fresh(snapshot)) {
                words.tell(event);
                if (event.what() instanceof Event.TuningRefused
                        && snapshot.activity() instanceof ActivityView.Playing playing) {
                    desk.onRefused(playing.tuning());
                } else if (event.what() instanceof Event.Refused
                        || (event.what() instanceof Event.Ambiguous
                                && !(snapshot.activity() instanceof ActivityView.Playing))) {
                    exit.set(Exit.USAGE);
                } else if (event.what() instanceof Event.Failed) {
                    exit.set(Exit.INTERNAL);
                }
            }
            words.show(snapshot);
            taken.look();
            boolean over = seconds != null && Nanos.toSeconds(snapshot.timeNanos() - startNanos) >= seconds;
            return !over && !keys.isQuit() && exit.get() == Exit.DONE;
        });
        return exit.get();
    }
}
