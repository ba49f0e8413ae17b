package handspan.live.path;

import handspan.room.HandSetup;
import handspan.room.Zone;

/**
 * Where a hand may play, and what a move towards an end says about whether it stays.
 *
 * @param leastMm nearest distance that plays: the zone's near end less its margin
 * @param nearMm near end of the zone
 * @param farMm far end of the zone
 * @param mostMm farthest distance that plays
 * @param noiseMm standard deviation of one reading, mm
 */
record PlayBounds(double leastMm, double nearMm, double farMm, double mostMm, double noiseMm) {
    /**
     * A hand that would have to stop harder than this to stay is leaving, mm/s^2. A reach of 400 mm that peaks at 2 m/s
     * stops with 16,400 (minimum jerk: 5.77 D/T^2 with T = 1.875 D/v; Flash, Hogan, J. Neurosci. 5 (1985)).
     */
    private static final double HARDEST_STOP_MM_PER_S2 = 25_000;

    /** Of a hand set up in a room. Where mm are no travel of the hand, nothing is out of bounds. */
    static PlayBounds of(HandSetup setup) {
        Zone zone = setup.zone();
        if (setup.scaledTravel()) {
            return new PlayBounds(
                    Double.NEGATIVE_INFINITY,
                    Double.NEGATIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    setup.noiseMm());
        }
        return new PlayBounds(
                zone.nearMm() - zone.marginMm(),
                zone.nearMm(),
                zone.farMm(),
                zone.farMm() + zone.marginMm(),
                setup.noiseMm());
    }

    /** Whether a hand can no longer stop where it would still play. */
    boolean isLeft(double mm, double mmPerS) {
        double restMm = mmPerS > 0 ? mostMm - mm : mm - leastMm;
        return restMm <= 0 || mmPerS * mmPerS > 2 * HARDEST_STOP_MM_PER_S2 * restMm;
    }

    /** Whether a hand that moves is more than half-way through the margin that it moves into. */
    boolean isPast(double mm, double mmPerS) {
        return mmPerS > 0 ? 2 * mm > farMm + mostMm : mmPerS < 0 && 2 * mm < nearMm + leastMm;
    }
}
