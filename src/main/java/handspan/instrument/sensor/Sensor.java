package handspan.instrument.sensor;

/**
 * What a board's number means. A reading that {@link #hasReading} refuses is "no reading", not a hand somewhere.
 * Immutable.
 *
 * <p>The physical value is a length in mm where {@link #isLength} says so, else a number that runs one way with the
 * hand and becomes a length through the response captured in the room.
 */
public sealed interface Sensor permits DistanceSensor, EchoSensor, InfraredSensor, Photoresistor, UnscaledSensor {
    /**
     * Whether the number is a measurement at all.
     *
     * @param raw the board's number, finite
     */
    boolean hasReading(double raw);

    /**
     * The physical value.
     *
     * @param raw a number for which {@link #hasReading} is true
     * @return finite; mm, or the kind's own measure
     */
    double physical(double raw);

    /** The board's number for a physical value: the inverse of {@link #physical}, not rounded. */
    double raw(double physical);

    /** Whether the physical value is a length in mm. */
    boolean isLength();

    /** Unit of the physical value in words. */
    String physicalUnit();

    /** The time over which the sensor looks before it answers, ms: half of it is lag. */
    double measuringMs();

    /** Shortest time from one measurement to the next, ms: the measuring time, unless the sensor needs a pause. */
    default double cycleMs() {
        return measuringMs();
    }

    /** Builds the sensor for a channel. */
    static Sensor of(ChannelSpec spec, Air air, double referenceVolts) {
        return switch (spec.kind()) {
            case DISTANCE -> new DistanceSensor(spec.unit(), spec.noReadings());
            case ECHO -> new EchoSensor(spec.unit(), air, spec.noReadings());
            case INFRARED -> InfraredSensor.of(spec.unit(), referenceVolts, spec.noReadings());
            case PHOTORESISTOR -> Photoresistor.of(spec.unit(), referenceVolts, spec.noReadings());
            case UNSCALED -> new UnscaledSensor(spec.noReadings());
        };
    }
}
