package handspan.music.tuning;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Scales by their usual names. Those of semitones follow the temperament; those of cents and ratios sound as written.
 *
 * <p>Outside the Western twelve (common practice, from memory): rast and bayati in quarter tones as they are notated,
 * the even pentatonic and heptatonic as two often measured tunings are idealised, the harmonics 8 to 16, and
 * Pythagorean and just major in ratios.
 */
public final class Scales {
    private static final List<Scale> ALL = List.of(
            Scale.ofSemitones("chromatic", 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11),
            Scale.ofSemitones("major", 0, 2, 4, 5, 7, 9, 11),
            Scale.ofSemitones("natural-minor", 0, 2, 3, 5, 7, 8, 10),
            Scale.ofSemitones("harmonic-minor", 0, 2, 3, 5, 7, 8, 11),
            Scale.ofSemitones("melodic-minor", 0, 2, 3, 5, 7, 9, 11),
            Scale.ofSemitones("dorian", 0, 2, 3, 5, 7, 9, 10),
            Scale.ofSemitones("phrygian", 0, 1, 3, 5, 7, 8, 10),
            Scale.ofSemitones("lydian", 0, 2, 4, 6, 7, 9, 11),
            Scale.ofSemitones("mixolydian", 0, 2, 4, 5, 7, 9, 10),
            Scale.ofSemitones("locrian", 0, 1, 3, 5, 6, 8, 10),
            Scale.ofSemitones("phrygian-dominant", 0, 1, 4, 5, 7, 8, 10),
            Scale.ofSemitones("double-harmonic-major", 0, 1, 4, 5, 7, 8, 11),
            Scale.ofSemitones("hungarian-minor", 0, 2, 3, 6, 7, 8, 11),
            Scale.lettered("major-pentatonic", List.of(0, 1, 2, 4, 5), 0, 2, 4, 7, 9),
            Scale.lettered("minor-pentatonic", List.of(0, 2, 3, 4, 6), 0, 3, 5, 7, 10),
            Scale.lettered("blues", List.of(0, 2, 3, 4, 4, 6), 0, 3, 5, 6, 7, 10),
            Scale.lettered("whole-tone", List.of(0, 1, 2, 3, 4, 5), 0, 2, 4, 6, 8, 10),
            Scale.lettered("octatonic", List.of(0, 1, 2, 3, 4, 5, 5, 6), 0, 2, 3, 5, 6, 8, 9, 11),
            Scale.lettered("hirajoshi", List.of(0, 1, 2, 4, 5), 0, 2, 3, 7, 8),
            Scale.lettered("in-sen", List.of(0, 1, 3, 4, 6), 0, 1, 5, 7, 10),
            Scale.written("rast", List.of("0", "200", "350", "500", "700", "900", "1050")),
            Scale.written("bayati", List.of("0", "150", "300", "500", "700", "800", "1000")),
            Scale.written("even-pentatonic", List.of("0", "240", "480", "720", "960")),
            Scale.written("even-heptatonic", List.of("0", "171.43", "342.86", "514.29", "685.71", "857.14", "1028.57")),
            Scale.written("harmonics-8-to-16", List.of("1/1", "9/8", "5/4", "11/8", "3/2", "13/8", "7/4", "15/8")),
            Scale.written("pythagorean-major", List.of("1/1", "9/8", "81/64", "4/3", "3/2", "27/16", "243/128")),
            Scale.written("just-major", List.of("1/1", "9/8", "5/4", "4/3", "3/2", "5/3", "15/8")));

    private Scales() {}

    /** All of them. */
    public static List<Scale> all() {
        return ALL;
    }

    /**
     * The scale with a name.
     *
     * @throws IllegalArgumentException naming the scales there are
     */
    public static Scale named(String name) {
        return ALL.stream()
                .filter(scale -> scale.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("scale '" + name + "' is not known: choose one of "
                        + ALL.stream().map(Scale::name).collect(Collectors.joining(", "))));
    }
}
