package handspan.outside.simulate;

/**
 * A sensor together with the few lines of program that print it: the true hand in, the printed number out.
 *
 * <p>A model carries its own seeded randomness and, where the part has one, its memory; it belongs to one channel of
 * one board and is read in the order of time.
 */
public sealed interface SensorModel permits TimeOfFlightModel, EchoModel, InfraredModel, LightModel, FaultySensor {
    /**
     * Measures once.
     *
     * @param hand the hand above this sensor
     * @param timeNanos when the measurement ends and its number is printed
     * @param settlingErrorMm error that a part fresh from power-up, or warming up, adds to its distance, mm; 0 once it
     *     has settled. Parts without that fault ignore it
     * @return the number as printed, already rounded to {@link #decimals()}
     */
    double read(SimulatedHand hand, long timeNanos, double settlingErrorMm);

    /** Decimals the board prints. */
    int decimals();

    /** Time over which one measurement takes the mean of the truth, ms; half of it is lag. */
    double measuringMs();
}
