package handspan.instrument.sensor;

/**
 * An infrared triangulation sensor on a converter. The physical value is its output in volts, which falls with distance
 * and becomes a length through the response captured in the room (see {@link InfraredLaw}). Convention for counts:
 * {@code V = Vref N / (2^bits - 1)}.
 *
 * <p>No reading: under {@link #FLOOR_VOLTS}, and at the end of the converter's scale. Nearer than its fold-over (see
 * {@link InfraredPart}) the output falls again: one voltage then means two distances, which no single reading can tell
 * apart.
 */
public final class InfraredSensor implements Sensor {
    /**
     * Least voltage that is a hand: by the data sheets of the 10-80 cm and the 4-30 cm part an object at the far end of
     * the range gives 0.25..0.55 V from part to part. Less is something farther away, or nothing in sight.
     */
    public static final double FLOOR_VOLTS = 0.25;

    /** A board that prints volts is at the end of its scale from this share of the reference on: a step of 10 bits. */
    private static final double FULL01 = 1 - 1.0 / 1024;

    private final double voltsPerRaw;
    private final double endRaw;
    private final NoReadings noReadings;

    private InfraredSensor(double voltsPerRaw, double endRaw, NoReadings noReadings) {
        this.noReadings = noReadings;
        this.voltsPerRaw = voltsPerRaw;
        this.endRaw = endRaw;
    }

    /**
     * A sensor printing in a unit.
     *
     * @param unit counts10, counts12 or V
     * @param referenceVolts full scale of the converter, above 0
     * @param noReadings numbers that mean no reading besides
     */
    public static InfraredSensor of(Unit unit, double referenceVolts, NoReadings noReadings) {
        if (!(referenceVolts > 0)) {
            throw new IllegalArgumentException("reference of " + referenceVolts + " V (above 0)");
        }
        return switch (unit) {
            case COUNTS10 -> new InfraredSensor(referenceVolts / 1023, 1023, noReadings);
            case COUNTS12 -> new InfraredSensor(referenceVolts / 4095, 4095, noReadings);
            case V -> new InfraredSensor(1, FULL01 * referenceVolts, noReadings);
            default ->
                throw new IllegalArgumentException(
                        "unit " + unit.word() + " for an infrared sensor (counts10, counts12, V)");
        };
    }

    @Override
    public boolean hasReading(double raw) {
        return physical(raw) >= FLOOR_VOLTS && raw < endRaw && !noReadings.hold(raw);
    }

    @Override
    public double physical(double raw) {
        return raw * voltsPerRaw;
    }

    @Override
    public double raw(double physical) {
        return physical / voltsPerRaw;
    }

    @Override
    public boolean isLength() {
        return false;
    }

    @Override
    public String physicalUnit() {
        return "V";
    }

    /** 38.3 ms: cycle of the 10-80 cm part, 9.6 ms more or less (data sheet); the 4-30 cm part takes 16.5 ms. */
    @Override
    public double measuringMs() {
        return 38.3;
    }
}
