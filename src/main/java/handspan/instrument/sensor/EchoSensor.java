package handspan.instrument.sensor;

/**
 * Echo time of sound: {@code d = c t / 2}, c from the room's air.
 *
 * <p>A board that prints a length has made it from the echo time with a speed of its own: by the common data sheet of
 * such modules {@code cm = us / 58} and {@code inch = us / 148}. That is undone first, so that the room's temperature
 * counts.
 *
 * <p>No reading: under 2 cm or over 4 m (limits of that data sheet), which takes in 0, -1 and the time-outs of 38 ms
 * and more.
 */
public final class EchoSensor implements Sensor {
    private static final double US_PER_CM = 58;
    private static final double US_PER_INCH = 148;
    private static final double FLOOR_MM = 20;
    private static final double REACH_MM = 4000;

    private final double usPerRaw;
    private final double mmPerUs;
    private final NoReadings noReadings;

    /**
     * A sensor printing in a unit, in some air.
     *
     * @param unit us, cm or in
     * @param air of the room
     * @param noReadings numbers that mean no reading besides
     */
    public EchoSensor(Unit unit, Air air, NoReadings noReadings) {
        this.noReadings = noReadings;
        this.usPerRaw = switch (unit) {
            case US -> 1;
            case CM -> US_PER_CM;
            case IN -> US_PER_INCH;
            default -> throw new IllegalArgumentException("unit " + unit.word() + " for an echo (us, cm, in)");
        };
        this.mmPerUs = air.speedOfSoundMPerS() / 1000 / 2;
    }

    @Override
    public boolean hasReading(double raw) {
        double mm = physical(raw);
        return mm >= FLOOR_MM && mm <= REACH_MM && !noReadings.hold(raw);
    }

    @Override
    public double physical(double raw) {
        return raw * usPerRaw * mmPerUs;
    }

    @Override
    public double raw(double physical) {
        return physical / mmPerUs / usPerRaw;
    }

    @Override
    public boolean isLength() {
        return true;
    }

    @Override
    public String physicalUnit() {
        return "mm";
    }

    /** 3 ms: sound needs this long to half a metre and back; the ping itself is shorter. */
    @Override
    public double measuringMs() {
        return 3;
    }

    /** 50 ms, so that the echo of one ping is not taken for the next one's (data sheet of the HC-SR04 module). */
    @Override
    public double cycleMs() {
        return 50;
    }
}
