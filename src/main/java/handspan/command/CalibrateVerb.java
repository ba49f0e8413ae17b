package handspan.command;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.LinkException;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.room.Aim;
import handspan.room.Room;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.Fit;
import handspan.room.calibrate.HoldRules;
import handspan.room.calibrate.Outcome;
import handspan.room.calibrate.Refit;
import handspan.wiring.InstrumentShelf;
import handspan.wiring.NewRoom;
import handspan.wiring.Recording;
import handspan.wiring.Source;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Leads through a calibration and keeps the room. */
@Command(
        name = "calibrate",
        description =
                "leads through a calibration: rest, near, far, then the level hand; captures each hold by itself and"
                        + " keeps the room")
final class CalibrateVerb extends Verb {
    @Mixin
    SourceArguments source = new OneSource();

    @Mixin
    RoomArguments room = new RoomArguments();

    @Mixin
    CueArguments cues = new CueArguments();

    @Mixin
    PlaceArguments places = new PlaceArguments();

    @Option(
            names = "--from",
            paramLabel = "ROOM",
            description = "quick re-fit: keep that room's responses, take only ends and light again")
    @Nullable
    String fromRoom;

    @Option(
            names = "--rebuilt",
            description = "the instrument was rebuilt: its revision rises by one, and rooms made before ask for a new"
                    + " calibration")
    boolean rebuilt;

    @Option(names = "--light-only", description = "with --from: take only the open light again")
    boolean lightOnly;

    @Option(
            names = "--hold",
            paramLabel = "S",
            defaultValue = "2",
            description = "seconds a hand must be still" + " (${DEFAULT-VALUE})")
    double holdSeconds;

    @Option(
            names = "--timeout",
            paramLabel = "S",
            defaultValue = "180",
            description = "gives up after this long" + " (${DEFAULT-VALUE})")
    double timeoutSeconds;

    @Option(
            names = "--record",
            paramLabel = "FILE",
            description = "records the calibration as a take; one that is there is moved first")
    @Nullable
    Path record;

    @Option(
            names = "--replace",
            description = "replace a room that is there; its tunings, level, sends and aim are kept")
    boolean replace;

