package handspan.music.passage;

import handspan.number.fit.Robust;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Vibrato over a passage.
 *
 * @param searched notes long enough to be searched, 1 s and more
 * @param found vibrato in those that have one
 */
public record VibratoUse(int searched, List<Vibrato> found) {
    /** Chance that a passage without vibrato shows one somewhere. */
    static final double CHANCE01 = 0.01;

    /** Copies the list. */
    public VibratoUse {
        found = List.copyOf(found);
    }

    static VibratoUse of(List<Visit> visits) {
        return new VibratoUse(
                (int) visits.stream().filter(Visit::isSearched).count(),
                visits.stream().map(Visit::vibrato).flatMap(Optional::stream).toList());
    }

    /** Middle rate, turns a second; NaN where none was found. */
    public double rateHz() {
        return middle(Vibrato::rateHz);
    }

    /** Middle width, half of peak to peak; NaN where none was found. */
    public double widthCents() {
        return middle(Vibrato::widthCents);
    }

    private double middle(ToDoubleFunction<Vibrato> figure) {
        return found.isEmpty()
                ? Double.NaN
                : Robust.median(found.stream().mapToDouble(figure).toArray());
    }
}
