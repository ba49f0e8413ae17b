package handspan.instrument.survey;

import handspan.number.fit.Robust;
import handspan.number.fit.SensorUpdates;
import handspan.number.units.Figures;
import java.util.Arrays;
import java.util.Optional;

/**
 * A sensor slower than the lines: each of its values is printed several times, as {@link SensorUpdates} tells from the
 * hand held still.
 *
 * @param linesPerValue p, 1 where each line is new
 * @param firstLine of a period, counted from the stretch's first line, 0..p
 * @param equal01 share of readings equal to the one before, by whatever cause
 */
public record Repeats(double linesPerValue, double firstLine, double equal01) {
    /** Lines looked at: enough for 20 values printed 20 times each. */
    private static final int MOST_LINES = 400;

    static Repeats in(Series series, StillStretch held) {
        double equal01 = equal01(series.readings(held.from(), held.to()));
        int to = Math.min(held.to(), held.from() + MOST_LINES);
        int[] lines = linesWithoutSpikes(series, held.from(), to);
        double[] readings = new double[lines.length];
        Arrays.setAll(readings, i -> series.value(held.from() + lines[i]));
        double linesPerValue = SensorUpdates.linesPerUpdate(readings, lines);
        double firstLine = linesPerValue == 1 ? 0 : SensorUpdates.firstLine(readings, lines, linesPerValue);
        return new Repeats(linesPerValue, firstLine, equal01);
    }

    /** Values the sensor gives in a second. */
    public double newPerS(double linesPerS) {
        return linesPerS / linesPerValue;
    }

    Optional<Complaint> remark(double linesPerS) {
        if (linesPerValue == 1) {
            return Optional.empty();
        }
        boolean whole = Math.abs(linesPerValue - Math.rint(linesPerValue)) < 0.05;
        String times = whole
                ? Figures.text(linesPerValue, 0) + " times"
                : Figures.text(linesPerValue, 2) + " times on average";
        return Optional.of(Complaint.remark("each value comes " + times + ": the sensor gives "
                + Figures.text(newPerS(linesPerS), 1) + " a second"));
    }

    /** Lines with a reading, counted from the first; a spike comes at any line and is no update. */
    private static int[] linesWithoutSpikes(Series series, int from, int to) {
        double[] readings = series.readings(from, to);
        if (readings.length == 0) {
            return new int[0];
        }
        double median = Robust.median(readings);
        double limit = Held.spikeLimit(readings, median, Robust.smallestStep(readings));
        int[] lines = new int[to - from];
        int count = 0;
        for (int i = from; i < to; i++) {
            if (series.isValid(i) && Math.abs(series.value(i) - median) <= limit) {
                lines[count++] = i - from;
            }
        }
        return Arrays.copyOf(lines, count);
    }

    private static double equal01(double[] held) {
        int equal = 0;
        for (int i = 1; i < held.length; i++) {
            equal += held[i] == held[i - 1] ? 1 : 0;
        }
        return held.length < 2 ? 0 : equal / (held.length - 1.0);
    }
}
