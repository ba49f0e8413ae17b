package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.room.Hold;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TakeHoldsTest {
    private static final double TOLERANCE = 1e-9;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"hall", "echo", "two-flight"})
    void aRecordedCalibrationGivesTheSameHoldsAgain(String name) throws Exception {
        Path take = folder.resolve("calibration.take");
        Instrument instrument = InstrumentFinder.ofSimulation(name);
        List<Hold> live;
        try (Recording tap = Recording.into(take, "2026-01-01", "reed", Source.parse("sim"), 115_200);
                Rig rig = Rigs.open(Source.parse("sim:" + name), SourceOptions.USUAL.fast(), null, List.of(), tap)) {
            CalibrationPlan plan = CalibrationPlan.of(instrument, OptionalDouble.empty(), OptionalDouble.empty());
            rig.submit(new Command.Calibrate(instrument, instrument.sensors(Air.USUAL), plan, HoldRules.USUAL));
            Snapshot last = rig.follow(snapshot -> !snapshot.done());
            live = ((ActivityView.Calibrating) last.activity()).holds();
        }
        TakeHolds again = TakeHolds.read(take, OptionalDouble.empty(), instrument, Air.USUAL);
        assertTrue(live.size() >= 4, "" + live);
        assertEquals(live.size(), again.holds().size());
        for (int i = 0; i < live.size(); i++) {
            assertEquals(live.get(i).kind(), again.holds().get(i).kind());
            assertEquals(live.get(i).hand(), again.holds().get(i).hand());
            assertEquals(live.get(i).physical(), again.holds().get(i).physical(), TOLERANCE);
            assertEquals(live.get(i).count(), again.holds().get(i).count());
        }
    }
}
