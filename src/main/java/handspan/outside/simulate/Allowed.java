package handspan.outside.simulate;

import handspan.number.units.Figures;

/** Checks the numbers a simulated part is built from; NaN is never allowed. */
final class Allowed {
    private Allowed() {}

    /**
     * Passes a value on when it lies within its limits.
     *
     * @param what name of the value, for the message
     * @param unit unit of value and limits, for the message
     * @throws IllegalArgumentException when it does not
     */
    static double within(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException("Simulated " + what + " cannot be used: " + Figures.text(value, 3) + " "
                    + unit + " (allowed " + Figures.text(low, 3) + " to " + Figures.text(high, 3) + " " + unit
                    + "); choose a value in between.");
        }
        return value;
    }
}
