package handspan.number.fit;

/** How many degrees of freedom a combined uncertainty is worth. */
public final class EffectiveFreedom {
    private EffectiveFreedom() {}

    /**
     * The Welch-Satterthwaite formula {@code (sum u^2)^2 / sum (u^4 / dof)}. Source: JCGM 100:2008 (GUM), G.4.1,
     * equation (G.2b).
     *
     * @param u contributions to the combined standard uncertainty, independent, 0 or more, all in its unit
     * @param dof degrees of freedom of each, above 0; infinite where a contribution is taken as exactly known
     * @return at least the smallest of those; infinite where no contribution is in doubt
     */
    public static double of(double[] u, double[] dof) {
        if (u.length != dof.length || u.length == 0) {
            throw new IllegalArgumentException(
                    u.length + " contributions, " + dof.length + " degrees of freedom (as many of each, at least 1)");
        }
        double variance = 0;
        double below = 0;
        for (int i = 0; i < u.length; i++) {
            if (!(u[i] >= 0 && Double.isFinite(u[i])) || !(dof[i] > 0)) {
                throw new IllegalArgumentException("contribution " + (i + 1) + " is " + u[i] + " with " + dof[i]
                        + " degrees of freedom (not under 0; above 0)");
            }
            double square = u[i] * u[i];
            variance += square;
            below += square * square / dof[i];
        }
        return below == 0 ? Double.POSITIVE_INFINITY : variance * variance / below;
    }
}
