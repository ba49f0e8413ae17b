package handspan.instrument.sensor;

/**
 * A sensor whose board prints a length.
 *
 * <p>No reading: under 20 mm (0 and -1 among them), 4 m and more (8190, 8191 and 65535 mm among them), and 255 cm, a
 * full byte. These are what such boards print out of range (common practice; the data sheets of laser rangers give
 * their status in a second number that few boards print).
 */
public final class DistanceSensor implements Sensor {
    private static final double FLOOR_MM = 20;
    private static final double REACH_MM = 4000;

    private final Unit unit;
    private final double mmPerUnit;
    private final NoReadings noReadings;

    /**
     * A sensor printing in a unit.
     *
     * @param unit mm, cm or in
     * @param noReadings numbers that mean no reading besides
     */
    public DistanceSensor(Unit unit, NoReadings noReadings) {
        this.noReadings = noReadings;
        this.unit = unit;
        this.mmPerUnit = Lengths.mmPer(unit);
    }

    @Override
    public boolean hasReading(double raw) {
        double mm = raw * mmPerUnit;
        return mm >= FLOOR_MM && mm < REACH_MM && !(raw == 255 && unit == Unit.CM) && !noReadings.hold(raw);
    }

    @Override
    public double physical(double raw) {
        return raw * mmPerUnit;
    }

    @Override
    public double raw(double physical) {
        return physical / mmPerUnit;
    }

    @Override
    public boolean isLength() {
        return true;
    }

    @Override
    public String physicalUnit() {
        return "mm";
    }

    /** 33 ms, the usual time budget of a laser ranger (from memory of a data sheet). */
    @Override
    public double measuringMs() {
        return 33;
    }
}
