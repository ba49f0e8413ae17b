package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The light of a room and the shade of a hand over the cell: {@code E = ambient (residual + (1 - residual) shade(d))},
 * {@code shade = d^2 / (d^2 + a^2)}. The shade law is invented: it is smooth, 0 at the cell and 1 far away.
 *
 * @param ambientLux illuminance of the open cell
 * @param residual01 share that reaches a fully covered cell
 * @param shadeMm distance a at which half of the light is gone
 * @param rippleHz frequency of the lamps' flicker, 100 or 120 Hz for plain mains lighting
 * @param ripple01 relative amplitude of the flicker that is left after the cell's own slowness
 * @param dimmer what the lamps are dimmed by
 * @param drift01 relative amplitude of a slow change of the ambient light, one swing in {@link #DRIFT_SECONDS}
 * @param driftFromNanos when that swing begins, upward
 * @param changes lamps that fail or come on, in the order of time
 */
public record LightRoom(
        double ambientLux,
        double residual01,
        double shadeMm,
        double rippleHz,
        double ripple01,
        Dimmer dimmer,
        double drift01,
        long driftFromNanos,
        List<LightChange> changes) {

    /** Period of the slow change, seconds. */
    public static final double DRIFT_SECONDS = 2400;

    /** Share of the light that is left when the lamps fail: signs and windows (assumed). */
    public static final double BLACKOUT_FACTOR = 0.002;

    /** A spotlight against the room's own light: some 1000 lux of key light (handbooks) on 100 lux. */
    public static final double SPOTLIGHT_FACTOR = 10;

    public LightRoom {
        Allowed.within("ambient light", ambientLux, 0.001, 200_000, "lux");
        Allowed.within("light under a covering hand", residual01, 0, 1, "of 1");
        Allowed.within("shade distance", shadeMm, 1, 1000, "mm");
        Allowed.within("flicker frequency", rippleHz, 0.1, 10_000, "Hz");
        Allowed.within("flicker", ripple01, 0, 0.9, "of 1");
        Allowed.within("light drift", drift01, 0, 0.9, "of 1");
        changes = changes.stream()
                .sorted(Comparator.comparingLong(LightChange::atNanos))
                .toList();
    }

    /** Steady light: 2 % left under a covering hand, half gone at 60 mm, no flicker and no drift. */
    public static LightRoom steady(double ambientLux) {
        return new LightRoom(ambientLux, 0.02, 60, 100, 0, Dimmer.NONE, 0, 0, List.of());
    }

    /** The same room with flicker. */
    public LightRoom withRipple(double newRippleHz, double newRipple01) {
        return new LightRoom(
                ambientLux, residual01, shadeMm, newRippleHz, newRipple01, dimmer, drift01, driftFromNanos, changes);
    }

    /** The same room under dimmed lamps; the mean of the light stays. */
    public LightRoom withDimmer(Dimmer newDimmer) {
        return new LightRoom(
                ambientLux, residual01, shadeMm, rippleHz, ripple01, newDimmer, drift01, driftFromNanos, changes);
    }

    /** The same room with slowly changing light. */
    public LightRoom withDrift01(double newDrift01) {
        return withDrift01(newDrift01, driftFromNanos);
    }

    /** The same room with light that changes slowly, and most quickly at one moment. */
    public LightRoom withDrift01(double newDrift01, long fromNanos) {
        return new LightRoom(
                ambientLux, residual01, shadeMm, rippleHz, ripple01, dimmer, newDrift01, fromNanos, changes);
    }

    /** The same room, whose lamps fail. */
    public LightRoom blackoutAt(long timeNanos) {
        return with(new LightChange(timeNanos, BLACKOUT_FACTOR));
    }

    /** The same room, in which a spotlight comes on. */
    public LightRoom spotlightAt(long timeNanos) {
        return with(new LightChange(timeNanos, SPOTLIGHT_FACTOR));
    }

    /** The same room with another change of its light. */
    public LightRoom with(LightChange change) {
        return new LightRoom(
                ambientLux,
                residual01,
                shadeMm,
                rippleHz,
                ripple01,
                dimmer,
                drift01,
                driftFromNanos,
                Stream.concat(changes.stream(), Stream.of(change)).toList());
    }

    /** Illuminance of the cell in lux under a hand, without flicker. */
    public double lux(SimulatedHand hand, long timeNanos) {
        return ambientLuxAt(timeNanos) * (residual01 + (1 - residual01) * shade01(hand, timeNanos));
    }

    /** Factor by which flicker and dimmer change the light at one moment. */
    public double flicker(long timeNanos) {
        double ripple = 1 + ripple01 * Math.sin(2 * Math.PI * rippleHz * Nanos.toSeconds(timeNanos));
        return ripple * dimmer.factor(timeNanos);
    }

    private double ambientLuxAt(long timeNanos) {
        double turn = Nanos.toSeconds(timeNanos - driftFromNanos) / DRIFT_SECONDS;
        double factor = 1;
        for (LightChange change : changes) {
            factor = change.atNanos() <= timeNanos ? change.factor() : factor;
        }
        return factor * ambientLux * (1 + drift01 * Math.sin(2 * Math.PI * turn));
    }

    private double shade01(SimulatedHand hand, long timeNanos) {
        if (!hand.presentAt(timeNanos)) {
            return 1;
        }
        double mm = hand.trueMm(timeNanos);
        return mm * mm / (mm * mm + shadeMm * shadeMm);
    }
}
