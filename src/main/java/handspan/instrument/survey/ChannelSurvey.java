package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.number.fit.Noise;
import handspan.number.fit.Robust;
import java.util.Optional;

/**
 * Measures one channel: first what is no reading, then where the hand was still, then each of the sensor's own values
 * once, and from these noise, drift, wobble and the rest.
 *
 * @param spec what the sensor is
 * @param sensor the same, in the room's air
 * @param measure how large its numbers are
 */
record ChannelSurvey(ChannelSpec spec, Sensor sensor, Measure measure) {
    /** Least that half-second medians of a still hand may differ, mm. */
    private static final double SLACK_MM = 4;

    /** The same for channels that are no length, counts of 10 bits. */
    private static final double SLACK_COUNTS = 6;

    /** A wobble seen in a swinging stretch counts as one when it is this share of the scatter. */
    private static final double SWING01 = 0.4;

    /** A swinging stretch is taken only when it is so much longer than the still one. */
    private static final double LONGER = 1.5;

    static ChannelSurvey of(ChannelSpec spec, Sensor sensor) {
        return new ChannelSurvey(spec, sensor, Measure.of(spec, sensor));
    }

    ChannelReport report(Series lines, Pace pace) {
        return Judgement.of(spec, sensor, findings(lines, pace));
    }

    private Findings findings(Series lines, Pace pace) {
        Sentinels sentinels = Sentinels.in(lines, spec, measure);
        Series series = lines.without(sentinels::isLearned);
        double[] all = series.readings();
        Optional<Coarseness> coarseness = Coarseness.in(all, spec, measure);
        double step = coarseness.map(Coarseness::step).orElseGet(() -> Robust.smallestStep(all));
        StillStretch stretch = stretch(series, step, pace);
        Repeats repeats = Repeats.in(series, stretch);
        Held held = Held.of(series, stretch, repeats);
        int heldCount = series.readings(stretch.from(), stretch.to()).length;
        if (heldCount < 2 || held.size() < 2) {
            return Findings.withoutHand(series.size(), pace, sentinels);
        }
        Noise noise = Noise.of(held.values, step);
        Optional<Beating> beating = beating(series, stretch, step);
        Optional<Clutter> clutter = beating.isPresent()
                ? Optional.empty()
                : Clutter.in(series, stretch, noise.median(), noise.deviation(), measure);
        return new Findings(
                series.size(),
                heldCount,
                noise,
                measure.isLength() ? measure.size(noise.deviation()) : Double.NaN,
                pace,
                DropoutRuns.in(series, stretch.from(), stretch.to()),
                repeats,
                sentinels,
                Drift.in(held, step),
                beating.isPresent() ? Optional.empty() : wobble(held, step),
                beating,
                clutter,
                coarseness);
    }

    /** Where the hand was still; a wobble or two levels in turn make it look otherwise. */
    private StillStretch stretch(Series series, double step, Pace pace) {
        double slack = measure.inUnit(SLACK_MM, SLACK_COUNTS);
        double ratePerS = Math.max(1, pace.ratePerS());
        StillStretch still = StillStretch.in(series, ratePerS, slack);
        StillStretch swinging = SwingingStretch.in(series, ratePerS, slack);
        if (swinging.to() - swinging.from() <= LONGER * (still.to() - still.from())) {
            return still;
        }
        boolean swings = beating(series, swinging, step).isPresent()
                || wobble(Held.of(series, swinging, new Repeats(1, 0, 0)), step)
                        .filter(wobble -> wobble.share01() > SWING01)
                        .isPresent();
        return swings ? swinging : still;
    }

    private Optional<Beating> beating(Series series, StillStretch stretch, double step) {
        return Beating.in(series.readings(stretch.from(), stretch.to()), step, measure);
    }

    private Optional<Wobble> wobble(Held held, double step) {
        return Wobble.in(held, step, !measure.isLength() && spec.kind() != SensorKind.UNSCALED);
    }
}
