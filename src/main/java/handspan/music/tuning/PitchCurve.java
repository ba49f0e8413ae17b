package handspan.music.tuning;

/**
 * From place to pitch. Frequency is exponential in a warped place, {@code f(u) = fLow (fHigh / fLow)^w(u)}, so that the
 * key number is linear in {@code w}. With {@code w(u) = u} equal hand travel gives equal intervals.
 *
 * <p>The warp is {@code w(u) = (e^(k u) - 1) / (e^k - 1)}, u counted from the near end: strictly rising for every k.
 * With k above 0 it rises slowly near the sensor and fast far away: finer near; with k below 0 finer far.
 *
 * @param lowKey key number at the low end
 * @param highKey key number at the high end, above the low one
 * @param direction which end of the zone is high
 * @param warp k, -3..3; 0 is even
 */
public record PitchCurve(double lowKey, double highKey, Direction direction, double warp) {
    /** Largest warp either way: one end's millimetre then carries e^3, 20 times, the other's cents. */
    public static final double MOST_WARP = 3;

    /** Under this the warp is a straight line to within the last digits. */
    private static final double STRAIGHT = 1e-9;

    /** Checks the order and the warp. */
    public PitchCurve {
        if (!(highKey > lowKey)) {
            throw new IllegalArgumentException(
                    "range from key " + lowKey + " to " + highKey + " (the high end above the low)");
        }
        if (!(Math.abs(warp) <= MOST_WARP)) {
            throw new IllegalArgumentException("warp of " + warp + " (-3..3; 0 is even)");
        }
    }

    /** An even curve. */
    public PitchCurve(double lowKey, double highKey, Direction direction) {
        this(lowKey, highKey, direction, 0);
    }

    /** The warped place w of a place u, both 0 at the near end. */
    private double warped(double place01) {
        return Math.abs(warp) < STRAIGHT ? place01 : Math.expm1(warp * place01) / Math.expm1(warp);
    }

    private double unwarped(double w) {
        return Math.abs(warp) < STRAIGHT ? w : Math.log1p(w * Math.expm1(warp)) / warp;
    }

    /**
     * Key number at a place.
     *
     * @param place01 0 = near end, 1 = far end
     */
    public double key(double place01) {
        double w = warped(place01);
        double up = direction == Direction.HIGH_FAR ? w : 1 - w;
        return lowKey + (highKey - lowKey) * up;
    }

    /** Place of a key number between the ends: the inverse of {@link #key}. */
    public double place01(double key) {
        double up = (key - lowKey) / (highKey - lowKey);
        return unwarped(direction == Direction.HIGH_FAR ? up : 1 - up);
    }

    /** How many key numbers a whole zone would hold at the steepness of this place. */
    public double steepness(double place01) {
        double slope = Math.abs(warp) < STRAIGHT ? 1 : warp * Math.exp(warp * place01) / Math.expm1(warp);
        return (highKey - lowKey) * slope;
    }

    /** Semitones from end to end. */
    public double span() {
        return highKey - lowKey;
    }
}
