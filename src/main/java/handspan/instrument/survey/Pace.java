package handspan.instrument.survey;

import handspan.number.units.Figures;
import java.util.Optional;

/**
 * How lines come.
 *
 * @param ratePerS lines a second
 * @param jitterMs standard deviation of the time between two lines
 * @param bunched01 share of lines that follow the one before within a quarter of the mean interval
 */
public record Pace(double ratePerS, double jitterMs, double bunched01) {
    /** Under this rate a vibrato of 6 Hz has fewer than five readings to a swing (design figure). */
    static final double VIBRATO_PER_S = 30;

    private static final double BUNCHED01 = 0.2;

    static Pace of(Series series, Intervals intervals) {
        double shortS = 0.25 / Math.max(1e-9, intervals.ratePerS());
        int bunched = 0;
        for (int i = 1; i < series.size(); i++) {
            bunched += series.timeS(i) - series.timeS(i - 1) < shortS ? 1 : 0;
        }
        return new Pace(
                intervals.ratePerS(), intervals.jitterMs(), series.size() < 2 ? 0 : bunched / (series.size() - 1.0));
    }

    /** A serial converter that waits gathers lines: common practice is a timer of 16 ms. */
    Optional<Complaint> bursts() {
        return bunched01 <= BUNCHED01
                ? Optional.empty()
                : Optional.of(new Complaint(
                        Verdict.USABLE,
                        "lines come in bursts: " + Figures.percent(bunched01) + " right after another, jitter "
                                + Figures.text(jitterMs, 1) + " ms",
                        "set the port's latency timer to 1 ms"));
    }

    /** Whether vibrato is lost, by how often the sensor has something new. */
    static Optional<Complaint> slow(double newPerS) {
        return newPerS <= 0 || newPerS >= VIBRATO_PER_S
                ? Optional.empty()
                : Optional.of(new Complaint(
                        Verdict.USABLE, Figures.text(newPerS, 1) + " readings a second: vibrato will be lost", ""));
    }
}
