package handspan.room.calibrate;

import handspan.number.fit.SteadyValue;
import handspan.room.Hold;
import java.util.List;

/** Holds from what was held. */
final class Holds {
    private Holds() {}

    /** A hold; its noise is the fast part, never under that of the sensor's step. */
    static Hold of(Step step, SteadyValue value) {
        return step.with(Hold.of(
                step.kind(),
                step.hand(),
                value.value(),
                value.standardUncertainty(),
                Math.max(value.noise().white(), value.noise().step() / Math.sqrt(12)),
                value.noise().kept()));
    }

    /** What they read, in the sensor's physical unit. */
    static double[] physical(List<Hold> holds) {
        return holds.stream().mapToDouble(Hold::physical).toArray();
    }

    /** Where they were by ruler, mm. */
    static double[] rulerMm(List<Hold> holds) {
        return holds.stream().mapToDouble(hold -> hold.mm().orElseThrow()).toArray();
    }
}
