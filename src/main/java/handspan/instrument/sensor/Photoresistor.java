package handspan.instrument.sensor;

/**
 * A photoresistor in a divider. The physical value is the log of the two resistors' ratio, {@code ln(N / (Nmax - N))}:
 * with the resistor's law {@code R = R10 (E / 10 lux)^-gamma} (maker's data sheets) it is linear in log light, and
 * gamma, the fixed resistor and the side on which the photoresistor stands cancel between two holds. Convention for
 * counts: {@code V = Vref N / (2^bits - 1)}.
 */
public final class Photoresistor implements Sensor {
    private final double full;
    private final double halfStep;
    private final NoReadings noReadings;

    private Photoresistor(double full, double halfStep, NoReadings noReadings) {
        this.noReadings = noReadings;
        this.full = full;
        this.halfStep = halfStep;
    }

    /**
     * A sensor printing in a unit.
     *
     * @param unit counts10, counts12 or V
     * @param referenceVolts full scale where the unit is V, above 0
     * @param noReadings numbers that mean no reading besides
     */
    public static Photoresistor of(Unit unit, double referenceVolts, NoReadings noReadings) {
        return switch (unit) {
            case COUNTS10 -> new Photoresistor(1023, 0.5, noReadings);
            case COUNTS12 -> new Photoresistor(4095, 0.5, noReadings);
            case V -> {
                if (!(referenceVolts > 0)) {
                    throw new IllegalArgumentException("reference of " + referenceVolts + " V (above 0)");
                }
                yield new Photoresistor(referenceVolts, referenceVolts / 8190, noReadings);
            }
            default ->
                throw new IllegalArgumentException(
                        "unit " + unit.word() + " for a photoresistor (counts10, counts12, V)");
        };
    }

    @Override
    public boolean hasReading(double raw) {
        return raw >= 0 && raw <= full && !noReadings.hold(raw);
    }

    /** Whether the converter is at an end of its scale, where light no longer changes the number. */
    public boolean isClipped(double raw) {
        return raw < 2 * halfStep || raw > full - 2 * halfStep;
    }

    @Override
    public double physical(double raw) {
        // 0 and full scale stand for anything beyond half a step
        double held = Math.max(halfStep, Math.min(full - halfStep, raw));
        return Math.log(held / (full - held));
    }

    @Override
    public double raw(double physical) {
        return full / (1 + Math.exp(-physical));
    }

    @Override
    public boolean isLength() {
        return false;
    }

    @Override
    public String physicalUnit() {
        return "ln of resistor ratio";
    }

    /** 50 ms, so that its half is the 20 to 30 ms in which a photoresistor follows at 10 lux (maker's data sheet). */
    @Override
    public double measuringMs() {
        return 50;
    }
}
