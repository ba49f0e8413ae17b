package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;

/**
 * What the survey found about one channel.
 *
 * @param spec what the sensor is
 * @param findings what was measured
 * @param verdict in a word
 * @param reason why, with figures
 * @param remedy what to do; empty when there is nothing to do
 */
public record ChannelReport(ChannelSpec spec, Findings findings, Verdict verdict, String reason, String remedy) {
    /** The channel's label or position. */
    public String name() {
        return spec.channel();
    }

    /** Lines seen, whether or not they held a value. */
    public int count() {
        return findings.count();
    }

    /** Readings in the still stretch. */
    public int heldCount() {
        return findings.heldCount();
    }

    /** Middle value of the still stretch, in the channel's unit; NaN where nothing was held. */
    public double centre() {
        return findings.noise().median();
    }

    /** Standard deviation in the still stretch, in the channel's unit; NaN where nothing was held. */
    public double noise() {
        return findings.noise().deviation();
    }

    /** The same in mm; NaN where the sensor does not measure a length. */
    public double noiseMm() {
        return findings.noiseMm();
    }

    /** The step in which the channel counts, in its unit; 0 where all readings were equal. */
    public double step() {
        return findings.noise().step();
    }

    /** Lines a second. */
    public double ratePerS() {
        return findings.pace().ratePerS();
    }

    /** Share of the still stretch without a reading. */
    public double dropouts01() {
        return findings.dropouts().share01();
    }

    /** Share of readings equal to the one before. */
    public double repeats01() {
        return findings.repeats().equal01();
    }

    /** Readings of the still stretch that were rejected. */
    public int outliers() {
        return findings.noise().rejected();
    }
}
