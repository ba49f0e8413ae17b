package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;

/**
 * What the survey found about one channel.
 *
 * @param name the channel's label or position
 * @param spec what the sensor is
 * @param count readings seen, whether or not they held a value
 * @param heldCount readings in the still stretch
 * @param centre middle value of the still stretch, in the channel's unit
 * @param noise standard deviation in the still stretch, in the channel's unit
 * @param noiseMm the same in mm; NaN where the sensor does not measure a length
 * @param step the step in which the channel counts, in its unit
 * @param ratePerS readings a second
 * @param dropouts01 share of the still stretch without a reading
 * @param repeats01 share of readings equal to the one before
 * @param outliers readings of the still stretch that were rejected
 * @param verdict in a word
 * @param reason why, with figures
 * @param remedy what to do; empty when there is nothing to do
 */
public record ChannelReport(
        String name,
        ChannelSpec spec,
        int count,
        int heldCount,
        double centre,
        double noise,
        double noiseMm,
        double step,
        double ratePerS,
        double dropouts01,
        double repeats01,
        int outliers,
        Verdict verdict,
        String reason,
        String remedy) {}
