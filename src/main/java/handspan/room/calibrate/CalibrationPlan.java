package handspan.room.calibrate;

import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.SensorKind;
import handspan.room.HandRole;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The steps of a calibration as data.
 *
 * @param steps in order, at least one
 */
public record CalibrationPlan(List<Step> steps) {
    /** Copies the steps. */
    public CalibrationPlan {
        steps = List.copyOf(steps);
    }

    /**
     * The usual steps for an instrument: rest, both ends of the pitch zone, then the level hand's own.
     *
     * @param instrument which channels it has
     * @param nearMm ruler distance of the near end, where known
     * @param farMm ruler distance of the far end, where known
     */
    public static CalibrationPlan of(Instrument instrument, OptionalDouble nearMm, OptionalDouble farMm) {
        List<Step> steps = new ArrayList<>();
        steps.add(Step.of(StepKind.REST, HandRole.PITCH));
        steps.add(new Step(StepKind.NEAR, HandRole.PITCH, nearMm));
        steps.add(new Step(StepKind.FAR, HandRole.PITCH, farMm));
        var level = instrument.level();
        if (level != null && level.kind() == SensorKind.PHOTORESISTOR) {
            steps.add(Step.of(StepKind.OPEN, HandRole.LEVEL));
            steps.add(Step.of(StepKind.MID, HandRole.LEVEL));
            steps.add(Step.of(StepKind.COVERED, HandRole.LEVEL));
        } else if (level != null) {
            steps.add(Step.of(StepKind.NEAR, HandRole.LEVEL));
            steps.add(Step.of(StepKind.FAR, HandRole.LEVEL));
        }
        return new CalibrationPlan(steps);
    }
}
