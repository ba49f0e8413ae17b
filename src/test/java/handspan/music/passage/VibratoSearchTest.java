package handspan.music.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Noise is not vibrato; vibrato within noise is. The noise is invented, its seeds are fixed. */
class VibratoSearchTest {
    private static final int SEEDS = 200;

    /**
     * What a smoothed sensor prints: white readings through a one-pole low pass, a straight line from reading to
     * reading, and a hand that wanders.
     */
    private static double[] noise(Random random, double seconds, double readingsPerS, double cutoffHz) {
        int count = (int) Math.round(seconds / Sounding.STEP_S);
        double keep = Math.exp(-2 * Math.PI * cutoffHz / readingsPerS);
        int readings = (int) Math.ceil(seconds * readingsPerS) + 2;
        double[] smooth = new double[readings];
        double wander = 0;
        double low = random.nextGaussian() * Math.sqrt((1 - keep) / (1 + keep));
        for (int i = 0; i < readings; i++) {
            low = keep * low + (1 - keep) * random.nextGaussian();
            wander += 0.1 * random.nextGaussian();
            smooth[i] = 20 * low + wander;
        }
        double[] cents = new double[count];
        for (int i = 0; i < count; i++) {
            double at = i * Sounding.STEP_S * readingsPerS;
            int before = (int) at;
            cents[i] = smooth[before] + (at - before) * (smooth[before + 1] - smooth[before]);
        }
        return cents;
    }

    @ParameterizedTest
    @CsvSource({
        "1, 50, 2",
        "1, 50, 8",
        "1.2, 50, 1",
        "1.2, 50, 4",
        "1.2, 18, 3",
        "2, 30, 3",
        "2, 50, 10",
        "4, 50, 3",
        "4, 18, 2"
    })
    void colouredNoiseIsTakenForVibratoNoMoreOftenThanStated(double seconds, double readingsPerS, double cutoffHz) {
        Random random = new Random(4);
        double stated = 0.02;
        int found = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            if (VibratoSearch.in(noise(random, seconds, readingsPerS, cutoffHz), stated)
                    .isPresent()) {
                found++;
            }
        }
        // binomial: mean 4, standard deviation 2.0; 10 is three of them above
        assertTrue(found <= 10, found + " of " + SEEDS);
    }

    @ParameterizedTest
    @CsvSource({"1.5", "2"})
    void vibratoOfTwentyFiveCentsIsFoundInNineOfTenNotes(double seconds) {
        Random random = new Random(5);
        int found = 0;
        for (int seed = 0; seed < 200; seed++) {
            double[] cents = noise(random, seconds, 50, 4);
            for (int i = 0; i < cents.length; i++) {
                cents[i] += 25 * Math.sin(2 * Math.PI * 6 * i * Sounding.STEP_S);
            }
            Optional<Vibrato> vibrato = VibratoSearch.in(cents, 0.001);
            found += vibrato.isPresent() ? 1 : 0;
        }
        assertTrue(found >= 180, found + " of 200");
    }

    @Test
    void aSlowOrAFastWobbleIsNoVibrato() {
        for (double hz : new double[] {1.5, 2.5, 11}) {
            double[] cents = noise(new Random(6), 3, 50, 4);
            for (int i = 0; i < cents.length; i++) {
                cents[i] += 25 * Math.sin(2 * Math.PI * hz * i * Sounding.STEP_S);
            }
            assertEquals(Optional.empty(), VibratoSearch.in(cents, 0.001), "at " + hz + " Hz");
        }
    }

    @Test
    void aShortNoteIsNotSearched() {
        assertEquals(Optional.empty(), VibratoSearch.in(new double[99], 0.5));
    }
}
