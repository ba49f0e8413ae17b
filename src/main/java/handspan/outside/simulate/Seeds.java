package handspan.outside.simulate;

import java.util.Random;

/**
 * Seeds for the parts of one instrument, far apart even for neighbouring instrument seeds.
 *
 * <p>{@link Random} is used because its sequence is fixed by its contract, but its first values hardly differ between
 * seeds 1, 2, 3; so every seed is mixed first. Mixing function: G. L. Steele, D. Lea, C. H. Flood, Fast splittable
 * pseudorandom number generators, OOPSLA 2014 (constants from memory).
 */
final class Seeds {
    private static final long GOLDEN_GAMMA = 0x9E3779B97F4A7C15L;

    private Seeds() {}

    /** A seed for one named part. */
    static long of(long seed, String part) {
        return mix(mix(seed) + GOLDEN_GAMMA * part.hashCode());
    }

    /** A generator for one named part. */
    static Random random(long seed, String part) {
        return new Random(of(seed, part));
    }

    /** A value spread evenly between two limits. */
    static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static long mix(long value) {
        long z = value + GOLDEN_GAMMA;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
