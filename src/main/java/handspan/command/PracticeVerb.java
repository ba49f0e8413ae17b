package handspan.command;

import handspan.live.path.PathSettings;
import handspan.live.session.Command.Play;
import handspan.live.session.Command.Practise;
import handspan.live.session.LinkException;
import handspan.music.practice.Course;
import handspan.music.practice.PracticeRun;
import handspan.music.tuning.Tuning;
import handspan.profile.Player;
import handspan.profile.PlayerFolder;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.StepsBudget;
import handspan.wiring.Cues;
import handspan.wiring.InstrumentShelf;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.WaysOut;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Asks for notes and says how well they were found. */
@Command(
        name = "practice",
        description =
                "asks for one note after another and says how far off your hand came to rest, and after what time",
        footer = {
            "",
            "Go straight to the note and stop there: a hand that rests for 0.8 s after a move has answered, and the next"
                    + " note is asked for.",
            "Cents are those of your hand; what snapping makes of them is left out.",
            "While it runs, type a key and Enter: m (or Enter alone) mutes and opens the instrument, r sounds the note"
                    + " again (--ask sound or both), q ends the run.",
            "Ctrl-C fades as ever; what was found so far is kept under --player, the aim is not.",
            "Without an instrument: 'handspan practice sim:hall --room saltmill-hall'.",
            "Caution: start with the monitors low; the level ceiling protects ears. This is no safety device."
        })
final class PracticeVerb extends Verb {
    @Mixin
    SourceArguments source = new OneSource();

    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--tuning", paramLabel = "NAME", description = "which tuning (default: the first)")
    @Nullable
    String tuningName;

    @Option(
            names = "--player",
            paramLabel = "NAME",
            description = "keeps the run under this name: later runs are compared with it, and notes that were missed"
                    + " come more often")
    @Nullable
    String playerName;

    @Mixin
    CourseArguments wishes = new CourseArguments();

    @Option(
            names = "--save-aim",
            description = "keep the aim in the room by 5 reaches or more, for the adviser (by 10 it is kept anyway)")
    boolean saveAim;

    @Option(names = "--go", description = "the instrument sounds from the start (otherwise muted until a key opens it)")
    boolean go;

    @Mixin
    OutArguments outs = new OutArguments();

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        if (saveAim && wishes.helps()) {
            throw new UsageException("--save-aim with help: only unaided reaches tell an aim, give --no-help as well");
        }
        RoomProfile profile = profile(talk);
        String name = tuningName;
        Tuning tuning = name == null ? profile.tunings().get(0) : UsageException.reading(() -> profile.tuning(name));
        Optional<String> refusal = StepsBudget.refusal(profile.room(), tuning);
        if (refusal.isPresent()) {
            throw new UsageException(refusal.get());
        }
        Player known = playerName == null ? null : new PlayerFolder(room.folder()).load(playerName);
        List<PracticeRun> runs = known == null ? List.of() : known.runs();
        Course course = UsageException.reading(
                () -> wishes.wish().course(tuning, profile.room().name(), runs, courseSeed(runs.size())));
        Play play = new Play(profile, tuning, PathSettings.USUAL.muted(!go));
        Practise practise = UsageException.reading(() -> new Practise(play, course, wishes.noteSeconds));
        PracticeEnd end = new PracticeEnd(talk, room.folder(), play, wishes.wish(), saveAim, known);
        SourceOptions options = source.options(true, profile.room().instrument());
        PracticeTalk.Deafness deafness = new PracticeTalk.Deafness();
        try (WaysOut out = outs.open(talk, source.source(), profile, options, null);
                Cues cues = cues(talk, options, deafness);
                Rig rig = talk.log()
                        .following(
                                Rigs.open(
                                        source.source(),
                                        options,
                                        profile.room().instrument().shape(),
                                        out.all(),
                                        null),
                                source.source().text());
                Keys keys = new Keys(talk, parent().in());
                AtExit atExit = AtExit.run(() -> {
                    rig.close();
                    out.close();
                })) {
            PracticeTalk words = new PracticeTalk(
                    talk, wishes, cues, deafness, profile.room().pitch().zone(), course);
            talk.say(course.size() + " notes of tuning '" + tuning.name() + "': go straight to each and stop there"
                    + (go ? "" : "; the instrument is muted, press Enter to hear it"));
            PracticeSession session = new PracticeSession(rig, words, new PlayTalk(talk, source.source(), out.tone()));
            session.bind(keys, !go);
            try (AtExit keeping = AtExit.run(() -> end.onSignal(session.attempts()))) {
                int exit = session.lead(practise, keys);
                rig.close();
                out.close();
                if (!out.midiFileTrouble().isEmpty()) {
                    talk.warn("handspan: " + out.midiFileTrouble());
                }
                return end.of(session.attempts(), out.status(), exit);
            }
        }
    }

    private RoomProfile profile(Talk talk) throws UsageException, ProfileException {
        if (source.source().kind() == Source.Kind.TAKE) {
            throw new UsageException("practice with " + source.source().text()
                    + ": a recording can't look for notes, name a port or sim:NAME");
        }
        RoomProfile kept = room.load();
        Room tonight = kept.room().in(source.air(kept.room().air()));
        new InstrumentShelf(room.folder()).rebuiltSince(tonight).ifPresent(talk::warn);
        if (source.source().kind() == Source.Kind.SIMULATION) {
            source.told();
        }
        return outs.in(new RoomProfile(tonight, kept.tunings(), kept.level(), kept.send()));
    }

    /** Each run of a player goes another way; those of a simulation can be had again. */
    private long courseSeed(int runs) {
        return source.source().kind() == Source.Kind.SIMULATION ? source.seed + runs : Rigs.CLOCK.getAsLong();
    }

    /** What sounds the notes; where nothing can be heard that is said, and the names are shown. */
    private Cues cues(Talk talk, SourceOptions options, PracticeTalk.Deafness deafness) {
        if (!wishes.asking.sounds()) {
            return Cues.silent();
        }
        if (!options.realTime()) {
            deafness.begin();
            talk.say("with --fast no note sounds: the notes to find are shown by name");
            return Cues.silent();
        }
        talk.say("caution: turn monitors or headphones low before you listen; the notes never peak above -12 dBFS");
        return Cues.notes(trouble -> {
            deafness.begin();
            talk.warn(trouble);
        });
    }
}
