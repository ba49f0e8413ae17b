package handspan.command;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.StepKind;
import handspan.room.calibrate.Fit;
import handspan.room.calibrate.Outcome;
import handspan.wiring.TakeHolds;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A recorded calibration, fitted again.
 *
 * @param file the take
 * @param ratePerS lines a second, for takes without times
 * @param instrument that was recorded
 * @param air in which
 */
record CalibratedTake(Path file, OptionalDouble ratePerS, Instrument instrument, Air air) {
    /**
     * Fits a room to its holds.
     *
     * @param name of the room
     * @param talk to whom it is told
     * @param rulerMm true distances held at; empty when not by ruler
     * @param nearMm true distance of the near end, if known
     * @param farMm true distance of the far end, if known
     */
    Outcome fit(String name, Talk talk, List<Double> rulerMm, OptionalDouble nearMm, OptionalDouble farMm)
            throws UsageException, IOException {
        TakeHolds again = holds(rulerMm);
        if (again.holds().isEmpty()) {
            throw new UsageException(
                    "'" + file + "' marks no hold that was captured: record a calibration with"
                            + " 'handspan calibrate SOURCE --room NAME --record FILE', or calibrate from the instrument itself");
        }
        talk.say(again.holds().size() + " holds made again from " + file);
        List<Hold> holds = again.holds().stream()
                .map(hold -> withRuler(hold, nearMm, farMm))
                .toList();
        return Fit.fit(name, Takes.now(), instrument, air, again.ratePerS(), holds);
    }

    private TakeHolds holds(List<Double> rulerMm) throws UsageException, IOException {
        if (rulerMm.isEmpty()) {
            return TakeHolds.read(file, ratePerS, instrument, air);
        }
        try {
            return TakeHolds.lineByLine(file, ratePerS, instrument, air, rulerMm);
        } catch (IllegalArgumentException e) {
            throw new UsageException(String.valueOf(e.getMessage()));
        }
    }

    /** Marks do not carry the ruler distances of the two ends; the command line does. */
    private static Hold withRuler(Hold hold, OptionalDouble nearMm, OptionalDouble farMm) {
        if (hold.hand() != HandRole.PITCH) {
            return hold;
        }
        OptionalDouble ruler =
                hold.kind() == StepKind.NEAR ? nearMm : hold.kind() == StepKind.FAR ? farMm : OptionalDouble.empty();
        return ruler.isPresent() ? hold.at(ruler.getAsDouble()) : hold;
    }
}
