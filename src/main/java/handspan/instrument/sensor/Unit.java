package handspan.instrument.sensor;

/** Unit of the numbers a board prints. */
public enum Unit {
    /** Millimetres. */
    MM("mm"),
    /** Centimetres. */
    CM("cm"),
    /** Inches of 25.4 mm. */
    IN("in"),
    /** Microseconds of echo time, there and back. */
    US("us"),
    /** Counts of a 10-bit converter, 0..1023. */
    COUNTS10("counts10"),
    /** Counts of a 12-bit converter, 0..4095. */
    COUNTS12("counts12"),
    /** Volts. */
    V("V"),
    /** No unit. */
    NONE("none");

    private final String word;

    Unit(String word) {
        this.word = word;
    }

    /** The name on the command line and in files. */
    public String word() {
        return word;
    }

    /**
     * The unit with a name.
     *
     * @throws IllegalArgumentException naming the units there are
     */
    public static Unit parse(String word) {
        for (Unit unit : values()) {
            if (unit.word.equals(word)) {
                return unit;
            }
        }
        throw new IllegalArgumentException(
                "unit '" + word + "' (mm, cm, in, us, counts10, counts12, V, none): name one of these");
    }
}
