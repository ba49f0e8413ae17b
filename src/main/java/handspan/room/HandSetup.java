package handspan.room;

import handspan.instrument.sensor.ChannelSpec;

/**
 * All that was captured for one hand in a room.
 *
 * @param channel which number of the line, and what sensor
 * @param response from the sensor to mm
 * @param zone where the hand plays
 * @param noiseMm fast noise of one reading at the worst hold, mm
 * @param scaledTravel whether the mm are the hand's own travel only in name (light and unscaled sensors without ruler)
 */
public record HandSetup(ChannelSpec channel, Response response, Zone zone, double noiseMm, boolean scaledTravel) {
    /** Checks the noise. */
    public HandSetup {
        if (!(noiseMm >= 0) || !Double.isFinite(noiseMm)) {
            throw new IllegalArgumentException("noise of " + noiseMm + " mm (0 or more)");
        }
    }
}
