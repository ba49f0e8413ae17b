package handspan.hand.smooth;

/**
 * Follows a hand with two motions in mind, and weighs them by how well each foretells the next reading: a hand that is
 * still is averaged, a hand that moves is followed at its own speed.
 *
 * <p>Two Kalman filters run side by side, position x and speed v:
 *
 * <pre>
 * still   x' = x,       v' = 0   position may creep: q = a^2 R / (1 - a) a reading, which makes it a one-pole of share a
 * moving  x' = x + v T, v' = v   acceleration is white, standard deviation A within a reading:
 *                                Q = A^2 [T^4/4  T^3/2;  T^3/2  T^2]
 * </pre>
 *
 * R is the variance of a reading at this place and T the time since the last. Before each reading the two are mixed by
 * the chance that the hand has gone over from one to the other, after it their weights go by the likelihood {@code f =
 * exp(-e^2 / 2S) / sqrt(2 pi S)} of what was read, e being the surprise and S its variance. One reading in five hundred
 * may be wild, anywhere within a metre: a filter takes a reading only for as sure as it is not, {@code 0.998 f / (0.998
 * f + 0.002 / 1000 mm)}.
 *
 * <p>Sources: H. A. P. Blom, Y. Bar-Shalom, The interacting multiple model algorithm for systems with Markovian
 * switching coefficients, IEEE Trans. Automatic Control 33 (1988) 780-783; Y. Bar-Shalom, X. R. Li, T. Kirubarajan,
 * Estimation with Applications to Tracking and Navigation, Wiley 2001, sections 6.3.2 (acceleration) and 11.6.6; wild
 * readings as in probabilistic data association, Y. Bar-Shalom, E. Tse, Automatica 11 (1975) 451-460 (sections and the
 * last from memory). Times of staying and the acceleration are this project's own choice, by search over simulated
 * hands and sensors. Owned by one thread.
 */
final class StillOrMoving {
    /** How long a hand stays still, s. */
    private static final double STILL_S = 20;

    /** How long it keeps moving, s. */
    private static final double MOVING_S = 0.3;

    /** Until a hand that is known to swing is taken for moving, s. */
    private static final double SWING_S = 0.03;

    /** Acceleration of a moving hand, standard deviation within a reading, mm/s^2. */
    private static final double ACCELERATION = 9000;

    /** What is known of the speed at the start, standard deviation, mm/s. */
    private static final double START_SPEED = 100;

    private static final double START_MOVING01 = 0.1;

    /** Share of readings that have nothing to do with the hand, and how they lie, a mm. */
    private static final double WILD01 = 0.002;

    private static final double WILD_PER_MM = WILD01 / 1000;

    /** Neither motion is ever ruled out. */
    private static final double LEAST_WEIGHT = 1e-9;

    private SmoothSettings settings;
    private final Motion still = new Motion();
    private final Motion moving = new Motion();
    private double moving01;

    /** What one of the two motions believes: position and speed, and their covariance. */
    private static final class Motion {
        double x;
        double v;
        double xx;
        double xv;
        double vv;
        double likelihood;
        double sure01 = 1;

        void start(double mm, double variance, double speedVariance) {
            x = mm;
            v = 0;
            xx = variance;
            xv = 0;
            vv = speedVariance;
        }

        /** Takes a reading for as sure as it is not a wild one. */
        void read(double mm, double variance) {
            double surprise = mm - x;
            double s = xx + variance;
            double gainX = xx / s;
            double gainV = xv / s;
            double meant = (1 - WILD01) * Math.exp(-0.5 * surprise * surprise / s) / Math.sqrt(2 * Math.PI * s);
            likelihood = WILD_PER_MM + meant;
            sure01 = meant / likelihood;
            double doubt = sure01 * (1 - sure01) * surprise * surprise;
            x += sure01 * gainX * surprise;
            v += sure01 * gainV * surprise;
            vv += doubt * gainV * gainV - sure01 * gainV * xv;
            xv += doubt * gainX * gainV - sure01 * gainX * xv;
            xx += doubt * gainX * gainX - sure01 * gainX * xx;
        }
    }

