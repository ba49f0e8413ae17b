package handspan.show.scene;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.music.send.SendTarget;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;
import handspan.wiring.InstrumentFinder;
import handspan.wiring.NewRoom;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Arrival;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.HoldPurpose;
import handspan.wiring.evening.HoldTask;
import handspan.wiring.evening.Keeping;
import handspan.wiring.evening.Measuring;
import handspan.wiring.evening.Sounding;
import handspan.wiring.evening.Thought;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The holds of a simulated hall, looked at some thirty times a second of its own time: none is missed. */
public final class RehearsedHolds {
    private RehearsedHolds() {}

    /** What a window would be shown while they are taken, from the first prompt to the last. */
    public static List<EveningView> views() throws Exception {
        Source source = Source.parse("sim:hall");
        Instrument instrument = InstrumentFinder.ofSimulation("hall");
        List<EveningView> views = new ArrayList<>();
        try (Rig rig = Rigs.open(source, SourceOptions.USUAL.fast(), instrument.shape(), List.of(), null)) {
            CalibrationPlan plan = CalibrationPlan.of(instrument, OptionalDouble.empty(), OptionalDouble.empty());
            HoldTask task = new HoldTask(HoldPurpose.FRESH, plan, HoldRules.USUAL, instrument, Air.USUAL, 0);
            rig.submit(new Command.Calibrate(instrument, instrument.sensors(Air.USUAL), plan, HoldRules.USUAL));
            rig.follow(snapshot -> {
                views.add(view(source, task, snapshot));
                return !snapshot.done();
            });
        }
        return views;
    }

    private static EveningView view(Source source, HoldTask task, Snapshot snapshot) {
        return new EveningView(
                "",
                new Arrival(
                        List.of(),
                        true,
                        Optional.of(source),
                        SourceOptions.USUAL.fast(),
                        Optional.of(task.instrument()),
                        true,
                        List.of(),
                        ""),
                new Keeping(List.of(), "barn", Optional.empty(), false, "", ""),
                new Measuring(Optional.of(task), List.of(), Optional.empty(), ""),
                new Sounding(
                        List.of(SendTarget.parse(NewRoom.USUAL_TARGET)), Optional.empty(), List.of(), false, false, ""),
                Thought.none(),
                Optional.of(snapshot));
    }
}
