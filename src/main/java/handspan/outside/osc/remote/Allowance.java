package handspan.outside.osc.remote;

/**
 * How often something may be: so many at once, and then so many a second on average (a token bucket, as traffic is
 * limited in networks: RFC 2697, 1999, section 3, one rate and one burst). Pure; time is an argument.
 */
public final class Allowance {
    private static final double NANOS_PER_SECOND = 1e9;

    private final double perSecond;
    private final double atOnce;
    private double left;
    private long lastNanos;
    private boolean started;

    /**
     * A full allowance.
     *
     * @param perSecond above 0
     * @param atOnce 1 or more
     */
    public Allowance(double perSecond, double atOnce) {
        if (!(perSecond > 0) || !(atOnce >= 1)) {
            throw new IllegalArgumentException(
                    "allowance of " + perSecond + " a second (above 0), " + atOnce + " at once (1 or more)");
        }
        this.perSecond = perSecond;
        this.atOnce = atOnce;
        this.left = atOnce;
    }

    /**
     * Takes one, where there is one left.
     *
     * @param timeNanos never before the last one
     */
    public boolean take(long timeNanos) {
        if (started) {
            left = Math.min(atOnce, left + perSecond * Math.max(0, timeNanos - lastNanos) / NANOS_PER_SECOND);
        }
        started = true;
        lastNanos = timeNanos;
        if (left < 1) {
            return false;
        }
        left -= 1;
        return true;
    }
}
