package handspan.instrument.survey;

import handspan.number.fit.Robust;
import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something in the beam besides the hand.
 *
 * @param fixed something beyond a hand's reach that is seen before the hand comes or after it went, where there should
 *     be no reading; channel's unit
 * @param farHold whether what was held still is itself beyond a hand's reach
 * @param passes how often something sprang into the beam and away again, to what was held before
 * @param passAt where, middle of the first; channel's unit, 0 where there was none
 * @param passSeconds how long the first one stayed
 */
public record Clutter(OptionalDouble fixed, boolean farHold, int passes, double passAt, double passSeconds) {
    /** Hands are seen to 500 mm by echo and 500 to 800 mm by laser (common practice). */
    private static final double HAND_REACH_MM = 600;

    private static final double BEYOND_HOLD_MM = 100;
    private static final double PLATEAU_SECONDS = 0.2;
    private static final int PLATEAU_LEAST = 5;
    private static final double STEADY_MM = 6;
    private static final double STEADY01 = 0.8;

    /** A hand does not spring: it has this speed at most, mm a second, and 50 mm from one line to the next. */
    private static final double HAND_MM_PER_S = 2000;

    private static final double SPRING_MM = 50;
    private static final double PASS_LEAST_SECONDS = 0.2;
    private static final double PASS_MOST_SECONDS = 4;

    static Optional<Clutter> in(Series series, StillStretch held, double centre, double noise, Measure measure) {
        if (!measure.isLength()) {
            return Optional.empty();
        }
        double near = Math.max(measure.inUnit(STEADY_MM, 0), 4 * noise);
        OptionalDouble fixed = fixed(series, held, centre, near, measure);
        boolean farHold = measure.size(centre) > HAND_REACH_MM;
        List<double[]> passes = passes(series, centre, near, measure);
        if (fixed.isEmpty() && !farHold && passes.isEmpty()) {
            return Optional.empty();
        }
        double[] first = passes.isEmpty() ? new double[2] : passes.get(0);
        return Optional.of(new Clutter(fixed, farHold, passes.size(), first[0], first[1]));
    }

    private static OptionalDouble fixed(Series series, StillStretch held, double centre, double near, Measure measure) {
        if (restIsClear(series, 0, held.from()) || restIsClear(series, held.to(), series.size())) {
            return OptionalDouble.empty();
        }
        OptionalDouble before = plateau(series, 0, held.from(), near, true);
        OptionalDouble after = plateau(series, held.to(), series.size(), near, false);
        double farthest = Math.max(before.orElse(0), after.orElse(0));
        return measure.size(farthest) > HAND_REACH_MM && measure.size(farthest - centre) > BEYOND_HOLD_MM
                ? OptionalDouble.of(farthest)
                : OptionalDouble.empty();
    }

    /** Whether for a while there was no reading: a fixed thing would have been seen. */
    private static boolean restIsClear(Series series, int from, int to) {
        int since = -1;
        for (int i = from; i < to; i++) {
            if (series.isValid(i)) {
                since = -1;
            } else {
                since = since < 0 ? i : since;
                if (i - since >= PLATEAU_LEAST && series.timeS(i) - series.timeS(since) >= PLATEAU_SECONDS) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Where the first lines of a part, or its last, stand still. */
    private static OptionalDouble plateau(Series series, int from, int to, double near, boolean atStart) {
        int count = 0;
        while (from + count < to
                && (count < PLATEAU_LEAST
                        || Math.abs(series.timeS(from + count) - series.timeS(from)) < PLATEAU_SECONDS)) {
            count++;
        }
        if (from + count >= to) {
            return OptionalDouble.empty();
        }
        int begin = atStart ? from : to - count;
        double[] readings = series.readings(begin, begin + count);
        if (readings.length < STEADY01 * count) {
            return OptionalDouble.empty();
        }
        double median = Robust.median(readings);
        long steady = Arrays.stream(readings)
                .filter(reading -> Math.abs(reading - median) <= near)
                .count();
        return steady >= STEADY01 * count ? OptionalDouble.of(median) : OptionalDouble.empty();
    }

    /** Place and seconds of each time that readings spring away from what is held and back to it. */
    private static List<double[]> passes(Series series, double centre, double near, Measure measure) {
        List<double[]> passes = new ArrayList<>();
        int lastHeld = -1;
        for (int i = 0; i < series.size(); i++) {
            if (!series.isValid(i) || Math.abs(series.value(i) - centre) > near) {
                continue;
            }
            if (lastHeld >= 0 && i - lastHeld > PLATEAU_LEAST && isPass(series, lastHeld, i, centre, measure)) {
                double[] away = series.readings(lastHeld + 1, i);
                passes.add(new double[] {Robust.median(away), series.timeS(i) - series.timeS(lastHeld)});
            }
            lastHeld = i;
        }
        return passes;
    }

    private static boolean isPass(Series series, int heldBefore, int heldAfter, double centre, Measure measure) {
        double seconds = series.timeS(heldAfter) - series.timeS(heldBefore);
        double springMm = Math.max(SPRING_MM, HAND_MM_PER_S * seconds / (heldAfter - heldBefore));
        boolean isShort = seconds >= PASS_LEAST_SECONDS && seconds <= PASS_MOST_SECONDS;
        // one half-way reading at each edge is the sensor's own
        for (int i = heldBefore + 2; i < heldAfter - 1; i++) {
            boolean away = series.isValid(i) && Math.abs(measure.size(series.value(i) - centre)) > springMm;
            if (!away) {
                return false;
            }
        }
        return isShort;
    }

    Optional<Complaint> complaint(Measure measure) {
        List<String> seen = new ArrayList<>();
        if (fixed.isPresent()) {
            seen.add("something at " + measure.place(fixed.getAsDouble()) + " is seen without the hand");
        }
        if (farHold) {
            seen.add("what was held is beyond a hand's reach of " + Figures.text(HAND_REACH_MM, 0) + " mm");
        }
        if (passes > 0) {
            seen.add("something sprang into the beam at " + measure.place(passAt) + " for "
                    + Figures.text(passSeconds, 1) + " s" + (passes > 1 ? ", " + passes + " times in all" : ""));
        }
        return Optional.of(new Complaint(
                Verdict.USABLE,
                String.join("; ", seen),
                "clear the beam, or turn the sensor away from stands and people"));
    }
}
