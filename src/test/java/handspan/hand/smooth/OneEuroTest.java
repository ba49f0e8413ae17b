package handspan.hand.smooth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OneEuroTest {
    /** What the authors' own test allows. */
    private static final double TOLERANCE = 1e-4;

    private static final double NOMINAL_INTERVAL_S = 1 / 120.0;

    /**
     * Time in s, noisy input, output of the filter: three of each a line. Source: first 66 rows of the test vector that
     * comes with the authors' program (G. Casiez, N. Roussel, D. Vogel, 1 Euro Filter, CHI 2012, pp. 2527-2530, doi
     * 10.1145/2207676.2208639; BSD 3-clause licence), 120 Hz, minimum cut-off 1.0 Hz, beta 0.1, speed cut-off 1.0 Hz.
     */
    private static final String REFERENCE = """
            0 -0.0385099 -0.0385099   0.00833333 -0.0280664 -0.0379872   0.0166667 0.048622 -0.0334427
            0.025 0.111498 -0.0252696   0.0333333 0.053026 -0.0207099   0.0416667 0.120548 -0.0119912
            0.05 0.00972308 -0.0106507   0.0583333 0.074193 -0.00526521   0.0666667 -0.0236801 -0.00641239
            0.075 0.0462396 -0.00308863   0.0833333 0.0892027 0.00291027   0.0916667 0.158329 0.0135545
            0.1 0.0423086 0.01552   0.108333 0.0887203 0.0206024   0.116667 0.039102 0.0218784
            0.125 0.140277 0.030313   0.133333 0.156938 0.0396331   0.141667 0.0961089 0.0438101
            0.15 0.216881 0.0572083   0.158333 0.067538 0.057997   0.166667 0.0737634 0.0591871
            0.175 0.0989231 0.0621793   0.183333 0.148209 0.0687489   0.191667 0.0959887 0.0708137
            0.2 0.225627 0.0829925   0.208333 0.292078 0.100305   0.216667 0.185221 0.107391
            0.225 0.133595 0.109553   0.233333 0.216387 0.118501   0.241667 0.316189 0.135759
            0.25 0.156782 0.137568   0.258333 0.164811 0.139884   0.266667 0.167903 0.142239
            0.275 0.273214 0.153484   0.283333 0.305514 0.166876   0.291667 0.342528 0.182828
            0.3 0.334796 0.196929   0.308333 0.210729 0.198186   0.316667 0.401551 0.217377
            0.325 0.267666 0.222081   0.333333 0.365411 0.235717   0.341667 0.429558 0.254702
            0.35 0.400613 0.269202   0.358333 0.377235 0.279981   0.366667 0.290475 0.281006
            0.375 0.3709 0.289789   0.383333 0.343945 0.295032   0.391667 0.409876 0.306231
            0.4 0.449394 0.320391   0.408333 0.408817 0.32913   0.416667 0.460212 0.342217
            0.425 0.350016 0.342979   0.433333 0.460729 0.354566   0.441667 0.460575 0.36504
            0.45 0.422736 0.370691   0.458333 0.494404 0.382917   0.466667 0.370493 0.381722
            0.475 0.458812 0.389119   0.483333 0.437653 0.39373   0.491667 0.540203 0.407881
            0.5 0.562047 0.423039   0.508333 0.499726 0.430553   0.516667 0.45569 0.432974
            0.525 0.488606 0.43829   0.533333 0.414257 0.436061   0.541667 0.547406 0.446481
            """;

    /**
     * The authors' program takes a first time of exactly 0 as missing, so that its second row has the usual interval.
     */
    @Test
    void theFilterDoesWhatItsAuthorsProgramDoes() {
        double[] figures = Arrays.stream(REFERENCE.strip().split("\\s+", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        OneEuro filter = new OneEuro(1, 0.1, 1);
        for (int row = 0; row < figures.length / 3; row++) {
            double timeS = figures[3 * row];
            double intervalS = row < 2 ? NOMINAL_INTERVAL_S : timeS - figures[3 * row - 3];
            double output = filter.next(figures[3 * row + 1], intervalS);
            assertEquals(figures[3 * row + 2], output, TOLERANCE, "row " + row);
        }
    }

    /** Without the rise with speed it is a one-pole: the way left after n readings of a step is (1 - a)^n. */
    @Test
    void withoutBetaItIsAPlainLowPass() {
        OneEuro filter = new OneEuro(3, 0, 1);
        filter.next(0, 0.02);
        double share = OnePole.share01(3, 0.02);
        for (int n = 1; n < 30; n++) {
            assertEquals(100 - 100 * Math.pow(1 - share, n), filter.next(100, 0.02), 1e-9);
        }
    }

    /**
     * On a ramp of v mm/s all settles: reading less last output is v T / a, so the speed seen is v / a, and the output
     * stays v T (1 - a) / a behind, with a the share at the cut-off minimum + beta v / a.
     */
    @Test
    void aFastHandIsFollowedWithLessLagThanASlowOne() {
        double lastLagS = Double.POSITIVE_INFINITY;
        for (double speed : new double[] {20, 200, 1000}) {
            OneEuro filter = new OneEuro(1, 0.05, 1);
            double output = 0;
            for (int i = 0; i <= 1000; i++) {
                output = filter.next(speed * i * 0.02, 0.02);
            }
            double share = OnePole.share01(1 + 0.05 * filter.speedMmPerS(), 0.02);
            assertEquals(speed / share, filter.speedMmPerS(), 1e-6 * filter.speedMmPerS(), speed + " mm/s");
            double lagS = (20 * speed - output) / speed;
            assertEquals(0.02 * (1 - share) / share, lagS, 1e-6, speed + " mm/s");
            assertTrue(lagS < lastLagS / 2, "lag " + lagS + " s at " + speed + " mm/s");
            lastLagS = lagS;
        }
    }

    @Test
    void aStillHandIsSteadierThanItsReadings() {
        OneEuro filter = new OneEuro(1, 0.001, 1);
        Random random = new Random(42);
        double worst = 0;
        for (int i = 0; i < 2000; i++) {
            double output = filter.next(250 + random.nextGaussian(), 0.02);
            worst = i < 100 ? 0 : Math.max(worst, Math.abs(output - 250));
        }
        assertTrue(worst < 1.3, "strays by " + worst + " mm");
    }

    @Test
    void afterAResetTheNextReadingIsTakenAsItIs() {
        OneEuro filter = new OneEuro(1, 0.1, 1);
        assertEquals(0, filter.speedMmPerS(), 0);
        filter.next(100, 0.02);
        filter.next(150, 0.02);
        assertTrue(filter.speedMmPerS() > 0);
        filter.reset();
        assertEquals(0, filter.speedMmPerS(), 0);
        assertEquals(400, filter.next(400, 0.02), 0);
        assertEquals(0, filter.speedMmPerS(), 0);
    }

    @Test
    void settingsThatMakeNoFilterAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new OneEuro(0, 0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> new OneEuro(1, -0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> new OneEuro(1, 0.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new OneEuro(Double.NaN, 0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> new OneEuro(1, Double.NaN, 1));
    }
}
