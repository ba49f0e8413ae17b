package handspan.instrument.survey;

import handspan.instrument.line.LineShape.Nature;
import handspan.instrument.sensor.ChannelSpec;

/**
 * What a channel probably is.
 *
 * @param spec the proposal
 * @param sure whether the evidence is enough to go on without asking
 * @param evidence why, in words
 * @param nature what it does from line to line, as far as was seen
 */
public record ChannelGuess(ChannelSpec spec, boolean sure, String evidence, Nature nature) {}
