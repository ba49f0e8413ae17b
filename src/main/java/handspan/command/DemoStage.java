package handspan.command;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.survey.ChannelReport;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.LinkException;
import handspan.live.session.Snapshot;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.Fit;
import handspan.room.calibrate.HoldRules;
import handspan.room.calibrate.Outcome;
import handspan.wiring.Heard;
import handspan.wiring.InstrumentFinder;
import handspan.wiring.NewRoom;
import handspan.wiring.Recording;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

/** The simulated evening of the demo, up to the point where the room is known. Runs as fast as the machine can. */
final class DemoStage {
    /** The invented venue's name as a room. */
    static final String ROOM = "saltmill-hall";

    private static final double SURVEY_SECONDS = 10;

    private final Source source = Source.parse("sim:hall");
    private final SourceOptions options;
    private final Path out;

    DemoStage(long seed, Path out) {
        this.options = new SourceOptions(Instrument.USUAL_BAUD, OptionalDouble.empty(), seed, false);
        this.out = out;
    }

    Source source() {
        return source;
    }

    /** As fast as the machine can. */
    SourceOptions fast() {
        return options;
    }

    /** By the clock. */
    SourceOptions byTheClock() {
        return new SourceOptions(options.baud(), options.ratePerS(), options.seed(), true);
    }

    /** Where its room is kept. */
    ProfileFolder rooms() {
        return new ProfileFolder(out.resolve("profiles"));
    }

    /** The recording of the calibration. */
    Path take() {
        return out.resolve("calibration.take");
    }

    List<ChannelReport> survey() throws LinkException, IOException {
        Instrument instrument = InstrumentFinder.ofSimulation(source.name());
        try (Rig rig = Rigs.open(source, options, null, List.of(), null)) {
            rig.submit(new Command.Survey(instrument.channels(), instrument.sensors(Air.USUAL)));
            rig.follow(snapshot -> !(snapshot.activity() instanceof ActivityView.Surveying surveying)
                    || surveying.seconds() < SURVEY_SECONDS);
            rig.submit(new Command.Stop());
            return rig.snapshot().activity() instanceof ActivityView.Surveying surveyed
                    ? surveyed.reports()
                    : List.of();
        }
    }

    RoomProfile calibrate() throws LinkException, IOException, ProfileException {
        Outcome outcome;
        try (Recording recording = Recording.into(take(), Takes.now(), "Willowreach", source, options.baud());
                Rig rig = Rigs.open(source, options, null, List.of(), recording)) {
            Instrument instrument = InstrumentFinder.ofSimulation(source.name())
                    .withShape(Heard.on(rig).orElseThrow().shape());
            CalibrationPlan plan = CalibrationPlan.of(instrument, OptionalDouble.empty(), OptionalDouble.empty());
            rig.submit(new Command.Calibrate(instrument, instrument.sensors(Air.USUAL), plan, HoldRules.USUAL));
            Snapshot last = rig.follow(snapshot -> !snapshot.done());
            ActivityView.Calibrating done = (ActivityView.Calibrating) last.activity();
            outcome = Fit.fit(ROOM, Takes.now(), instrument, Air.USUAL, done.ratePerS(), done.holds());
        }
        Room room = outcome.room()
                .orElseThrow(() -> new LinkException(
                        LinkException.Kind.REFUSED,
                        "the simulated calibration was refused: " + String.join("; ", outcome.reasons())));
        ProfileFolder folder = rooms();
        RoomProfile first = new NewRoom(folder, ROOM, null).first(room);
        // the passage is written for this one, whatever the adviser would start with
        RoomProfile profile = first.with(Tuning.usual().withScale(Scales.named("minor-pentatonic")));
        folder.save(profile);
        return profile;
    }
}
