package handspan.room;

import handspan.instrument.sensor.ChannelSpec;
import org.jspecify.annotations.Nullable;

/**
 * All that was captured for one hand in a room.
 *
 * @param channel which number of the line, and what sensor
 * @param response from the sensor to mm
 * @param zone where the hand plays
 * @param noiseMm fast noise of one reading at the worst hold, mm
 * @param scaledTravel whether the mm are the hand's own travel only in name (light and unscaled sensors without ruler)
 * @param stepMm step in which the sensor counts, mm, where it is coarsest; 0 where none was seen
 * @param fit how well the response fits the ruler holds; null where the two ends alone made it
 */
public record HandSetup(
        ChannelSpec channel,
        Response response,
        Zone zone,
        double noiseMm,
        boolean scaledTravel,
        double stepMm,
        @Nullable FitQuality fit) {
    /** Checks noise and step. */
    public HandSetup {
        if (!(noiseMm >= 0) || !Double.isFinite(noiseMm)) {
            throw new IllegalArgumentException("noise of " + noiseMm + " mm (0 or more)");
        }
        if (!(stepMm >= 0) || !Double.isFinite(stepMm)) {
            throw new IllegalArgumentException("step of " + stepMm + " mm (0 or more)");
        }
    }

    /** A hand set up by its two ends alone. */
    public HandSetup(ChannelSpec channel, Response response, Zone zone, double noiseMm, boolean scaledTravel) {
        this(channel, response, zone, noiseMm, scaledTravel, null);
    }

    /** A hand whose sensor showed no step. */
    public HandSetup(
            ChannelSpec channel,
            Response response,
            Zone zone,
            double noiseMm,
            boolean scaledTravel,
            @Nullable FitQuality fit) {
        this(channel, response, zone, noiseMm, scaledTravel, 0, fit);
    }

    /** The same hand, by a sensor that counts in steps. */
    public HandSetup inSteps(double newStepMm) {
        return new HandSetup(channel, response, zone, noiseMm, scaledTravel, newStepMm, fit);
    }

    /** The same hand with another response and zone, for example on another evening. */
    public HandSetup with(Response newResponse, Zone newZone) {
        return new HandSetup(channel, newResponse, newZone, noiseMm, scaledTravel, stepMm, fit);
    }
}
