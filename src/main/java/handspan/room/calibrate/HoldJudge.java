package handspan.room.calibrate;

import handspan.instrument.sensor.Sensor;
import handspan.number.fit.SensorUpdates;
import handspan.number.fit.SteadyValue;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import java.util.Arrays;
import java.util.Optional;

/** Decides whether a window of readings is a hold, or says why not. Pure. */
final class HoldJudge {
    /** The rejection of outliers and the noise need so many at least (this project's own choice). */
    static final int LEAST_READINGS = 8;

    /** Why a window is no hold yet. */
    enum Why {
        NONE,
        NO_HAND,
        ARRIVING,
        MISSING,
        TOO_FEW,
        MOVING,
        SWINGING,
        NO_MOVE,
        ELSEWHERE
    }

    /** What was held. */
    record Held(SteadyValue value, Steadiness steadiness) {}

    /**
     * A hold, or the reason why not yet.
     *
     * @param held what was held
     * @param why the kind of reason; {@code NONE} when held
     * @param reason in words, with figures; empty when held
     */
    record Verdict(Optional<Held> held, Why why, String reason) {}

    private final HoldRules rules;
    private final HoldLimits limits;

    HoldJudge(HoldRules rules, Sensor sensor) {
        this.rules = rules;
        this.limits = new HoldLimits(rules, sensor);
    }

    /**
     * Judges a full window.
     *
     * @param window the readings, in the sensor's physical unit
     * @param previous this hand's previous hold; empty when this is its first
     * @param step in which the sensor counts, as far as it has been seen; else 0
     * @param linesPerUpdate lines to one measurement of the sensor, as far as it is known; else 1
     */
    Verdict judge(HoldWindow window, Optional<SteadyValue> previous, double step, double linesPerUpdate) {
        Optional<Verdict> absent = absence(window);
        if (absent.isPresent()) {
            return absent.get();
        }
        double[] readings = window.readings();
        double most = limits.sway(readings, window.lines(), step, linesPerUpdate);
        Sway sway = Sway.of(window.seconds(), readings);
        if (sway.drift() > most || sway.swing() > most) {
            return moving(window, sway, most);
        }
        if (previous.isPresent()) {
            double way = HoldLimits.way(readings, previous.get());
            double needed = limits.neededWay(previous.get());
            if (way <= needed) {
                return notYet(
                        Why.NO_MOVE,
                        "no move seen: " + limits.text(way) + " from the last hold (more than " + limits.text(needed)
                                + ")");
            }
        }
        return new Verdict(Optional.of(held(window, step)), Why.NONE, "");
    }

    /** What a window is worth, whether or not it would pass: distinct updates of the sensor only. */
    static Held held(HoldWindow window, double step) {
        double[] readings = window.readings();
        int[] lines = window.lines();
        double linesPerUpdate = SensorUpdates.linesPerUpdate(readings, lines);
        SteadyValue value = SteadyValue.of(HoldLimits.updates(readings, lines, linesPerUpdate), step);
        return new Held(value, Steadiness.of(value, Sway.of(window.seconds(), readings), linesPerUpdate));
    }

    /**
     * Whether a stretch shorter than a hold is on its way to become one: someone is there, still, and away from the
     * last hold.
     */
    boolean isOnTheWay(HoldWindow part, Optional<SteadyValue> previous, double step, double linesPerUpdate) {
        double[] readings = part.readings();
        if (readings.length < LEAST_READINGS / 2 || part.missing01() > rules.mostMissing01()) {
            return false;
        }
        double most = limits.sway(readings, part.lines(), step, linesPerUpdate);
        Sway sway = Sway.of(part.seconds(), readings);
        boolean moved =
                previous.isEmpty() || HoldLimits.way(readings, previous.get()) > limits.neededWay(previous.get());
        return moved && sway.drift() <= most && sway.swing() <= most;
    }

    private Optional<Verdict> absence(HoldWindow window) {
        double missing01 = window.missing01();
        String allowed = " (at most " + Figures.percent(rules.mostMissing01()) + ")";
        if (missing01 > HoldRules.ABSENT01) {
            return Optional.of(notYet(
                    Why.NO_HAND, "no hand seen: " + Figures.percent(missing01) + " of readings without one" + allowed));
        }
        if (missing01 > rules.mostMissing01()) {
            return Optional.of(
                    window.lateMissing01() <= rules.mostMissing01()
                            ? arriving()
                            : notYet(
                                    Why.MISSING,
                                    Figures.percent(missing01) + " of readings missing" + allowed
                                            + ": roll the sleeve up, palm flat"));
        }
        int count = window.readings().length;
        return count >= LEAST_READINGS
                ? Optional.empty()
                : Optional.of(notYet(
                        Why.TOO_FEW,
                        "only " + count + " readings in " + seconds() + " (at least " + LEAST_READINGS
                                + "): give a longer --hold, or let the board print more often"));
    }

    private Verdict moving(HoldWindow window, Sway sway, double most) {
        double[] readings = window.readings();
        int half = readings.length / 2;
        Sway late = Sway.of(
                Arrays.copyOfRange(window.seconds(), half, readings.length),
                Arrays.copyOfRange(readings, half, readings.length));
        if (late.drift() <= most && late.swing() <= most) {
            return arriving();
        }
        String allowed = " (at most " + limits.text(most) + ")";
        return sway.drift() > most
                ? notYet(Why.MOVING, "hand still moving: " + limits.text(sway.drift()) + " in " + seconds() + allowed)
                : notYet(
                        Why.SWINGING,
                        "hand not still: to and fro by " + limits.text(sway.swing()) + " in " + seconds() + allowed);
    }

    private static Verdict arriving() {
        return notYet(Why.ARRIVING, "hand just arrived: keep it still");
    }

    static Verdict notYet(Why why, String reason) {
        return new Verdict(Optional.empty(), why, reason);
    }

    private String seconds() {
        double hold = rules.holdSeconds();
        return Figures.text(hold, hold == Math.rint(hold) ? 0 : 1) + " s";
    }

    /** The time that a hand must be still, ns. */
    long holdNanos() {
        return Nanos.ofSeconds(rules.holdSeconds());
    }
}
