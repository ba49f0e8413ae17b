package handspan.music.tuning;

import java.util.Arrays;
import java.util.List;

/**
 * A scale as steps in cents above its tonic within one octave.
 *
 * @param name as people call it
 * @param stepsCents strictly rising, the first 0, all below 1200; one for each degree
 */
public record Scale(String name, List<Double> stepsCents) {
    /** Copies and checks the steps. */
    public Scale {
        stepsCents = List.copyOf(stepsCents);
        if (stepsCents.isEmpty() || stepsCents.get(0) != 0) {
            throw new IllegalArgumentException("scale '" + name + "': the first step must be 0 cents");
        }
        for (int i = 1; i < stepsCents.size(); i++) {
            if (!(stepsCents.get(i) > stepsCents.get(i - 1) && stepsCents.get(i) < 1200)) {
                throw new IllegalArgumentException("scale '" + name + "': step " + (i + 1) + " of " + stepsCents.get(i)
                        + " cents (steps must rise and stay under 1200)");
            }
        }
    }

    /** A scale of whole semitones. */
    static Scale ofSemitones(String name, int... semitones) {
        return new Scale(name, Arrays.stream(semitones).mapToObj(s -> s * 100.0).toList());
    }
}
