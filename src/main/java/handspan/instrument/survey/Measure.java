package handspan.instrument.survey;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.instrument.sensor.Unit;
import handspan.number.units.Figures;

/**
 * How large a channel's numbers are to a player: in mm for a length, in counts of a 10-bit converter for a voltage, as
 * they are for anything else. Limits of the survey are stated so and turned into the channel's unit here.
 *
 * @param isLength whether sizes are mm
 * @param perUnit mm, counts or nothing in particular to one unit of the channel
 * @param unit of the channel
 */
record Measure(boolean isLength, double perUnit, Unit unit) {
    /** Two octaves, the usual range, in the 400 mm of a usual zone: {@code 1200 * 2 / 400}. */
    static final double CENTS_PER_MM = 6;

    private static final double TEN_BITS = 1023;

    static Measure of(ChannelSpec spec, Sensor sensor) {
        return new Measure(sensor.isLength(), perUnit(spec, sensor), spec.unit());
    }

    private static double perUnit(ChannelSpec spec, Sensor sensor) {
        return switch (spec.unit()) {
            case MM, CM, IN, US -> sensor.physical(1);
            case COUNTS10, NONE -> 1;
            case COUNTS12 -> TEN_BITS / 4095;
            // a divider's number nears its full scale as the log ratio grows; an infrared part has no such end: 5 V
            case V -> TEN_BITS / (spec.kind() == SensorKind.PHOTORESISTOR ? sensor.raw(100) : 5);
        };
    }

    /** The size of a number of the channel, mm or counts. */
    double size(double inUnit) {
        return inUnit * perUnit;
    }

    /** A limit in the channel's unit. */
    double inUnit(double mm, double counts) {
        return (isLength ? mm : counts) / perUnit;
    }

    /** A size in words: lengths in mm, others in the channel's own unit. */
    String words(double inUnit) {
        return isLength
                ? Figures.text(size(inUnit), 2) + " mm"
                : Figures.text(inUnit, unit == Unit.V ? 4 : 2) + " " + unit.word();
    }

    /** A place in words, without small decimals. */
    String place(double inUnit) {
        return isLength
                ? Figures.text(size(inUnit), 0) + " mm"
                : Figures.text(inUnit, unit == Unit.V ? 3 : 0) + " " + unit.word();
    }

    /** A length as cents at the usual range, in words; empty where it is no length. */
    String cents(double inUnit) {
        return isLength ? Figures.text(CENTS_PER_MM * Math.abs(size(inUnit)), 0) + " cents" : "";
    }
}
