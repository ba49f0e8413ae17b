package handspan.show.chart;

import java.util.OptionalDouble;

/**
 * A stretch of raw readings of one channel.
 *
 * @param channel label or position, as people call it
 * @param unit of the values, in words
 * @param timesS when each reading came, s, never falling
 * @param values as printed by the board; one that was not taken may be any number
 * @param taken whether each value is a measurement and was kept
 * @param zoneNear near end of the play zone in the channel's unit, where known
 * @param zoneFar far end, likewise; for some sensors the smaller number
 */
@SuppressWarnings("ArrayRecordComponent") // long series; nobody compares two of them
public record RawTrace(
        String channel,
        String unit,
        double[] timesS,
        double[] values,
        boolean[] taken,
        OptionalDouble zoneNear,
        OptionalDouble zoneFar) {
    /** Copies the arrays; checks lengths, times and taken values. */
    public RawTrace {
        timesS = timesS.clone();
        values = values.clone();
        taken = taken.clone();
        if (timesS.length == 0 || values.length != timesS.length || taken.length != timesS.length) {
            throw new IllegalArgumentException("raw trace of " + timesS.length + " times, " + values.length
                    + " values and " + taken.length + " marks (1 or more, of each the same)");
        }
        Times.check(timesS);
        for (int i = 0; i < values.length; i++) {
            if (taken[i] && !Double.isFinite(values[i])) {
                throw new IllegalArgumentException("reading " + i + " of " + values[i] + " " + unit
                        + " was taken (a number): mark it as not taken");
            }
        }
        if (zoneNear.isPresent() != zoneFar.isPresent()) {
            throw new IllegalArgumentException("a zone with one end (both ends or none)");
        }
        double apart = zoneNear.orElse(0) - zoneFar.orElse(1);
        if (!Double.isFinite(apart) || apart == 0) {
            throw new IllegalArgumentException("a zone from " + zoneNear.orElse(0) + " to " + zoneFar.orElse(1) + " "
                    + unit + " (two numbers apart)");
        }
    }

    /** How many readings were taken. */
    public int takenCount() {
        int count = 0;
        for (boolean one : taken) {
            count += one ? 1 : 0;
        }
        return count;
    }

    /** From the first reading to the last, s. */
    public double lengthS() {
        return timesS[timesS.length - 1] - timesS[0];
    }
}