    @Option(
            names = "--send",
            paramLabel = "TARGET",
            description = "where the room sends: udp:HOST:PORT (default" + " udp:127.0.0.1:9000)")
    @Nullable
    List<String> targets;

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        ProfileFolder folder = room.folder();
        folder.requireName(room.room);
        String from = fromRoom;
        boolean again = from != null && from.equals(room.room);
        if (folder.has(room.room) && !replace && !again) {
            throw new ProfileException(
                    ProfileException.Kind.NOT_WRITABLE,
                    "room '" + room.room + "' is there already: give --replace to calibrate it again, or another name");
        }
        if (folder.has(room.room)) {
            // one that can't be read is said before hands are held, not after
            folder.load(room.room);
        }
        checkOptions();
        HoldRules rules = UsageException.reading(() -> HoldRules.USUAL.lasting(holdSeconds));
        NewRoom newRoom = UsageException.reading(() -> new NewRoom(folder, room.room, targets));
        Optional<Outcome> outcome;
        if (from != null) {
            outcome = refitted(talk, folder.load(from), rules);
        } else if (source.source().kind() == Source.Kind.TAKE) {
            outcome = Optional.of(fromTake(talk));
        } else {
            outcome = calibrated(talk, rules);
        }
        if (outcome.isEmpty()) {
            talk.event("result", Map.of("exitCode", Exit.NO, "saved", false, "error", "time-out or link lost"));
            return Exit.NO;
        }
        RoomProfile before = from == null ? null : folder.load(from);
        Aim known = folder.has(room.room) ? folder.load(room.room).room().aim() : Aim.ASSUMED;
        return new Conclusion(talk, folder.fileOf(room.room)).of(outcome.get().knowing(known), newRoom, before);
    }

    private void checkOptions() throws UsageException {
        places.check(fromRoom != null);
        if (rebuilt && fromRoom != null) {
            throw new UsageException(
                    "--rebuilt with --from: a rebuilt instrument's response must be taken anew, leave out --from");
        }
        if (lightOnly && places.aim) {
            throw new UsageException("--aim with --light-only: there is no place to reach for, leave out --light-only");
        }
        if (places.aim && !places.ruler.isEmpty() && source.source().kind() == Source.Kind.TAKE) {
            throw new UsageException("--aim with --ruler for a recorded table: it has no reaches, leave out --aim");
        }
        if (lightOnly && fromRoom == null) {
            throw new UsageException("--light-only goes with --from ROOM");
        }
    }

    private Optional<Outcome> calibrated(Talk talk, HoldRules rules)
            throws UsageException, LinkException, IOException, ProfileException {
        Air air = source.air();
        try (Recording recording = openRecording(talk);
                RecordingTalk taken = new RecordingTalk(talk, recording, "calibrating");
                Known known = Known.open(source, talk, true, recording);
                Keys keys = new Keys(talk, parent().in())) {
            Instrument instrument = new InstrumentShelf(room.folder()).known(known.instrument(), rebuilt);
            CalibrationPlan plan = places.plan(instrument);
            talk.say("calibration of '" + room.room + "': " + plan.steps().size() + " steps, each captured by itself");
            explainReaches(talk);
            return new HoldSession(talk, air, rules, timeoutSeconds, cues.open(source, talk))
                    .lead(known, plan, keys, taken::look)
                    .map(done -> Fit.fit(room.room, Takes.now(), instrument, air, done.ratePerS(), done.holds()));
        }
    }

    private Optional<Outcome> refitted(Talk talk, RoomProfile before, HoldRules rules)
            throws UsageException, LinkException, IOException, ProfileException {
        Room kept = before.room().in(source.air(before.room().air()));
        Optional<String> newer = new InstrumentShelf(room.folder()).rebuiltSince(kept);
        if (newer.isPresent()) {
            throw new UsageException(newer.get());
        }
        CalibrationPlan plan = places.reaching(UsageException.reading(() -> Refit.plan(kept, lightOnly)));
        try (Recording recording = openRecording(talk);
                RecordingTalk taken = new RecordingTalk(talk, recording, "calibrating");
                Known known = Known.open(source, kept.instrument(), talk, recording);
                Keys keys = new Keys(talk, parent().in())) {
            talk.say("re-fit of '" + kept.name() + "' as '" + room.room + "': "
                    + plan.steps().size() + " steps; how the sensors respond is kept");
            explainReaches(talk);
            return new HoldSession(talk, kept.air(), rules, timeoutSeconds, cues.open(source, talk))
                    .lead(known, plan, keys, taken::look)
                    .map(done -> Refit.of(room.room, Takes.now(), kept, done.holds()));
        }
    }

    private void explainReaches(Talk talk) {
        if (places.aim) {
            talk.say(
                    "the last " + CalibrationPlan.REACHES + " steps are reaches: go straight to the place that is asked"
                            + " for, stop there for a moment, and do not correct; no ruler");
        }
    }

    private Outcome fromTake(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        Air air = source.air();
        Instrument instrument;
        try (Known known = Known.open(source, talk, true, null)) {
            instrument = new InstrumentShelf(room.folder()).known(known.instrument(), rebuilt);
        }
        CalibratedTake take = new CalibratedTake(
                Path.of(source.source().name()), source.options(false).ratePerS(), instrument, air);
        Outcome outcome = take.fit(room.room, talk, places.ruler, places.nearMm(), places.farMm());
        if (places.aim && outcome.room().isPresent() && !outcome.aimMeasured()) {
            talk.warn("the recording marks no reaches (calibrate --aim makes them): the aim stays as it was");
        }
        return outcome;
    }

    private @Nullable Recording openRecording(Talk talk) throws IOException {
        Path file = record;
        if (file == null) {
            return null;
        }
        return Takes.into(file, source, talk);
    }
}
