package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;

/**
 * What a channel probably is.
 *
 * @param spec the proposal
 * @param sure whether the evidence is enough to go on without asking
 * @param evidence why, in words
 */
public record ChannelGuess(ChannelSpec spec, boolean sure, String evidence) {}
