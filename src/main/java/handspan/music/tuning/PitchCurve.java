package handspan.music.tuning;

/**
 * From place to pitch. Frequency is exponential in place, {@code f(u) = fLow (fHigh / fLow)^u}, so that the key number
 * is linear in it and equal hand travel gives equal intervals.
 *
 * @param lowKey key number at the low end
 * @param highKey key number at the high end, above the low one
 * @param direction which end of the zone is high
 */
public record PitchCurve(double lowKey, double highKey, Direction direction) {
    /** Checks the order. */
    public PitchCurve {
        if (!(highKey > lowKey)) {
            throw new IllegalArgumentException(
                    "range from key " + lowKey + " to " + highKey + " (the high end above the low)");
        }
    }

    /**
     * Key number at a place.
     *
     * @param place01 0 = near end, 1 = far end
     */
    public double key(double place01) {
        double up = direction == Direction.HIGH_FAR ? place01 : 1 - place01;
        return lowKey + (highKey - lowKey) * up;
    }

    /** Place of a key number: the inverse of {@link #key}. */
    public double place01(double key) {
        double up = (key - lowKey) / (highKey - lowKey);
        return direction == Direction.HIGH_FAR ? up : 1 - up;
    }

    /** Semitones from end to end. */
    public double span() {
        return highKey - lowKey;
    }
}
