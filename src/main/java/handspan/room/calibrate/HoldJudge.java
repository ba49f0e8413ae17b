package handspan.room.calibrate;

import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Sensor;
import handspan.number.fit.Noise;
import handspan.number.fit.Robust;
import handspan.number.fit.SteadyValue;
import handspan.number.units.Figures;
import java.util.Arrays;
import java.util.Optional;

/** Decides whether a window of readings is a hold, or says why not. Pure. */
final class HoldJudge {
    /**
     * What a mm stands for over a photoresistor: a hundredth of a factor e in resistance (this project's own choice).
     */
    private static final double LN_PER_MM = 0.01;

    private static final int LEAST_READINGS = 8;

    /**
     * Four standard deviations of the difference of two medians: normal values' medians scatter {@code sqrt(pi/2)}
     * times as much as their means, a difference {@code sqrt(2)} times as much as each.
     */
    private static final double SCATTER_TIMES = 4 * Math.sqrt(Math.PI / 2) * Math.sqrt(2);

    /** Why a window is no hold yet. */
    enum Why {
        NONE,
        NO_HAND,
        ARRIVING,
        MISSING,
        MOVING,
        NO_MOVE
    }

    /**
     * A hold, or the reason why not yet.
     *
     * @param held what was held
     * @param why the kind of reason; {@code NONE} when held
     * @param reason in words, with figures; empty when held
     */
    record Verdict(Optional<SteadyValue> held, Why why, String reason) {}

    private final HoldRules rules;
    private final Sensor sensor;

    HoldJudge(HoldRules rules, Sensor sensor) {
        this.rules = rules;
        this.sensor = sensor;
    }

    /**
     * Judges a full window.
     *
     * @param window the readings, in the sensor's physical unit
     * @param previous this hand's previous hold; empty when this is its first
     * @param step in which the sensor counts, as far as it has been seen; else 0
     */
    Verdict judge(HoldWindow window, Optional<SteadyValue> previous, double step) {
        double[] readings = window.readings();
        if (window.missing01() > HoldRules.ABSENT01) {
            return notYet(Why.NO_HAND, "no hand seen");
        }
        if (window.missing01() > rules.mostMissing01() || readings.length < LEAST_READINGS) {
            return window.lateMissing01() <= rules.mostMissing01()
                    ? notYet(Why.ARRIVING, "hand just arrived: keep it still")
                    : notYet(
                            Why.MISSING,
                            Figures.percent(window.missing01())
                                    + " of readings missing: roll the sleeve up, palm flat");
        }
        Noise noise = Noise.of(readings, step);
        double moved = drift(readings);
        double scatter = SCATTER_TIMES * noise.white() / Math.sqrt(readings.length / 3.0);
        double most = Math.max(unit(rules.stillMm()), scatter);
        if (moved > most) {
            double[] late = Arrays.copyOfRange(readings, readings.length / 2, readings.length);
            if (drift(late) <= most) {
                return notYet(Why.ARRIVING, "hand just arrived: keep it still");
            }
            return notYet(
                    Why.MOVING,
                    "hand still moving: " + text(moved) + " in " + Figures.text(rules.holdSeconds(), 1) + " s");
        }
        if (previous.isPresent()) {
            SteadyValue last = previous.get();
            double way = Math.abs(noise.median() - last.value());
            double needed = Math.max(
                    unit(rules.moveMm()), rules.moveNoiseTimes() * last.noise().white());
            if (way < needed) {
                return notYet(
                        Why.NO_MOVE,
                        "no move seen: " + text(way) + " from the last hold (at least " + text(needed) + ")");
            }
        }
        return new Verdict(Optional.of(SteadyValue.of(readings, step)), Why.NONE, "");
    }

    private static Verdict notYet(Why why, String reason) {
        return new Verdict(Optional.empty(), why, reason);
    }

    /** Difference between the medians of the first and the last third. */
    private static double drift(double[] readings) {
        int third = Math.max(1, readings.length / 3);
        double first = Robust.median(Arrays.copyOfRange(readings, 0, third));
        double last = Robust.median(Arrays.copyOfRange(readings, readings.length - third, readings.length));
        return Math.abs(last - first);
    }

    private double unit(double mm) {
        if (sensor.isLength()) {
            return mm;
        }
        return sensor instanceof Photoresistor ? mm * LN_PER_MM : 0;
    }

    private String text(double physical) {
        return sensor.isLength()
                ? Figures.text(physical, 0) + " mm"
                : Figures.text(physical, 3) + " in " + sensor.physicalUnit();
    }
}
