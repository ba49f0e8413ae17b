package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DelayTest {
    private static final double TOLERANCE_SAMPLES = 0.05;

    private static final int LENGTH = 600;

    private static final int LONGEST = 20;

    @ParameterizedTest(name = "{0} samples")
    @ValueSource(doubles = {0, 0.1, 0.3, 0.49, 0.5, 1.7, 3.25, 7, 12.4, 18.8})
    void aKnownDelayIsFoundToAPartOfASample(double delay) {
        assertEquals(delay, Delay.ofFollower(signal(0), signal(delay), LONGEST), TOLERANCE_SAMPLES);
    }

    @Test
    void noiseOnTheFollowerDoesNotMoveIt() {
        Random random = new Random(31);
        double[] follower = signal(5.6);
        Arrays.setAll(follower, i -> follower[i] + random.nextGaussian());
        assertEquals(5.6, Delay.ofFollower(signal(0), follower, LONGEST), 2 * TOLERANCE_SAMPLES);
    }

    @Test
    void aFollowerThatLeadsHasNoDelay() {
        assertEquals(0, Delay.ofFollower(signal(0), signal(-3), LONGEST), 0);
    }

    @Test
    void aDelayBeyondTheLongestStopsThere() {
        assertEquals(LONGEST, Delay.ofFollower(signal(0), signal(26), LONGEST), 0);
    }

    /** With nothing that moves every delay fits; none is the answer. */
    @Test
    void twoStillSignalsHaveNoDelay() {
        assertEquals(0, Delay.ofFollower(new double[60], new double[60], 5), 0);
    }

    @Test
    void lengthsThatDoNotFitAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Delay.ofFollower(new double[50], new double[51], 5));
        assertThrows(IllegalArgumentException.class, () -> Delay.ofFollower(new double[50], new double[50], 0));
        assertThrows(IllegalArgumentException.class, () -> Delay.ofFollower(new double[50], new double[50], 25));
        assertEquals(0, Delay.ofFollower(new double[50], new double[50], 24), 0);
    }

    /** A slow reach with a faster wave on it, in mm. */
    private static double[] signal(double delay) {
        double[] signal = new double[LENGTH];
        Arrays.setAll(signal, i -> 100 * Math.sin((i - delay) / 20) + 30 * Math.sin((i - delay) / 7));
        return signal;
    }
}
