package handspan.room.budget;

import handspan.room.Zone;

/** What the zone's two ends leave uncertain in pitch. */
public final class PitchUncertainty {
    private PitchUncertainty() {}

    /**
     * Standard uncertainty of pitch at a place, from the standard uncertainties of the two ends.
     *
     * <p>{@code u^2 = (1 - w)^2 uNear^2 + w^2 uFar^2}: the law of propagation of uncertainty for independent inputs,
     * JCGM 100:2008 (GUM), equation (10).
     *
     * @param zone with its uncertainties
     * @param place01 w
     * @param centsPerMm of the pitch curve
     * @return cents
     */
    public static double cents(Zone zone, double place01, double centsPerMm) {
        return centsPerMm * Math.hypot((1 - place01) * zone.nearUncertaintyMm(), place01 * zone.farUncertaintyMm());
    }
}
