package handspan.room.calibrate;

import handspan.hand.smooth.SensorNoise;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Photoresistor;
import handspan.number.fit.MonotoneCurve;
import handspan.number.units.Figures;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.StepKind;
import handspan.room.Zone;
import java.util.List;

/**
 * The level hand over a light cell, from three holds: open, mid and covered. The log of the resistance runs between
 * open and covered, so that gamma and the fixed resistor cancel; the mid hold tells how it bends on the way. Which way
 * the numbers run is learned.
 */
final class LightFit {
    /** A mid hold nearer to either end than this share of the way does not tell the shape. */
    private static final double LEAST_SHARE = 0.05;

    private LightFit() {}

    static HandFit of(ChannelSpec channel, Photoresistor sensor, Hold open, Hold mid, Hold covered) {
        for (Hold hold : List.of(open, covered)) {
            if (sensor.isClipped(sensor.raw(hold.physical()))) {
                return HandFit.no("light: the " + hold.kind().word() + " hold reads " + raw(sensor, hold)
                        + ", an end of its scale: change the fixed resistor of the divider ("
                        + (hold.kind() == StepKind.OPEN ? "smaller" : "larger")
                        + " where the photoresistor goes to supply, the other way"
                        + " where it goes to ground)");
            }
        }
        double span = covered.physical() - open.physical();
        double factor = Math.exp(Math.abs(span));
        if (factor < Fit.LEAST_LIGHT_FACTOR) {
            return HandFit.no("light: open and covered differ only by a factor of " + Figures.text(factor, 1)
                    + " in resistance (at least " + Figures.text(Fit.LEAST_LIGHT_FACTOR, 0)
                    + "): bring more light to the sensor, or cover it closer");
        }
        double share = (mid.physical() - open.physical()) / span;
        if (!(share > LEAST_SHARE && share < 1 - LEAST_SHARE)) {
            return HandFit.no("light: the mid hold reads " + raw(sensor, mid) + ", not between open at "
                    + raw(sensor, open) + " and covered at " + raw(sensor, covered)
                    + ": hold half-way and take it again");
        }
        Response response = new Response.Curve(List.of(
                new MonotoneCurve.Point(covered.physical(), 0),
                new MonotoneCurve.Point(mid.physical(), Fit.SCALED_TRAVEL_MM / 2),
                new MonotoneCurve.Point(open.physical(), Fit.SCALED_TRAVEL_MM)));
        Zone zone = new Zone(
                0,
                Fit.SCALED_TRAVEL_MM,
                covered.standardUncertainty() * HandFit.slope(response, covered.physical()),
                open.standardUncertainty() * HandFit.slope(response, open.physical()));
        SensorNoise noise = HandFit.noise(List.of(mid, open), response);
        return HandFit.of(new HandSetup(channel, response, zone, noise, true, 0, null), List.of(open, mid, covered));
    }

    private static String raw(Photoresistor sensor, Hold hold) {
        return Figures.text(sensor.raw(hold.physical()), 0);
    }
}
