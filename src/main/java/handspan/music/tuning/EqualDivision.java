package handspan.music.tuning;

import handspan.number.units.Cents;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An octave cut into equal steps: {@code 1200 k / n} cents. Each of the twelve usual notes goes to the nearest step.
 *
 * @param steps to the octave, 5..53
 */
public record EqualDivision(int steps) implements Temperament {
    /** Twelve, as most instruments are tuned. */
    public static final EqualDivision TWELVE = new EqualDivision(12);

    static final String ENDING = "-equal";

    /** Checks the number. */
    public EqualDivision {
        if (steps < 5 || steps > 53) {
            throw new IllegalArgumentException(steps + " equal steps to the octave (5..53)");
        }
    }

    @Override
    public String word() {
        return steps + ENDING;
    }

    @Override
    public double cents(int semitones) {
        return step(Math.rint(semitones * steps / 12.0));
    }

    @Override
    public List<Double> allCents() {
        return IntStream.range(0, steps).mapToObj(this::step).toList();
    }

    private double step(double k) {
        return Cents.PER_OCTAVE * k / steps;
    }
}
