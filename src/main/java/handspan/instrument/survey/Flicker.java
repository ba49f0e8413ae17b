package handspan.instrument.survey;

import handspan.number.units.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * A light that swings with the mains, as lines at their own rate show it.
 *
 * @param sourceHz what the lamps do: twice the mains' 50 or 60 Hz, or (half of a dimmer's waves cut) the mains itself
 */
public record Flicker(double sourceHz) {
    private static final List<Flicker> KNOWN =
            List.of(new Flicker(100), new Flicker(120), new Flicker(50), new Flicker(60));

    /** Mains keep within 0.1 Hz of 50 nearly always (common practice); the line rate is measured to 0.05 %. */
    private static final double OFF01 = 0.0025;

    /** A sine that lasts T can be placed to within a part of 1/T. */
    private static final double OF_RESOLUTION = 0.5;

    /** Where a sampled sine shows itself: {@code |f - r round(f / r)|}, by the sampling theorem. */
    double seenAtHz(double linesPerS) {
        return Math.abs(sourceHz - linesPerS * Math.rint(sourceHz / linesPerS));
    }

    /** Those which lines at a rate would show as a wobble of a frequency, seen for some seconds. */
    static List<Flicker> seenAs(double wobbleHz, double linesPerS, double seconds) {
        List<Flicker> matching = new ArrayList<>();
        for (Flicker flicker : KNOWN) {
            double within = OFF01 * flicker.sourceHz + OF_RESOLUTION / seconds;
            if (linesPerS > 0 && Math.abs(flicker.seenAtHz(linesPerS) - wobbleHz) <= within) {
                matching.add(flicker);
            }
        }
        // a dimmer that cuts half of the waves is rare: named only where nothing usual would do
        boolean usual = matching.stream().anyMatch(flicker -> flicker.sourceHz >= 100);
        matching.removeIf(flicker -> usual && flicker.sourceHz < 100);
        return List.copyOf(matching);
    }

    /** Time over which the flicker averages out, ms: one wave of the mains, three of 60 and five of 100 Hz for both. */
    static double averagingMs(List<Flicker> flickers) {
        boolean fifty = flickers.stream().anyMatch(flicker -> flicker.sourceHz % 50 == 0);
        boolean sixty = flickers.stream().anyMatch(flicker -> flicker.sourceHz % 60 == 0);
        return fifty && sixty ? 50 : fifty ? 1000 / 50.0 : 1000 / 60.0;
    }

    /** Names in words, for example {@code 100 or 120 Hz flicker}. */
    static String words(List<Flicker> flickers) {
        return String.join(
                        " or ",
                        flickers.stream()
                                .map(flicker -> Figures.text(flicker.sourceHz, 0))
                                .toList())
                + " Hz flicker";
    }
}
