package handspan.instrument.sensor;

/** Any number that runs one way with the hand; what it means is captured in the room. */
public final class UnscaledSensor implements Sensor {
    private final NoReadings noReadings;

    /**
     * A sensor.
     *
     * @param noReadings numbers that mean no reading
     */
    public UnscaledSensor(NoReadings noReadings) {
        this.noReadings = noReadings;
    }

    @Override
    public boolean hasReading(double raw) {
        return !noReadings.hold(raw);
    }

    @Override
    public double physical(double raw) {
        return raw;
    }

    @Override
    public double raw(double physical) {
        return physical;
    }

    @Override
    public boolean isLength() {
        return false;
    }

    @Override
    public String physicalUnit() {
        return "as printed";
    }

    @Override
    public double measuringMs() {
        return 0;
    }
}
