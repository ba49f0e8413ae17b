package handspan.outside.simulate;

/**
 * What is wrong with a sensor, whatever its kind; see {@link FaultySensor}.
 *
 * @param lost01 share of readings of a present hand that are lost, as by a soft sleeve
 * @param longestRun so many of them in a row at most, 1..100
 * @param clutterMm something that stays in the beam, mm from the sensor; 0 = nothing
 * @param passerMm somebody who walks through the beam now and then, mm from the sensor; 0 = nobody
 * @param passEverySeconds from one walk to the next, 2..3600 s
 * @param creepMm error that grows while the part warms up, mm: {@code creep (1 - exp(-t / 240 s))}. Only models that
 *     know a settling error show it
 * @param updateMs time between new values of a sensor that is slower than the lines, ms; 0 = new in each line
 * @param frozenAfterSeconds from then on the last value is repeated for ever; infinity = never
 */
public record SensorFaults(
        double lost01,
        int longestRun,
        double clutterMm,
        double passerMm,
        double passEverySeconds,
        double creepMm,
        double updateMs,
        double frozenAfterSeconds) {

    /** Nothing wrong. */
    public static final SensorFaults NONE = new SensorFaults(0, 2, 0, 0, 60, 0, 0, Double.POSITIVE_INFINITY);

    public SensorFaults {
        Allowed.within("longest run of lost readings", longestRun, 1, 100, "readings");
        Allowed.within("share of lost readings", lost01, 0, Dropouts.most01(longestRun), "of 1");
        Allowed.within("clutter", clutterMm, 0, SimulatedHand.AWAY_MM, "mm");
        Allowed.within("place of a passer", passerMm, 0, SimulatedHand.AWAY_MM, "mm");
        Allowed.within("time between two passers", passEverySeconds, 2, 3600, "s");
        Allowed.within("creep", creepMm, -100, 100, "mm");
        Allowed.within("time between new values", updateMs, 0, 10_000, "ms");
        Allowed.within("time until frozen", frozenAfterSeconds, 0, Double.POSITIVE_INFINITY, "s");
    }

    /** The same with readings lost in runs of 1 to a longest, spread evenly. */
    public SensorFaults withLost(double share01, int longest) {
        return new SensorFaults(
                share01, longest, clutterMm, passerMm, passEverySeconds, creepMm, updateMs, frozenAfterSeconds);
    }

    /** The same with something in the beam for good. */
    public SensorFaults withClutter(double mm) {
        return new SensorFaults(
                lost01, longestRun, mm, passerMm, passEverySeconds, creepMm, updateMs, frozenAfterSeconds);
    }

    /** The same with somebody who walks past. */
    public SensorFaults withPasser(double mm, double everySeconds) {
        return new SensorFaults(lost01, longestRun, clutterMm, mm, everySeconds, creepMm, updateMs, frozenAfterSeconds);
    }

    /** The same with an error that grows over minutes. */
    public SensorFaults withCreep(double mm) {
        return new SensorFaults(
                lost01, longestRun, clutterMm, passerMm, passEverySeconds, mm, updateMs, frozenAfterSeconds);
    }

    /** The same with new values only now and then. */
    public SensorFaults withUpdateMs(double ms) {
        return new SensorFaults(
                lost01, longestRun, clutterMm, passerMm, passEverySeconds, creepMm, ms, frozenAfterSeconds);
    }

    /** The same, frozen some time after power-up. */
    public SensorFaults frozenAfter(double seconds) {
        return new SensorFaults(lost01, longestRun, clutterMm, passerMm, passEverySeconds, creepMm, updateMs, seconds);
    }
}
