/**
 * What a board's numbers mean: sensor kinds, their laws and their "no reading".
 *
 * <p>Start reading at {@link handspan.instrument.sensor.Sensor}.
 */
@NullMarked
package handspan.instrument.sensor;

import org.jspecify.annotations.NullMarked;
