package handspan.instrument.sensor;

import java.util.Locale;

/** What kind of sensor a channel's numbers come from. */
public enum SensorKind {
    /** Distance as the board prints it: a laser time-of-flight ranger, or anything that prints a length. */
    DISTANCE,
    /** Echo time of sound, or the length that the board made of it. */
    ECHO,
    /** Infrared triangulation: a voltage that falls with distance, as counts of a converter or in volts. */
    INFRARED,
    /** Photoresistor in a divider. */
    PHOTORESISTOR,
    /** Any number that runs one way with the hand. */
    UNSCALED;

    private final String word = name().toLowerCase(Locale.ROOT);

    /** The name on the command line and in files. */
    public String word() {
        return word;
    }

    /** Whether the board can print this kind in that unit. */
    public boolean allows(Unit unit) {
        return switch (this) {
            case DISTANCE -> unit == Unit.MM || unit == Unit.CM || unit == Unit.IN;
            case ECHO -> unit == Unit.US || unit == Unit.CM || unit == Unit.IN;
            case INFRARED, PHOTORESISTOR -> unit == Unit.COUNTS10 || unit == Unit.COUNTS12 || unit == Unit.V;
            case UNSCALED -> unit == Unit.NONE;
        };
    }

    /** The unit taken when none is named. */
    public Unit usualUnit() {
        return switch (this) {
            case DISTANCE -> Unit.MM;
            case ECHO -> Unit.US;
            case INFRARED, PHOTORESISTOR -> Unit.COUNTS10;
            case UNSCALED -> Unit.NONE;
        };
    }

    /** Whether its physical value is a length. */
    public boolean isLength() {
        return this == DISTANCE || this == ECHO;
    }

    /**
     * The kind with a name.
     *
     * @throws IllegalArgumentException naming the kinds there are
     */
    public static SensorKind parse(String word) {
        for (SensorKind kind : values()) {
            if (kind.word.equals(word)) {
                return kind;
            }
        }
        throw new IllegalArgumentException(
                "sensor kind '" + word + "' (distance, echo, infrared, photoresistor, unscaled): name one of these");
    }
}
