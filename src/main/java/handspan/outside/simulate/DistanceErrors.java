package handspan.outside.simulate;

import java.util.Random;

/**
 * Steady errors of one distance sensor: {@code sensed = (1 + scale) d + offset + bend * sin(pi d / 600 mm)}, the last
 * term only up to 600 mm. The form is invented; the limits of {@link #seeded} are chosen wide for cheap parts.
 *
 * @param scale share by which distances are stretched, -0.2..0.2
 * @param offsetMm added to every distance, mm
 * @param bendMm peak of the smooth non-linearity, mm
 */
public record DistanceErrors(double scale, double offsetMm, double bendMm) {
    /** A perfect sensor. */
    public static final DistanceErrors NONE = new DistanceErrors(0, 0, 0);

    private static final double BEND_SPAN_MM = 600;

    public DistanceErrors {
        Allowed.within("scale error", scale, -0.2, 0.2, "of 1");
        Allowed.within("offset", offsetMm, -100, 100, "mm");
        Allowed.within("non-linearity", bendMm, -30, 30, "mm");
    }

    /** One specimen: scale within 2 %, offset within 10 mm, non-linearity within 5 mm, each spread evenly. */
    public static DistanceErrors seeded(long seed) {
        Random random = Seeds.random(seed, "distance errors");
        return new DistanceErrors(
                Seeds.between(random, -0.02, 0.02), Seeds.between(random, -10, 10), Seeds.between(random, -5, 5));
    }

    /** The distance the sensor takes a true one for, mm, before noise. */
    public double sensedMm(double trueMm) {
        double bend = trueMm > 0 && trueMm < BEND_SPAN_MM ? bendMm * Math.sin(Math.PI * trueMm / BEND_SPAN_MM) : 0;
        return (1 + scale) * trueMm + offsetMm + bend;
    }
}
