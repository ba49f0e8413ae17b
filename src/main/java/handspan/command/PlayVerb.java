package handspan.command;

import handspan.live.path.PathSettings;
import handspan.live.session.Event;
import handspan.live.session.LinkException;
import handspan.live.session.PlayDesk;
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
            "Several instruments: 'handspan play SOURCE SOURCE --room NAME --room NAME'; then Enter closes or opens all, and a"
                    + " number before a key is for that instrument alone, such as 2 t.",
            "Without an instrument: 'handspan play sim:hall --room saltmill-hall --go' or"
                    + " 'handspan play sim:attic --room fennel-attic --go'.",
            "Caution: start with the monitors low; the level ceiling protects ears. This is no safety device."
        })
final class PlayVerb extends Verb {
    @Mixin
    SeveralSources source = new SeveralSources();

    @Mixin
    SeveralRooms room = new SeveralRooms();

    @Mixin
    PlayArguments how = new PlayArguments();

    @Option(
            names = "--as",
            paramLabel = "NAME",
            description =
                    "with several rooms: what each is called for this time, also in its addresses; in their order")
    List<String> names = List.of();

    @Option(
            names = "--claim",
            description = "rooms are called one after another, and the board whose player then waves is that room's;"
                    + " among the sources, or all free serial ports where none is named")
    boolean claim;

    @Mixin
    OutArguments outs = new OutArguments();

    @Mixin
    RemoteArguments remote = new RemoteArguments();

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        if (room.rooms.size() > 1 || claim || !names.isEmpty()) {
            return new EnsembleRun(this).run(talk);
        }
        if (source.sources.size() != 1) {
            throw new UsageException(source.sources.size() + " sources for one room"
                    + " (as many as rooms, in their order): write it like 'handspan play SOURCE --room NAME'");
        }
        return alone(talk);
    }

    /** One instrument. */
    private int alone(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        RoomProfile kept = room.first();
        Room tonight = kept.room().in(source.air(kept.room().air()));
        RoomProfile stored = new RoomProfile(tonight, kept.tunings(), kept.level(), kept.send());
        new InstrumentShelf(room.folder()).rebuiltSince(tonight).ifPresent(talk::warn);
        RoomProfile profile = outs.in(stored);
        Tuning tuning = UsageException.reading(() -> how.chosen(profile));
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
        PathSettings settings = how.settings();
        SourceOptions options = source.options(true, profile.room().instrument());
        Path file = how.record;
        try (WaysOut out = outs.open(talk, source.source(), profile, options, file);
                Recording recording = file == null ? null : Takes.into(file, source, talk);
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
            PlayDesk desk = new PlayDesk(how.tunings(profile), tuning, settings.startMuted(), rig::submit);
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

    private int play(PlayTalk words, Rig rig, PlayKeys keys, PlayDesk desk, RecordingTalk taken) {
        EventReader events = new EventReader();
        AtomicInteger exit = new AtomicInteger(Exit.DONE);
        long startNanos = rig.snapshot().timeNanos();
        rig.follow(snapshot -> {
            for (Event event : events.fresh(snapshot)) {
                exit.accumulateAndGet(words.hear(event, snapshot, desk), Math::max);
            }
            words.show(snapshot);
            taken.look();
            boolean over = how.isOver(Nanos.toSeconds(snapshot.timeNanos() - startNanos));
            return !over && !keys.isQuit() && exit.get() == Exit.DONE;
        });
        return exit.get();
    }
}
