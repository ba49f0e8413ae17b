package handspan.room.calibrate;

import handspan.number.fit.SteadyValue;
import handspan.room.Hold;

/** Holds from what was held. */
final class Holds {
    private Holds() {}

    /** A hold; its noise is the fast part, never under that of the sensor's step. */
    static Hold of(Step step, SteadyValue value) {
        return new Hold(
                step.kind(),
                step.hand(),
                value.value(),
                value.standardUncertainty(),
                Math.max(value.noise().white(), value.noise().step() / Math.sqrt(12)),
                value.noise().kept());
    }
}
