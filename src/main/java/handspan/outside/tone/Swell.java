package handspan.outside.tone;

/** A way from nothing to all without a corner at either end. */
final class Swell {
    private Swell() {}

    /**
     * Half a period of a raised cosine, {@code (1 - cos(pi x)) / 2}.
     *
     * @param share01 how much of the way is done; 0 and 1 stand for all below and above
     */
    static double raised01(double share01) {
        return (1 - Math.cos(Math.PI * Math.max(0, Math.min(1, share01)))) / 2;
    }
}
