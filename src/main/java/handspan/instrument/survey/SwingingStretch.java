package handspan.instrument.survey;

import org.jspecify.annotations.Nullable;

/**
 * The longest stretch in which readings swing about one place: means over two seconds stay together, within half of
 * what readings scatter about them. That is so of a wobble or of two levels in turn over a still hand, and not of a
 * hand on its way, whose means move by more than it scatters: a straight move of D in each block scatters by {@code D /
 * sqrt(12)}.
 */
final class SwingingStretch {
    private static final double BLOCK_SECONDS = 2;
    private static final double OF_SCATTER = 0.5;

    private record Block(double mean, double deviation) {}

    private SwingingStretch() {}

    /**
     * Looks for it.
     *
     * @param slack the least that means may differ, in the channel's unit
     * @return empty (from = to) when no two neighbouring blocks agree
     */
    static StillStretch in(Series series, double ratePerS, double slack) {
        int length = Math.max(8, (int) Math.round(BLOCK_SECONDS * ratePerS));
        StillStretch best = new StillStretch(0, 0);
        int start = 0;
        Block reference = null;
        for (int from = 0; from + length <= series.size(); from += length) {
            Block block = block(series.readings(from, from + length), length);
            if (block == null || reference == null || !agree(block, reference, slack)) {
                reference = block;
                start = from;
            } else if (from + length - start > best.to() - best.from()) {
                best = new StillStretch(start, from + length);
            }
        }
        return best;
    }

    private static boolean agree(Block a, Block b, double slack) {
        return Math.abs(a.mean - b.mean) <= Math.max(slack, OF_SCATTER * Math.min(a.deviation, b.deviation));
    }

    private static @Nullable Block block(double[] readings, int length) {
        if (readings.length < length / 2) {
            return null;
        }
        double sum = 0;
        double squares = 0;
        for (double reading : readings) {
            sum += reading - readings[0];
            squares += (reading - readings[0]) * (reading - readings[0]);
        }
        double mean = sum / readings.length;
        return new Block(readings[0] + mean, Math.sqrt(Math.max(0, squares / readings.length - mean * mean)));
    }
}
