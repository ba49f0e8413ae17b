/**
 * A simulated instrument: a player's two hands, the sensors that see them, and the board that prints lines.
 *
 * <p>It knows the true hand, so whatever is worked out from its lines can be held against the truth. Its laws are
 * written from data sheets and papers and share nothing with the code that reads instruments. Everything is seeded and
 * time is an argument: the same seed and the same cues at the same times give the same bytes.
 *
 * <p>Start reading at SimulatedInstruments, then SimulatedBoard and SimulatedHand.
 */
@NullMarked
package handspan.outside.simulate;

import org.jspecify.annotations.NullMarked;
