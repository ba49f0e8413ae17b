package handspan.room.calibrate;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.MonotoneCurve;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** From holds to a room: pure, and the same for a live calibration and for one made again from a take. */
public final class Fit {
    /** Shortest zone that two octaves can be played on, mm (this project's own limit). */
    public static final double LEAST_ZONE_MM = 80;

    /**
     * Nearest end of a zone, mm: closer than this echo sensors read garbage (data sheet: 2 cm; 5 cm is common
     * practice).
     */
    public static final double LEAST_NEAR_MM = 50;

    /** Least factor in resistance between open and covered light. */
    public static final double LEAST_LIGHT_FACTOR = 2;

    /** Travel that stands for a hand over a light or unscaled sensor where no ruler was used, mm. */
    public static final double SCALED_TRAVEL_MM = 200;

    private static final double UNSCALED_NEAR_MM = 100;
    private static final double UNSCALED_FAR_MM = 500;

    private final Instrument instrument;
    private final Air air;
    private final List<Hold> holds;
    private final List<String> reasons = new ArrayList<>();

    private Fit(Instrument instrument, Air air, List<Hold> holds) {
        this.instrument = instrument;
        this.air = air;
        this.holds = holds;
    }

    /**
     * Fits.
     *
     * @param name of the room
     * @param calibratedAt ISO 8601 text
     * @param instrument its channels
     * @param air of the evening
     * @param ratePerS readings a second, above 0
     * @param holds captured, in any order; where a step was captured twice the later one counts
     * @param nearMm ruler distance of the pitch hand's near hold, where known
     * @param farMm ruler distance of its far hold, where known
     */
    public static Outcome fit(
            String name,
            String calibratedAt,
            Instrument instrument,
            Air air,
            double ratePerS,
            List<Hold> holds,
            OptionalDouble nearMm,
            OptionalDouble farMm) {
        Fit fit = new Fit(instrument, air, holds);
        Optional<HandSetup> pitch = fit.length(instrument.pitch(), HandRole.PITCH, nearMm, farMm);
        ChannelSpec levelChannel = instrument.level();
        Optional<HandSetup> level = levelChannel == null ? Optional.empty() : fit.level(levelChannel);
        if (!fit.reasons.isEmpty() || pitch.isEmpty()) {
            return Outcome.no(fit.reasons);
        }
        return Outcome.of(
                new Room(name, calibratedAt, instrument, air, ratePerS, pitch.get(), level.orElse(null), holds));
    }

    private Optional<HandSetup> level(ChannelSpec channel) {
        return Sensor.of(channel, air, instrument.referenceVolts()) instanceof Photoresistor light
                ? light(channel, light)
                : length(channel, HandRole.LEVEL, OptionalDouble.empty(), OptionalDouble.empty());
    }

    private Optional<HandSetup> length(
            ChannelSpec channel, HandRole hand, OptionalDouble nearMm, OptionalDouble farMm) {
        Hold near = hold(StepKind.NEAR, hand);
        Hold far = hold(StepKind.FAR, hand);
        if (near == null || far == null) {
            return Optional.empty();
        }
        Sensor sensor = Sensor.of(channel, air, instrument.referenceVolts());
        boolean ruler = nearMm.isPresent() && farMm.isPresent();
        if (sensor.isLength() && far.physical() <= near.physical()) {
            return no(hand.word() + ": the far hold at " + mm(far.physical()) + " is not beyond the near hold at "
                    + mm(near.physical()) + ": take both again, near first");
        }
        if (ruler && farMm.getAsDouble() <= nearMm.getAsDouble()) {
            return no(hand.word() + ": far by ruler " + mm(farMm.getAsDouble()) + " is not beyond near by ruler "
                    + mm(nearMm.getAsDouble()) + ": swap them");
        }
        Response response = response(sensor, near, far, ruler, nearMm, farMm);
        double from = response.mm(near.physical());
        double to = response.mm(far.physical());
        if (to - from < LEAST_ZONE_MM) {
            return no(hand.word() + ": near and far lie only " + mm(to - from) + " apart (at least " + mm(LEAST_ZONE_MM)
                    + "): hold further apart");
        }
        if (from < LEAST_NEAR_MM) {
            return no(hand.word() + ": the near hold at " + mm(from) + " is too near to the sensor (at least "
                    + mm(LEAST_NEAR_MM) + "): hold further away");
        }
        double nearScale = slope(response, near.physical());
        double farScale = slope(response, far.physical());
        Zone zone = new Zone(from, to, near.standardUncertainty() * nearScale, far.standardUncertainty() * farScale);
        double noiseMm = Math.max(near.noise() * nearScale, far.noise() * farScale);
        return Optional.of(new HandSetup(channel, response, zone, noiseMm, !sensor.isLength() && !ruler));
    }

