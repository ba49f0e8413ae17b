package handspan.room;

import handspan.hand.smooth.SensorNoise;
import handspan.instrument.sensor.ChannelSpec;
import org.jspecify.annotations.Nullable;

/**
 * All that was captured for one hand in a room.
 *
 * @param channel which number of the line, and what sensor
 * @param response from the sensor to mm
 * @param zone where the hand plays
 * @param noise fast noise of one reading along the distance
 * @param scaledTravel whether the mm are the hand's own travel only in name (light and unscaled sensors without ruler)
 * @param stepMm step in which the sensor counts, mm, where it is coarsest; 0 where none was seen
 * @param fit how well the response fits the ruler holds; null where the two ends alone made it
 */
public record HandSetup(
        ChannelSpec channel,
        Response response,
        Zone zone,
        SensorNoise noise,
        boolean scaledTravel,
        double stepMm,
        @Nullable FitQuality fit) {
    /** Checks the step. */
    public HandSetup {
        if (!(stepMm >= 0) || !Double.isFinite(stepMm)) {
            throw new IllegalArgumentException("step of " + stepMm + " mm (0 or more)");
        }
    }

    /** A hand whose sensor is as noisy near as far. */
    public HandSetup(
            ChannelSpec channel,
            Response response,
            Zone zone,
            double noiseMm,
            boolean scaledTravel,
            double stepMm,
            @Nullable FitQuality fit) {
        this(channel, response, zone, SensorNoise.even(noiseMm), scaledTravel, stepMm, fit);
    }

    /** A hand set up by its two ends alone. */
    public HandSetup(ChannelSpec channel, Response response, Zone zone, double noiseMm, boolean scaledTravel) {
        this(channel, response, zone, noiseMm, scaledTravel, null);
    }

    /** A hand whose sensor showed no step and is as noisy near as far. */
    public HandSetup(
            ChannelSpec channel,
            Response response,
            Zone zone,
            double noiseMm,
            boolean scaledTravel,
            @Nullable FitQuality fit) {
        this(channel, response, zone, noiseMm, scaledTravel, 0, fit);
    }

    /** Fast noise of one reading where it is largest, mm. */
    public double noiseMm() {
        return noise.worstMm();
    }

    /** The same hand, by a sensor that counts in steps. */
    public HandSetup inSteps(double newStepMm) {
        return new HandSetup(channel, response, zone, noise, scaledTravel, newStepMm, fit);
    }

    /** The same hand, by a sensor with such noise. */
    public HandSetup with(SensorNoise newNoise) {
        return new HandSetup(channel, response, zone, newNoise, scaledTravel, stepMm, fit);
    }

    /** The same hand with another response and zone, for example on another evening. */
    public HandSetup with(Response newResponse, Zone newZone) {
        return new HandSetup(channel, newResponse, newZone, noise, scaledTravel, stepMm, fit);
    }

    /** The same hand with another fit. */
    public HandSetup with(FitQuality newFit) {
        return new HandSetup(channel, response, zone, noise, scaledTravel, stepMm, newFit);
    }
}
