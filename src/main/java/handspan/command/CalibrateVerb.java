package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.LinkException;
import handspan.live.session.LinkState;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.room.Hold;
import handspan.room.StepKind;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.Fit;
import handspan.room.calibrate.HoldRules;
import handspan.room.calibrate.Outcome;
import handspan.room.calibrate.Step;
import handspan.wiring.Recording;
import handspan.wiring.Source;
import handspan.wiring.TakeHolds;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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
    SourceArguments source = new SourceArguments();

    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--near-mm", paramLabel = "MM", description = "true distance of the near end, by ruler")
    @Nullable
    Double nearMm;

    @Option(names = "--far-mm", paramLabel = "MM", description = "true distance of the far end, by ruler")
    @Nullable
    Double farMm;

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

    @Option(names = "--record", paramLabel = "FILE", description = "records the calibration as a take")
    @Nullable
    Path record;

    @Option(names = "--replace", description = "replace a room that is there; its tunings, level and sends are kept")
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
        folder.fileOf(room.room);
        if (folder.has(room.room) && !replace) {
            throw new ProfileException(
                    ProfileException.Kind.NOT_WRITABLE,
                    "room '" + room.room + "' is there already: give --replace to calibrate it again, or another name");
        }
        if ((nearMm == null) != (farMm == null)) {
            throw new UsageException("--near-mm and --far-mm belong together: give both, or neither");
        }
        HoldRules rules = UsageException.reading(() -> HoldRules.USUAL.lasting(holdSeconds));
        NewRoom newRoom = UsageException.reading(() -> new NewRoom(folder, room.room, targets));
        Air air = source.air();
        Outcome outcome;
        if (source.source().kind() == Source.Kind.TAKE) {
            outcome = fromTake(talk, air);
        } else {
            Optional<Outcome> led = led(talk, air, rules);
            if (led.isEmpty()) {
                talk.event("result", Map.of("exitCode", Exit.NO, "saved", false, "error", "time-out or link lost"));
                return Exit.NO;
            }
            outcome = led.get();
        }
        return conclude(talk, outcome, newRoom);
    }

    private Optional<Outcome> led(Talk talk, Air air, HoldRules rules)
            throws UsageException, LinkException, IOException, ProfileException {
        try (Recording recording = openRecording();
                Known known = Known.open(source, talk, true, recording);
                Keys keys = Keys.read(talk, parent().in())) {
            Instrument instrument = known.instrument();
            CalibrationPlan plan = CalibrationPlan.of(instrument, optional(nearMm), optional(farMm));
            talk.say("calibration of '" + room.room + "': " + plan.steps().size() + " steps, each captured by itself");
            known.rig()
                    .submit(new handspan.live.session.Command.Calibrate(
                            instrument, instrument.sensors(air), plan, rules));
            keys.on("u", () -> known.rig().submit(new handspan.live.session.Command.Undo()));
            long startNanos = known.rig().snapshot().timeNanos();
            EventReader events = new EventReader();
            Snapshot last = known.rig().follow(snapshot -> {
                events.fresh(snapshot).forEach(event -> tell(talk, event));
                return !snapshot.done() && Nanos.toSeconds(snapshot.timeNanos() - startNanos) < timeoutSeconds;
            });
            events.fresh(last).forEach(event -> tell(talk, event));
            if (!(last.activity() instanceof ActivityView.Calibrating done) || !done.done()) {
                talk.warn("calibration not finished within " + Figures.text(timeoutSeconds, 0) + " s"
                        + (last.link() == LinkState.LOST ? ": " + last.linkReason() : ""));
                return Optional.empty();
            }
            return Optional.of(Fit.fit(
                    room.room,
                    Takes.now(),
                    instrument,
                    air,
                    done.ratePerS(),
                    done.holds(),
                    optional(nearMm),
                    optional(farMm)));
        }
    }

    private Outcome fromTake(Talk talk, Air air) throws UsageException, LinkException, IOException, ProfileException {
        Instrument instrument;
        try (Known known = Known.open(source, talk, true, null)) {
            instrument = known.instrument();
        }
        Path file = Path.of(source.source().name());
        TakeHolds again = TakeHolds.read(file, source.options(false).ratePerS(), instrument, air);
        if (again.holds().isEmpty()) {
            throw new UsageException(
                    "'" + file + "' marks no hold that was captured: record a calibration with"
                            + " 'handspan calibrate SOURCE --room NAME --record FILE', or calibrate from the instrument itself");
        }
        talk.say(again.holds().size() + " holds made again from " + file);
        return Fit.fit(
                room.room,
                Takes.now(),
                instrument,
                air,
                again.ratePerS(),
                again.holds(),
                optional(nearMm),
                optional(farMm));
    }

    private int conclude(Talk talk, Outcome outcome, NewRoom newRoom) throws ProfileException {
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
        RoomProfile profile = newRoom.keep(outcome.room().get());
        ObjectNode summary = RoomSummary.node(profile);
        talk.say("kept as " + room.folder().fileOf(room.room));
        RoomSummary.lines(profile).forEach(talk::say);
        result.put("exitCode", Exit.DONE);
        result.put("saved", true);
        result.put("file", room.folder().fileOf(room.room).toString());
        result.put("room", summary);
        talk.event("result", result);
        return Exit.DONE;
    }

    private static void tell(Talk talk, Event event) {
        if (event.what() instanceof Event.Asked asked) {
            talk.say("-> " + asked.step().prompt());
            talk.event("step", fields(asked.step()));
        } else if (event.what() instanceof Event.Captured captured) {
            Map<String, Object> fields = fields(captured.step());
            captured.hold().ifPresent(hold -> {
                fields.put("value", hold.physical());
                fields.put("standardUncertainty", hold.standardUncertainty());
                fields.put("noise", hold.noise());
                fields.put("count", hold.count());
            });
            talk.say("   captured"
                    + captured.hold()
                            .map(hold -> words(hold, captured.step()))
                            .orElse(": nothing there, as it should be"));
            talk.event("captured", fields);
        } else if (event.what() instanceof Event.NotYet notYet) {
            Map<String, Object> fields = fields(notYet.step());
            fields.put("reason", notYet.reason());
            talk.say("   not yet: " + notYet.reason());
            talk.event("refused", fields);
        } else if (event.what() instanceof Event.Linked linked && linked.state() == LinkState.LOST) {
            talk.say("link lost: " + linked.reason() + "; looking for it");
            talk.event("link", Map.of("state", linked.state().word(), "reason", linked.reason()));
        }
    }

    private static String words(Hold hold, Step step) {
        boolean light = step.kind() == StepKind.OPEN || step.kind() == StepKind.MID || step.kind() == StepKind.COVERED;
        int decimals = light ? 3 : 1;
        return ": " + Figures.text(hold.physical(), decimals) + " +- "
                + Figures.text(hold.standardUncertainty(), decimals + 1)
                + (light ? " in log light" : " mm") + ", noise " + Figures.text(hold.noise(), decimals + 1);
    }

    private static Map<String, Object> fields(Step step) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("step", step.kind().word());
        fields.put("hand", step.hand().word());
        step.mm().ifPresent(mm -> fields.put("mm", mm));
        return fields;
    }

    private @Nullable Recording openRecording() throws IOException {
        Path file = record;
        if (file == null) {
            return null;
        }
        return Takes.into(file, source);
    }

    private static OptionalDouble optional(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
