package handspan.music.tuning;

import java.util.List;
import java.util.stream.Collectors;

/** Scales by their usual names, as steps of twelve-tone equal temperament. */
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
            Scale.ofSemitones("major-pentatonic", 0, 2, 4, 7, 9),
            Scale.ofSemitones("minor-pentatonic", 0, 3, 5, 7, 10),
            Scale.ofSemitones("blues", 0, 3, 5, 6, 7, 10),
            Scale.ofSemitones("whole-tone", 0, 2, 4, 6, 8, 10),
            Scale.ofSemitones("octatonic", 0, 2, 3, 5, 6, 8, 9, 11));

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
