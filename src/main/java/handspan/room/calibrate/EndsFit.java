package handspan.room.calibrate;

import handspan.hand.smooth.SensorNoise;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.InfraredLaw;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.number.fit.MonotoneCurve;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Zone;
import java.util.List;
import java.util.Optional;

/**
 * A hand from its two ends alone. Lengths are taken as measured, or set to the ruler's distances. Infrared takes its
 * shape from the data sheet of its part: b and k of the law cancel between the ends, only a counts. Anything else runs
 * straight over a nominal travel.
 */
final class EndsFit {
    private static final double UNSCALED_NEAR_MM = 100;
    private static final double UNSCALED_FAR_MM = 500;

    private final ChannelSpec channel;
    private final Sensor sensor;
    private final HandRole hand;
    private final Hold near;
    private final Hold far;

    private EndsFit(ChannelSpec channel, Sensor sensor, HandRole hand, Hold near, Hold far) {
        this.channel = channel;
        this.sensor = sensor;
        this.hand = hand;
        this.near = near;
        this.far = far;
    }

    static HandFit of(ChannelSpec channel, Sensor sensor, HandRole hand, Hold near, Hold far) {
        return new EndsFit(channel, sensor, hand, near, far).fit();
    }

    private HandFit fit() {
        if (channel.kind() == SensorKind.PHOTORESISTOR && hand == HandRole.PITCH) {
            return HandFit.no("pitch: two ends do not tell how light runs between them: calibrate with --ruler or"
                    + " --by-ear and " + CalibrationPlan.FEWEST_BY_LIGHT + " places or more");
        }
        Optional<String> wrongWay = wrongWay();
        if (wrongWay.isPresent()) {
            return HandFit.no(hand.word() + ": " + wrongWay.get());
        }
        Optional<String> fold = channel.kind() == SensorKind.INFRARED
                ? Folds.between(channel.infraredPart(), List.of(near, far))
                : Optional.empty();
        if (fold.isPresent()) {
            return HandFit.no(hand.word() + ": " + fold.get());
        }
        Response response = response();
        double from = response.mm(near.physical());
        double to = response.mm(far.physical());
        Optional<String> refusal = HandFit.zoneRefusal(hand, channel.kind(), from, to);
        if (refusal.isPresent()) {
            return HandFit.no(refusal.get());
        }
        Zone zone = new Zone(
                from,
                to,
                near.standardUncertainty() * HandFit.slope(response, near.physical()),
                far.standardUncertainty() * HandFit.slope(response, far.physical()));
        SensorNoise noise = HandFit.noise(List.of(near, far), response);
        return HandFit.of(
                new HandSetup(channel, response, zone, noise, !sensor.isLength() && !byRuler(), 0, null),
                List.of(near, far));
    }

    private boolean byRuler() {
        return near.mm().isPresent() && far.mm().isPresent();
    }

    private Optional<String> wrongWay() {
        if (sensor.isLength() && far.physical() <= near.physical()) {
            return Optional.of("the far hold at " + HandFit.mm(far.physical()) + " is not beyond the near hold at "
                    + HandFit.mm(near.physical()) + ": take both again, near first");
        }
        if (channel.kind() == SensorKind.INFRARED && far.physical() >= near.physical()) {
            return Optional.of("the far hold reads " + Folds.volts(far) + ", not less than the near hold's "
                    + Folds.volts(near)
                    + ": take both again, near first, the near one beyond the sensor's fold-over at about "
                    + HandFit.mm(channel.infraredPart().foldMm()));
        }
        if (byRuler() && far.mm().orElseThrow() <= near.mm().orElseThrow()) {
            return Optional.of("far by ruler " + HandFit.mm(far.mm().orElseThrow()) + " is not beyond near by ruler "
                    + HandFit.mm(near.mm().orElseThrow()) + ": swap them");
        }
        return Optional.empty();
    }

    private Response response() {
        if (channel.kind() == SensorKind.INFRARED) {
            return infrared();
        }
        if (byRuler()) {
            return straight(near.mm().orElseThrow(), far.mm().orElseThrow());
        }
        return sensor.isLength() ? new Response.AsMeasured() : straight(UNSCALED_NEAR_MM, UNSCALED_FAR_MM);
    }

    /** Without a ruler the distances are the data sheet's, as good as its part is typical. */
    private Response infrared() {
        InfraredLaw typical = channel.infraredPart().law();
        // a law needs an output at infinity under its far reading, whatever the data sheet says of the part
        InfraredLaw law = InfraredLaw.throughEnds(
                Math.min(channel.infraredPart().playedAVolts(), far.physical() / 2),
                near.physical(),
                near.mm().orElseGet(() -> typical.mm(near.physical())),
                far.physical(),
                far.mm().orElseGet(() -> typical.mm(far.physical())));
        return new Response.Triangulation(law.aVolts(), law.bVoltMm(), law.kMm());
    }

    private Response straight(double nearMm, double farMm) {
        return straight(near, far, nearMm, farMm);
    }

    private static Response straight(Hold near, Hold far, double nearMm, double farMm) {
        return new Response.Curve(List.of(
                new MonotoneCurve.Point(near.physical(), nearMm), new MonotoneCurve.Point(far.physical(), farMm)));
    }

    /** A nominal travel for what is no length, where only notes were held. */
    static Response nominal(ChannelSpec channel, Sensor sensor, Hold first, Hold last) {
        if (sensor.isLength()) {
            return new Response.AsMeasured();
        }
        if (channel.kind() == SensorKind.INFRARED) {
            InfraredLaw typical = channel.infraredPart().law();
            return new Response.Triangulation(typical.aVolts(), typical.bVoltMm(), typical.kMm());
        }
        return straight(first, last, UNSCALED_NEAR_MM, UNSCALED_FAR_MM);
    }
}
