/**
 * From a moving hand to a room: steps as data, holds, one pure fit.
 *
 * <p>Start reading at {@link handspan.room.calibrate.Calibration}, then {@link handspan.room.calibrate.Fit}.
 */
@NullMarked
package handspan.room.calibrate;

import org.jspecify.annotations.NullMarked;
