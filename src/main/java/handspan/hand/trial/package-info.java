/**
 * What smoothing does to a hand: gestures, sensors that blur them, and what comes out, measured. In millimetres only.
 *
 * <p>Start reading at {@link handspan.hand.trial.Feel}, the one class that measures.
 */
@NullMarked
package handspan.hand.trial;

import org.jspecify.annotations.NullMarked;
