package handspan.outside.simulate;

/** What the board's program makes of an echo time before it prints it. */
public enum EchoPrint {
    /** Whole microseconds. */
    MICROSECONDS(0) {
        @Override
        double raw(double echoUs) {
            return Math.rint(echoUs);
        }
    },

    /** Centimetres with two decimals, by the data sheet's rule "microseconds / 58" (HC-SR04 module). */
    CENTIMETRE_HUNDREDTHS(2) {
        @Override
        double raw(double echoUs) {
            return Math.rint(100 * echoUs / US_PER_CM) / 100;
        }
    },

    /** Whole centimetres by the same rule in whole-number division, which drops the remainder. */
    WHOLE_CENTIMETRES(0) {
        @Override
        double raw(double echoUs) {
            return Math.floor(Math.rint(echoUs) / US_PER_CM);
        }
    };

    private static final double US_PER_CM = 58;

    private final int decimals;

    EchoPrint(int decimals) {
        this.decimals = decimals;
    }

    /** The printed number of an echo time in microseconds. */
    abstract double raw(double echoUs);

    int decimals() {
        return decimals;
    }
}
