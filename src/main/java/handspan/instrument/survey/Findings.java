package handspan.instrument.survey;

import handspan.number.fit.Noise;
import java.util.Optional;

/**
 * What was measured of one channel, before any judgement. Figures are in the channel's unit unless they say otherwise.
 *
 * @param count lines seen, whether or not they held a value
 * @param heldCount readings in the still stretch
 * @param noise of the still stretch, each of the sensor's own values once; all NaN where nothing was held
 * @param noiseMm its deviation in mm; NaN where the sensor does not measure a length
 * @param pace how lines come
 * @param dropouts readings missing in the still stretch
 * @param repeats whether the sensor is slower than the lines
 * @param sentinels numbers that mean no reading
 * @param drift slow part of the still stretch, where it was long enough
 * @param wobble an even swing
 * @param beating two levels in turn
 * @param clutter something else in the beam
 * @param coarseness steps so large that they are heard
 */
public record Findings(
        int count,
        int heldCount,
        Noise noise,
        double noiseMm,
        Pace pace,
        DropoutRuns dropouts,
        Repeats repeats,
        Sentinels sentinels,
        Optional<Drift> drift,
        Optional<Wobble> wobble,
        Optional<Beating> beating,
        Optional<Clutter> clutter,
        Optional<Coarseness> coarseness) {
    /** Of a channel over which no hand was held. */
    static Findings withoutHand(int count, Pace pace, Sentinels sentinels) {
        Noise none = new Noise(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, 0, 0);
        return new Findings(
                count,
                0,
                none,
                Double.NaN,
                pace,
                DropoutRuns.ALL,
                new Repeats(1, 0, 0),
                sentinels,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
