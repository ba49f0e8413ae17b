package handspan.music.tuning;

/**
 * Which notes stand at the ends of a zone, and how those between are spread.
 *
 * @param lowKey key at the low end, 0..126
 * @param highKey key at the high end, above the low one, at most 127
 * @param direction which end is high
 * @param warp of the pitch curve, -3..3: 0 even, above 0 finer near, below 0 finer far
 */
public record PitchRange(int lowKey, int highKey, Direction direction, double warp) {
    /** Checks order and warp. */
    public PitchRange {
        if (lowKey < 0 || highKey > 127 || highKey <= lowKey) {
            throw new IllegalArgumentException("range from " + lowKey + " to " + highKey
                    + " (key numbers 0..127, the high end above the low): for example A3 to A5");
        }
        new PitchCurve(lowKey, highKey, direction, warp);
    }
}
