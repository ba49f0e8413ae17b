package handspan.music.tuning;

import handspan.number.units.Cents;
import handspan.number.units.Figures;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A scale: the notes within one octave of its tonic.
 *
 * @param name as people call it
 * @param steps strictly rising in twelve-tone equal temperament, the first nothing, all below an octave; one for each
 *     degree
 * @param letters for each degree, how many letters above the tonic's it is written (a third: 2); empty where the scale
 *     has no such custom
 */
public record Scale(String name, List<ScaleStep> steps, List<Integer> letters) {
    private static final int LETTERS = 7;

    /** Two notes nearer than this are one, cents. */
    private static final double APART_CENTS = 1e-6;

    /** Copies and checks the steps. */
    public Scale {
        steps = List.copyOf(steps);
        letters = List.copyOf(letters);
        rising(name, cents(steps, EqualDivision.TWELVE));
        if (!letters.isEmpty() && letters.size() != steps.size()) {
            throw new IllegalArgumentException("scale '" + name + "': " + letters.size() + " letters for "
                    + steps.size() + " steps (one for each, or none)");
        }
    }

    /** A scale written in cents. */
    public Scale(String name, List<Double> stepsCents) {
        this(
                name,
                stepsCents.stream()
                        .map(cents -> (ScaleStep) new ScaleStep.InCents(cents))
                        .toList(),
                List.of());
    }

    /** A scale of a player's own, written in cents and ratios. */
    public static Scale written(String name, List<String> steps) {
        return new Scale(name, steps.stream().map(ScaleStep::parse).toList(), List.of());
    }

    /** A scale of the twelve usual notes; one of seven is written with seven letters. */
    static Scale ofSemitones(String name, int... semitones) {
        return lettered(
                name,
                semitones.length == LETTERS
                        ? IntStream.range(0, LETTERS).boxed().toList()
                        : List.of(),
                semitones);
    }

    /** A scale of the twelve usual notes with its letters. */
    static Scale lettered(String name, List<Integer> letters, int... semitones) {
        return new Scale(
                name,
                Arrays.stream(semitones)
                        .mapToObj(s -> (ScaleStep) new ScaleStep.Semitones(s))
                        .toList(),
                letters);
    }

    /** Whether it is all notes of whatever temperament. */
    public boolean isEveryNote() {
        return steps.size() == 12 && isOfTheTwelve();
    }

    /** Whether it is made of the twelve usual notes, and so follows the temperament. */
    public boolean isOfTheTwelve() {
        return steps.stream().allMatch(ScaleStep.Semitones.class::isInstance);
    }

    /** Cents above the tonic in twelve-tone equal temperament. */
    public List<Double> stepsCents() {
        return stepsCents(EqualDivision.TWELVE);
    }

    /**
     * Cents above the tonic in a temperament.
     *
     * @throws IllegalArgumentException when two of its notes become one there
     */
    public List<Double> stepsCents(Temperament temperament) {
        if (isEveryNote()) {
            return temperament.allCents();
        }
        List<Double> cents = cents(steps, temperament);
        for (int i = 1; i < cents.size(); i++) {
            if (!(cents.get(i) > cents.get(i - 1) + APART_CENTS)) {
                throw new IllegalArgumentException("scale '" + name + "' in " + temperament.word() + ": its notes " + i
                        + " and " + (i + 1) + " become one: choose more steps to the octave, or another scale");
            }
        }
        return cents;
    }

    /**
     * What its notes are called from a tonic, without octaves: with its own letters where it has them, else by the
     * nearest of the twelve usual notes and the cents off it.
     */
    public List<String> noteNames(Tonic tonic) {
        Spelling spelling = Spelling.of(tonic, this);
        return stepsCents().stream()
                .map(cents -> {
                    double key = tonic.pitchClass() + cents / ReferencePitch.CENTS_PER_KEY;
                    return spelling.pitchClass(Spelling.nearest(key)) + Spelling.centsOff(key);
                })
                .toList();
    }

    private static List<Double> cents(List<ScaleStep> steps, Temperament temperament) {
        return steps.stream().map(step -> step.cents(temperament)).toList();
    }

    private static void rising(String name, List<Double> cents) {
        if (cents.isEmpty() || cents.get(0) != 0) {
            throw new IllegalArgumentException("scale '" + name + "': the first step must be 0 cents (or 1/1)");
        }
        for (int i = 1; i < cents.size(); i++) {
            if (!(cents.get(i) > cents.get(i - 1) + APART_CENTS && cents.get(i) < Cents.PER_OCTAVE)) {
                throw new IllegalArgumentException("scale '" + name + "': step " + (i + 1) + " of "
                        + Figures.text(cents.get(i), 1) + " cents after "
                        + Figures.text(cents.get(i - 1), 1) + " (steps must rise and stay under 1200)");
            }
        }
    }
}
