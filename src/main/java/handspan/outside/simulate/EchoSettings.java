package handspan.outside.simulate;

/**
 * One specimen of an ultrasonic echo module, the air it works in and how its number is printed.
 *
 * @param airCelsius true temperature of the air, -20..50 degrees Celsius
 * @param errors its steady errors
 * @param noiseFactor 1 = the measured noise of {@link EchoModel#flatTargetNoiseMm}, 0 = none
 * @param timingStepUs steps in which the board tells time, microseconds; 0 = none. 17.4 are the 3 mm of the module's
 *     data sheet
 * @param sentinelUs echo time that stands for "no echo": 0 (the board gave up), 38,000 microseconds (data sheet) or
 *     what the specimen at hand makes of it
 * @param dropouts01 share of pings at a present hand without an echo
 * @param print unit and rounding of the printed number
 */
public record EchoSettings(
        double airCelsius,
        DistanceErrors errors,
        double noiseFactor,
        double timingStepUs,
        double sentinelUs,
        double dropouts01,
        EchoPrint print) {

    /** The longest echo pulse, microseconds: no echo came (HC-SR04 module data sheet). */
    public static final double LONGEST_ECHO_US = 38_000;

    /** Echo time after which one clone gives up, microseconds (measured). */
    public static final double CLONE_TIME_OUT_US = 46_600;

    /** Share of pings at a hand that a real module lost, in runs of one or two. */
    public static final double HAND_DROPOUTS_01 = 0.045;

    public EchoSettings {
        Allowed.within("air temperature", airCelsius, -20, 50, "degrees Celsius");
        Allowed.within("noise factor", noiseFactor, 0, 20, "times");
        Allowed.within("timing step", timingStepUs, 0, 1000, "microseconds");
        Allowed.within("echo time without echo", sentinelUs, 0, 100_000, "microseconds");
        Allowed.within("share of dropouts", dropouts01, 0, Dropouts.MOST_01, "of 1");
    }

    /** Measured noise and dropouts, whole microseconds, 38,000 for no echo. */
    public static EchoSettings usual(double airCelsius, DistanceErrors errors) {
        return new EchoSettings(airCelsius, errors, 1, 0, LONGEST_ECHO_US, HAND_DROPOUTS_01, EchoPrint.MICROSECONDS);
    }

    /** The same specimen, printed otherwise. */
    public EchoSettings withPrint(EchoPrint newPrint, double newSentinelUs) {
        return new EchoSettings(airCelsius, errors, noiseFactor, timingStepUs, newSentinelUs, dropouts01, newPrint);
    }

    /** The same specimen with other random faults. */
    public EchoSettings withFaults(double newNoiseFactor, double newTimingStepUs, double newDropouts01) {
        return new EchoSettings(airCelsius, errors, newNoiseFactor, newTimingStepUs, sentinelUs, newDropouts01, print);
    }
}