    /** How far a moving hand may stray from its course in a reading, in standard deviations of noise. */
    static double trackingIndex(double noiseMm, double ratePerS) {
        return ACCELERATION / (ratePerS * ratePerS * noiseMm);
    }

    StillOrMoving(SmoothSettings settings) {
        this.settings = settings;
    }

    /** Goes on with other settings, from where it is. */
    void use(SmoothSettings others) {
        settings = others;
    }

    /** The first reading is taken as it is. */
    void start(double mm) {
        double variance = square(settings.noiseMm(mm));
        still.start(mm, variance, 0);
        moving.start(mm, variance, square(START_SPEED));
        moving01 = START_MOVING01;
    }

    /**
     * Takes a reading.
     *
     * @param mm as read
     * @param intervalS since the last, above 0
     * @param swing01 how sure it is that the hand swings to and fro
     */
    void next(double mm, double intervalS, double swing01) {
        mix(intervalS, swing01);
        double noiseMm = settings.noiseMm(mm());
        double share = settings.share01(noiseMm);
        double variance = square(noiseMm);
        still.v = 0;
        still.xv = 0;
        still.vv = 0;
        still.xx += share * share * variance / (1 - share) * settings.ratePerS() * intervalS;
        double t = intervalS;
        double spread = square(ACCELERATION * t);
        moving.x += moving.v * t;
        moving.xx += 2 * t * moving.xv + t * t * moving.vv + spread * t * t / 4;
        moving.xv += t * moving.vv + spread * t / 2;
        moving.vv += spread;
        still.read(mm, variance);
        moving.read(mm, variance);
        double weight = moving01 * moving.likelihood;
        moving01 = held(weight / (weight + (1 - moving01) * still.likelihood));
    }

    /** Each motion starts from what both believe, by the chance that the hand came over from the other. */
    private void mix(double intervalS, double swing01) {
        double goes = 1 - Math.exp(-intervalS / STILL_S);
        goes += swing01 * (1 - Math.exp(-intervalS / SWING_S) - goes);
        double stops = (1 - swing01) * (1 - Math.exp(-intervalS / MOVING_S));
        double chance = held(moving01 * (1 - stops) + (1 - moving01) * goes);
        double stillFromMoving = moving01 * stops / (1 - chance);
        double movingFromStill = (1 - moving01) * goes / chance;
        double x = still.x;
        double v = still.v;
        double xx = still.xx;
        double xv = still.xv;
        double vv = still.vv;
        join(still, moving.x, moving.v, moving.xx, moving.xv, moving.vv, stillFromMoving);
        join(moving, x, v, xx, xv, vv, movingFromStill);
        moving01 = chance;
    }

    /** Takes a share of another belief in. */
    private static void join(Motion into, double x, double v, double xx, double xv, double vv, double share01) {
        double dx = x - into.x;
        double dv = v - into.v;
        double both = share01 * (1 - share01);
        into.xx += share01 * (xx - into.xx) + both * dx * dx;
        into.xv += share01 * (xv - into.xv) + both * dx * dv;
        into.vv += share01 * (vv - into.vv) + both * dv * dv;
        into.x += share01 * dx;
        into.v += share01 * dv;
    }

    private static double held(double chance01) {
        return Math.max(LEAST_WEIGHT, Math.min(1 - LEAST_WEIGHT, chance01));
    }

    private static double square(double x) {
        return x * x;
    }

    /** Where the hand is, mm. */
    double mm() {
        return still.x + moving01 * (moving.x - still.x);
    }

    /** How sure it is that the last reading was of the hand, 0..1. */
    double sure01() {
        return still.sure01 + moving01 * (moving.sure01 - still.sure01);
    }

    /** How fast it moves, mm/s, away from the sensor positive. */
    double mmPerS() {
        return moving01 * moving.v;
    }
}