    private static Response response(
            Sensor sensor, Hold near, Hold far, boolean ruler, OptionalDouble nearMm, OptionalDouble farMm) {
        if (sensor.isLength() && !ruler) {
            return new Response.AsMeasured();
        }
        return new Response.Curve(List.of(
                new MonotoneCurve.Point(near.physical(), ruler ? nearMm.getAsDouble() : UNSCALED_NEAR_MM),
                new MonotoneCurve.Point(far.physical(), ruler ? farMm.getAsDouble() : UNSCALED_FAR_MM)));
    }

    private Optional<HandSetup> light(ChannelSpec channel, Photoresistor sensor) {
        Hold open = hold(StepKind.OPEN, HandRole.LEVEL);
        Hold mid = hold(StepKind.MID, HandRole.LEVEL);
        Hold covered = hold(StepKind.COVERED, HandRole.LEVEL);
        if (open == null || mid == null || covered == null) {
            return Optional.empty();
        }
        for (Hold hold : List.of(open, covered)) {
            if (sensor.isClipped(sensor.raw(hold.physical()))) {
                return no("light: the " + hold.kind().word() + " hold reads " + raw(sensor, hold)
                        + ", an end of its scale: change the fixed resistor of the divider ("
                        + (hold.kind() == StepKind.OPEN ? "smaller" : "larger")
                        + " where the photoresistor goes to supply, the other way"
                        + " where it goes to ground)");
            }
        }
        double span = covered.physical() - open.physical();
        double factor = Math.exp(Math.abs(span));
        if (factor < LEAST_LIGHT_FACTOR) {
            return no("light: open and covered differ only by a factor of " + Figures.text(factor, 1)
                    + " in resistance (at least " + Figures.text(LEAST_LIGHT_FACTOR, 0)
                    + "): bring more light to the sensor, or cover it closer");
        }
        double share = (mid.physical() - open.physical()) / span;
        if (!(share > 0.05 && share < 0.95)) {
            return no("light: the mid hold reads " + raw(sensor, mid) + ", not between open at " + raw(sensor, open)
                    + " and covered at " + raw(sensor, covered) + ": hold half-way and take it again");
        }
        Response response = new Response.Curve(List.of(
                new MonotoneCurve.Point(covered.physical(), 0),
                new MonotoneCurve.Point(mid.physical(), SCALED_TRAVEL_MM / 2),
                new MonotoneCurve.Point(open.physical(), SCALED_TRAVEL_MM)));
        Zone zone = new Zone(
                0,
                SCALED_TRAVEL_MM,
                covered.standardUncertainty() * slope(response, covered.physical()),
                open.standardUncertainty() * slope(response, open.physical()));
        double noiseMm = Math.max(
                mid.noise() * slope(response, mid.physical()), open.noise() * slope(response, open.physical()));
        return Optional.of(new HandSetup(channel, response, zone, noiseMm, true));
    }

    private @Nullable Hold hold(StepKind kind, HandRole hand) {
        for (int i = holds.size() - 1; i >= 0; i--) {
            if (holds.get(i).kind() == kind && holds.get(i).hand() == hand) {
                return holds.get(i);
            }
        }
        reasons.add(hand.word() + ": no " + kind.word() + " hold was captured");
        return null;
    }

    private Optional<HandSetup> no(String reason) {
        reasons.add(reason);
        return Optional.empty();
    }

    /** Millimetres for a unit of the physical value, by a small central difference. */
    private static double slope(Response response, double physical) {
        double step = 1e-4 * Math.max(1, Math.abs(physical));
        return Math.abs(response.mm(physical + step) - response.mm(physical - step)) / (2 * step);
    }

    private static String mm(double value) {
        return Figures.text(value, 0) + " mm";
    }

    private static String raw(Photoresistor sensor, Hold hold) {
        return Figures.text(sensor.raw(hold.physical()), 0);
    }
}
