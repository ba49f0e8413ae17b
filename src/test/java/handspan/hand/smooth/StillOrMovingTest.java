package handspan.hand.smooth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.linear.LinearEvolution;
import org.hipparchus.filtering.kalman.linear.LinearKalmanFilter;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposer;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StillOrMovingTest {
    private static final double TOLERANCE_MM = 1e-6;

    /** What the small chance that a reading is wild takes off it. */
    private static final double WILD_MM = 0.3;

    /**
     * A hand that is known to swing is followed by the moving filter alone, which settles to the alpha-beta filter of
     * the tracking index {@code L = A T^2 / s}: {@code r = (4 + L - sqrt(8 L + L^2)) / 4}, {@code alpha = 1 - r^2},
     * {@code beta = 2 (2 - alpha) - 4 sqrt(1 - alpha)}. Source: P. R. Kalata, The tracking index, IEEE Trans. Aerospace
     * and Electronic Systems 20 (1984) 174-182 (from memory).
     */
    @ParameterizedTest(name = "{0} readings a second, noise {1} mm")
    @CsvSource({"50, 2.15", "18, 1.7", "100, 3"})
    void aSwingingHandIsFollowedByTheAlphaBetaFilterOfItsTrackingIndex(double ratePerS, double noiseMm) {
        double index = 9000 / (ratePerS * ratePerS * noiseMm);
        double r = (4 + index - Math.sqrt(8 * index + index * index)) / 4;
        double alpha = 1 - r * r;
        double beta = 2 * (2 - alpha) - 4 * Math.sqrt(1 - alpha);
        StillOrMoving motion = new StillOrMoving(SmoothSettings.reaching(noiseMm, ratePerS, 0.83));
        motion.start(200);
        Random random = new Random(5);
        double x = 200;
        double v = 0;
        for (int i = 1; i < 2000; i++) {
            double mm = 200 + 60 * Math.sin(8 * i / ratePerS) + noiseMm * random.nextGaussian();
            motion.next(mm, 1 / ratePerS, 1);
            double surprise = mm - (x + v / ratePerS);
            x += v / ratePerS + alpha * surprise;
            v += beta * surprise * ratePerS;
            if (i > 500) {
                assertEquals(x, motion.mm(), WILD_MM, "reading " + i);
            }
        }
    }

    /** A hand in no noise to speak of, still: {@code 1 - (1 - a)^n} of a small step, as a one-pole of share a. */
    @Test
    void aStillHandsSmallStepGoesAsThatOfAOnePole() {
        SmoothSettings settings = SmoothSettings.reaching(2.15, 50, 0.83);
        StillOrMoving motion = new StillOrMoving(settings);
        motion.start(300);
        for (int i = 0; i < 500; i++) {
            motion.next(300, 0.02, 0);
        }
        for (int n = 1; n < 30; n++) {
            motion.next(300.5, 0.02, 0);
            assertEquals(0.5 * (1 - Math.pow(1 - settings.share01(), n)), motion.mm() - 300, 0.01);
        }
    }

    /**
     * The whole of it against the same algorithm in matrices (Blom and Bar-Shalom 1988, as in Bar-Shalom, Li,
     * Kirubarajan 2001, section 11.6.6), each filter's step by the Kalman filter of a numerics library.
     */
    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"1", "2", "3"})
    void itIsTheInteractingPairOfKalmanFilters(int seed) {
        Random random = new Random(seed);
        SmoothSettings settings = SmoothSettings.reaching(2.15, 50, 0.83);
        StillOrMoving motion = new StillOrMoving(settings);
        InMatrices oracle = new InMatrices(settings, 300);
        motion.start(300);
        double hand = 300;
        for (int i = 0; i < 400; i++) {
            double intervalS = 0.01 + 0.02 * random.nextDouble();
            hand += i % 100 > 60 ? 500 * intervalS * (i % 200 > 100 ? -1 : 1) : 0;
            double swing = i % 150 > 120 ? random.nextDouble() : 0;
            double mm = hand + 2.15 * random.nextGaussian() + (i % 37 == 0 ? 40 : 0);
            motion.next(mm, intervalS, swing);
            oracle.next(mm, intervalS, swing);
            assertEquals(oracle.mm(), motion.mm(), TOLERANCE_MM, "reading " + i);
            assertEquals(oracle.mmPerS(), motion.mmPerS(), 1e3 * TOLERANCE_MM, "reading " + i);
        }
    }

    @Test
    void howeverFarItJumpsItStaysANumberAndComesAlong() {
        StillOrMoving motion = new StillOrMoving(SmoothSettings.reaching(0, 50, 0.83));
        motion.start(0);
        for (double mm : new double[] {0, 5000, -5000, 1e6, 0, 0, 0, 1e-9}) {
            motion.next(mm, 0.02, 0);
            assertTrue(Double.isFinite(motion.mm()) && Double.isFinite(motion.mmPerS()), mm + " mm");
        }
        for (int i = 0; i < 100; i++) {
            motion.next(250, i % 7 == 0 ? 1e-4 : 0.5, 0);
        }
        assertEquals(250, motion.mm(), 0.01);
    }

    /** Two filters of two states each, with all that lies between them written in matrices. */
    private static final class InMatrices {
        private final SmoothSettings settings;
        private final RealVector[] x = new RealVector[2];
        private final RealMatrix[] p = new RealMatrix[2];
        private double[] weight = {0.9, 0.1};

        InMatrices(SmoothSettings settings, double mm) {
            this.settings = settings;
            for (int j = 0; j < 2; j++) {
                x[j] = new ArrayRealVector(new double[] {mm, 0});
                p[j] = MatrixUtils.createRealDiagonalMatrix(new double[] {2.15 * 2.15, j * 1e4});
            }
        }

        void next(double mm, double t, double swing) {
            double goes = (1 - swing) * (1 - Math.exp(-t / 20)) + swing * (1 - Math.exp(-t / 0.03));
            double stops = (1 - swing) * (1 - Math.exp(-t / 0.3));
            double[][] change = {{1 - goes, goes}, {stops, 1 - stops}};
            double[] chance = new double[2];
            RealVector[] mixedX = new RealVector[2];
            RealMatrix[] mixedP = new RealMatrix[2];
            for (int j = 0; j < 2; j++) {
                chance[j] = change[0][j] * weight[0] + change[1][j] * weight[1];
                mixedX[j] = x[0].mapMultiply(change[0][j] * weight[0] / chance[j])
                        .add(x[1].mapMultiply(change[1][j] * weight[1] / chance[j]));
                mixedP[j] = new Array2DRowRealMatrix(2, 2);
                for (int i = 0; i < 2; i++) {
                    RealVector off = x[i].subtract(mixedX[j]);
                    mixedP[j] = mixedP[j].add(
                            p[i].add(off.outerProduct(off)).scalarMultiply(change[i][j] * weight[i] / chance[j]));
                }
            }
            double share = settings.share01();
            double r = 2.15 * 2.15;
            double creep = share * share * r / (1 - share) * 50 * t;
            double a2 = 9000.0 * 9000;
            RealMatrix[] f = {
                new Array2DRowRealMatrix(new double[][] {{1, 0}, {0, 0}}),
                new Array2DRowRealMatrix(new double[][] {{1, t}, {0, 1}})
            };
            RealMatrix[] q = {
                new Array2DRowRealMatrix(new double[][] {{creep, 0}, {0, 0}}),
                new Array2DRowRealMatrix(new double[][] {
                    {a2 * Math.pow(t, 4) / 4, a2 * Math.pow(t, 3) / 2}, {a2 * Math.pow(t, 3) / 2, a2 * t * t}
                })
            };
            double[] likelihood = new double[2];
            for (int j = 0; j < 2; j++) {
                double s = f[j].multiply(mixedP[j])
                                .multiplyTransposed(f[j])
                                .add(q[j])
                                .getEntry(0, 0)
                        + r;
                double surprise = mm - f[j].operate(mixedX[j]).getEntry(0);
                double meant = 0.998 * Math.exp(-surprise * surprise / (2 * s)) / Math.sqrt(2 * Math.PI * s);
                likelihood[j] = meant + 2e-6;
                RealVector expected = f[j].operate(mixedX[j]);
                RealMatrix unread =
                        f[j].multiply(mixedP[j]).multiplyTransposed(f[j]).add(q[j]);
                step(j, mixedX[j], mixedP[j], f[j], q[j], mm, r);
                // a mean of having read it and not having read it, and the spread between the two
                double sure = meant / likelihood[j];
                RealVector way = x[j].subtract(expected);
                p[j] = p[j].scalarMultiply(sure)
                        .add(unread.scalarMultiply(1 - sure))
                        .add(way.outerProduct(way).scalarMultiply(sure * (1 - sure)));
                x[j] = expected.add(way.mapMultiply(sure));
            }
            double sum = likelihood[0] * chance[0] + likelihood[1] * chance[1];
            weight = new double[] {likelihood[0] * chance[0] / sum, likelihood[1] * chance[1] / sum};
        }

        private void step(int j, RealVector fromX, RealMatrix fromP, RealMatrix f, RealMatrix q, double mm, double r) {
            RealMatrix h = new Array2DRowRealMatrix(new double[][] {{1, 0}});
            LinearKalmanFilter<Reading> filter = new LinearKalmanFilter<>(
                    new CholeskyDecomposer(1e-15, 1e-15),
                    reading -> new LinearEvolution(f, new Array2DRowRealMatrix(2, 1), new ArrayRealVector(1), q, h),
                    new ProcessEstimate(0, fromX, fromP));
            ProcessEstimate after = filter.estimationStep(new Reading(mm, r));
            x[j] = after.getState();
            p[j] = after.getCovariance();
        }

        double mm() {
            return weight[0] * x[0].getEntry(0) + weight[1] * x[1].getEntry(0);
        }

        double mmPerS() {
            return weight[0] * x[0].getEntry(1) + weight[1] * x[1].getEntry(1);
        }
    }

    private record Reading(double mm, double variance) implements org.hipparchus.filtering.kalman.Measurement {
        @Override
        public double getTime() {
            return 1;
        }

        @Override
        public RealVector getValue() {
            return new ArrayRealVector(new double[] {mm});
        }

        @Override
        public RealMatrix getCovariance() {
            return new Array2DRowRealMatrix(new double[][] {{variance}});
        }
    }
}
