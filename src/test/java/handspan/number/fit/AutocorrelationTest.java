package handspan.number.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class AutocorrelationTest {
    /** Six figures, as the sets' own notes ask of lag-1 values. */
    private static final double SIX_FIGURES = 1e-6;

    /** Of the share n_eff / n: what 20 series of 20,000 values and the sum's cut at zero leave open. */
    private static final double SHARE_TOLERANCE = 0.05;

    private static final double EXACT = 1e-12;

    static Stream<NistSeries> certified() {
        return Stream.of(
                NistSeries.MICHELSO,
                NistSeries.LOTTERY,
                NistSeries.NUM_ACC_1,
                NistSeries.NUM_ACC_2,
                NistSeries.NUM_ACC_3);
    }

    @ParameterizedTest
    @MethodSource("certified")
    void neighboursRepeatEachOtherAsCertified(NistSeries series) {
        assertEquals(series.lagOne(), Autocorrelation.at(series.array(), 1), SIX_FIGURES * Math.abs(series.lagOne()));
    }

    @Test
    void aSeriesAgreesWithItselfAndAConstantOneWithNothing() {
        assertEquals(1, Autocorrelation.at(NistSeries.LOTTERY.array(), 0), EXACT);
        assertEquals(0, Autocorrelation.at(new double[] {7, 7, 7, 7}, 1), EXACT);
    }

    /** For x(i) = rho x(i-1) + e(i), r(k) = rho^k and n_eff = n (1 - rho) / (1 + rho): sum of the geometric series. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3, 0.6, 0.9})
    void readingsThatRememberTheLastOneAreWorthFewer(double rho) {
        int n = 20_000;
        int runs = 20;
        double sum = 0;
        Random random = new Random(4);
        for (int run = 0; run < runs; run++) {
            sum += Autocorrelation.effectiveSize(remembering(random, rho, n)) / n;
        }
        double share = (1 - rho) / (1 + rho);
        assertEquals(share, sum / runs, SHARE_TOLERANCE * share);
    }

    /** Negative correlation would make them worth more; the count says at most n. */
    @Test
    void readingsAreNeverWorthMoreThanTheirNumber() {
        assertEquals(1001, Autocorrelation.effectiveSize(NistSeries.NUM_ACC_2.array()), EXACT);
        assertEquals(5, Autocorrelation.effectiveSize(new double[] {7, 7, 7, 7, 7}), EXACT);
    }

    /** A straight drift: one value is all that 200 readings are worth, near enough. */
    @Test
    void aSeriesThatOnlyDriftsIsWorthAlmostNothing() {
        double[] drift = new double[200];
        Arrays.setAll(drift, i -> i);
        double worth = Autocorrelation.effectiveSize(drift);
        assertEquals(2, worth, 1, "worth " + worth);
    }

    private static double[] remembering(Random random, double rho, int n) {
        double[] values = new double[n];
        double value = random.nextGaussian();
        for (int i = 0; i < n; i++) {
            values[i] = value;
            value = rho * value + Math.sqrt(1 - rho * rho) * random.nextGaussian();
        }
        return values;
    }
}
