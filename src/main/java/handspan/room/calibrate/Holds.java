package handspan.room.calibrate;

import handspan.number.fit.SteadyValue;
import handspan.room.Hold;

/** Holds from what was held. */
final class Holds {
    private Holds() {}

    /**
     * A hold. Where the noise does not dither the sensor's step, the step's own uncertainty of {@code step / sqrt(12)}
     * comes on top (JCGM 100:2008, F.2.2.1: an even distribution over a resolution step).
     *
     * @param step asked for
     * @param value what was held
     * @param resolution step in which the sensor counts, in its physical unit; 0 where it is not known or not even
     */
    static Hold of(Step step, SteadyValue value, double resolution) {
        double stepDeviation = resolution / Math.sqrt(12);
        boolean dithered = value.noise().deviation() > resolution / 2;
        return new Hold(
                step.kind(),
                step.hand(),
                value.value(),
                dithered ? value.standardUncertainty() : Math.hypot(value.standardUncertainty(), stepDeviation),
                Math.max(value.noise().white(), stepDeviation),
                value.noise().kept());
    }
}
