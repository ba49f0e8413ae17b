package handspan.instrument.survey;

import handspan.number.fit.Periodogram;
import handspan.number.units.Figures;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * An even swing in readings of something held still: the strongest peak of the periodogram over the real times.
 *
 * @param frequencyHz of the swing as the lines show it
 * @param amplitude half of peak to peak, channel's unit
 * @param share01 of the scatter that it makes up
 * @param flickers of the mains that would look so at this line rate; empty where the cause is unknown
 * @param linesPerS at which it was seen
 */
public record Wobble(double frequencyHz, double amplitude, double share01, List<Flicker> flickers, double linesPerS) {
    /** Chance that white noise alone is taken for a wobble. */
    public static final double FALSE_ALARM01 = 0.001;

    /** A hand wanders at 0.05 to 0.5 Hz (assumed), and what ends within the hold leaks a little beyond. */
    private static final double LOWEST_HZ = 1;

    private static final double LEAST_SECONDS = 3;
    private static final int LEAST = 24;

    /** Half a minute at 50 a second. */
    private static final int MOST = 1500;

    /** A peak must stand above the other frequencies as well: scatter that is not white has many. */
    private static final double ABOVE_OTHERS = 3;

    private static final double HEARD_MM = 1;
    private static final double HEARD_COUNTS = 3;
    private static final double POOR_MM = 4;
    private static final double POOR_COUNTS = 12;

    /** Copies the list. */
    public Wobble {
        flickers = List.copyOf(flickers);
    }

    static Optional<Wobble> in(Held held, double step, boolean mayBeLight) {
        Held sane = held.size() < LEAST ? held : held.sane(MOST, step);
        double highestHz = sane.ratePerS() / 2;
        if (sane.size() < LEAST || sane.seconds() < LEAST_SECONDS || highestHz < 1.5 * LOWEST_HZ) {
            return Optional.empty();
        }
        Periodogram periodogram = Periodogram.of(sane.timesS, sane.values);
        Periodogram.Peak peak = periodogram.strongest(LOWEST_HZ, highestHz);
        double share01 = 2 * peak.power() / (sane.size() - 1);
        if (peak.falseAlarm01() > FALSE_ALARM01 || !standsAlone(periodogram, peak, sane.seconds(), highestHz)) {
            return Optional.empty();
        }
        List<Flicker> flickers =
                mayBeLight ? Flicker.seenAs(peak.frequencyHz(), sane.ratePerS(), sane.seconds()) : List.of();
        return Optional.of(
                new Wobble(peak.frequencyHz(), peak.amplitude(), Math.min(1, share01), flickers, sane.ratePerS()));
    }

    /** Whether the mean power of the rest of the band is small beside the peak. */
    private static boolean standsAlone(Periodogram periodogram, Periodogram.Peak peak, double seconds, double highHz) {
        double widthHz = 2 / seconds;
        double[] others = new double[24];
        int count = 0;
        for (int i = 0; i < others.length; i++) {
            double hz = LOWEST_HZ + (i + 0.5) * (highHz - LOWEST_HZ) / others.length;
            if (Math.abs(hz - peak.frequencyHz()) > widthHz) {
                others[count++] = periodogram.power(hz);
            }
        }
        double largest = Arrays.stream(others).limit(count).max().orElse(0);
        return peak.power() > ABOVE_OTHERS * largest;
    }

    /** Whether it is most of the scatter of a channel. */
    boolean explains(double deviation) {
        return amplitude / Math.sqrt(2) > 0.7 * deviation;
    }

    Optional<Complaint> complaint(Measure measure) {
        if (amplitude <= measure.inUnit(HEARD_MM, HEARD_COUNTS)) {
            return Optional.empty();
        }
        Verdict verdict = amplitude <= measure.inUnit(POOR_MM, POOR_COUNTS) ? Verdict.USABLE : Verdict.POOR;
        String wobble =
                "wobble of " + Figures.text(frequencyHz, 1) + " Hz and " + measure.words(amplitude) + " to each side";
        if (flickers.isEmpty()) {
            return Optional.of(new Complaint(
                    verdict,
                    "a " + wobble + ", cause unknown",
                    "look for what moves or shines at that pace: a fan, a screen, a shaking stand"));
        }
        return Optional.of(new Complaint(
                verdict,
                Flicker.words(flickers) + " seen at " + Figures.text(linesPerS, 1) + " lines a second as a " + wobble,
                "let the board average over "
                        + Figures.text(Flicker.averagingMs(flickers), Flicker.averagingMs(flickers) % 1 == 0 ? 0 : 1)
                        + " ms"));
    }
}
