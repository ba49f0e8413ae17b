package handspan.instrument.sensor;

/**
 * Output of an infrared triangulation sensor against distance, farther than its fold-over: {@code V = a + b / (d + k)},
 * d in mm. Falls all along, so that a voltage means one distance.
 *
 * <p>Triangulation puts the spot of light at a place proportional to 1/d; the data sheets of such parts draw their
 * output over 1/d or 1/(d + k) for that reason. It is an approximation: see {@link InfraredPart} for what it leaves.
 *
 * @param aVolts output towards infinity, -1..1 V
 * @param bVoltMm steepness, above 0, in volts times mm
 * @param kMm added to the distance, -200..200 mm
 */
public record InfraredLaw(double aVolts, double bVoltMm, double kMm) {
    private static final double MOST_A_VOLTS = 1;
    private static final double MOST_B_VOLT_MM = 10_000;
    private static final double MOST_K_MM = 200;

    /** Checks all three. */
    public InfraredLaw {
        if (!(Math.abs(aVolts) <= MOST_A_VOLTS)) {
            throw new IllegalArgumentException("infrared law: a of " + aVolts + " V (-1..1)");
        }
        if (!(bVoltMm > 0 && bVoltMm <= MOST_B_VOLT_MM)) {
            throw new IllegalArgumentException("infrared law: b of " + bVoltMm + " V mm (above 0, at most 10000)");
        }
        if (!(Math.abs(kMm) <= MOST_K_MM)) {
            throw new IllegalArgumentException("infrared law: k of " + kMm + " mm (-200..200)");
        }
    }

    /**
     * The law through two measured points. For a given a the points settle b and k, and {@code (1/(V-a) - 1/(Vn-a)) /
     * (1/(Vf-a) - 1/(Vn-a))} is the share of the way from near to far, whatever distances the two are given: only a,
     * and with it the converter's reference, shapes the curve between them.
     *
     * @param aVolts output towards infinity, under both voltages
     * @param nearVolts output at the near point
     * @param nearMm its distance
     * @param farVolts output at the far point, less than at the near one
     * @param farMm its distance, beyond the near one
     */
    public static InfraredLaw throughEnds(
            double aVolts, double nearVolts, double nearMm, double farVolts, double farMm) {
        if (!(farMm > nearMm) || !(nearVolts > farVolts) || !(farVolts > aVolts)) {
            throw new IllegalArgumentException("infrared: " + nearVolts + " V at " + nearMm + " mm and " + farVolts
                    + " V at " + farMm + " mm (volts fall with distance, but not to " + aVolts
                    + " V): take both again, near first, the near one beyond the sensor's fold-over");
        }
        double near = 1 / (nearVolts - aVolts);
        double b = (farMm - nearMm) / (1 / (farVolts - aVolts) - near);
        return new InfraredLaw(aVolts, b, b * near - nearMm);
    }

    /**
     * Output at a distance.
     *
     * @param mm beyond the fold-over, and beyond -k in any case
     * @return volts
     */
    public double volts(double mm) {
        if (!(mm + kMm > 0)) {
            throw new IllegalArgumentException("infrared law: distance of " + mm + " mm (beyond " + -kMm + ")");
        }
        return aVolts + bVoltMm / (mm + kMm);
    }

    /**
     * Distance of an output: the inverse of {@link #volts}.
     *
     * @return mm; positive infinity for a voltage at or under a
     */
    public double mm(double volts) {
        return volts > aVolts ? bVoltMm / (volts - aVolts) - kMm : Double.POSITIVE_INFINITY;
    }

    /**
     * How far the distance moves for a volt, {@code (d + k)^2 / b}: turns noise in volts into mm.
     *
     * @param mm as for {@link #volts}
     * @return mm for each volt, above 0
     */
    public double mmPerVolt(double mm) {
        double above = volts(mm) - aVolts;
        return bVoltMm / (above * above);
    }
}
