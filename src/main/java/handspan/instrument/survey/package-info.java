/**
 * Are the sensors healthy in this room: rate, noise, dropouts, and which channel is what.
 *
 * <p>Start reading at {@link handspan.instrument.survey.Survey}.
 */
@NullMarked
package handspan.instrument.survey;

import org.jspecify.annotations.NullMarked;
