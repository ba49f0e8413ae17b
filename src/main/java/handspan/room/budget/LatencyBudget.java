package handspan.room.budget;

/**
 * Where the time between hand and datagram goes, in ms. What can't be known from here (the board's own queue, the timer
 * of a USB serial chip) is not in it.
 *
 * @param sensorMs half the sensor's measuring time
 * @param waitMs half a reading interval: a hand moves between two readings
 * @param wireMs a line over the serial line
 * @param filterMs lag of the smoothing for a still hand
 * @param glideMs one reading interval when glide is on
 */
public record LatencyBudget(double sensorMs, double waitMs, double wireMs, double filterMs, double glideMs) {
    /** Bits on the wire for a character: start, 8 data, stop. */
    private static final double BITS_PER_CHARACTER = 10;

    /**
     * The budget of an instrument.
     *
     * @param measuringMs the sensor's measuring time
     * @param ratePerS readings a second
     * @param charactersPerLine with the line end
     * @param baud link speed
     * @param filterMs lag of the smoothing for a still hand
     * @param glide whether pitch glides between readings
     */
    public static LatencyBudget of(
            double measuringMs, double ratePerS, double charactersPerLine, int baud, double filterMs, boolean glide) {
        double intervalMs = 1000 / ratePerS;
        return new LatencyBudget(
                measuringMs / 2,
                glide ? 0 : intervalMs / 2,
                1000 * charactersPerLine * BITS_PER_CHARACTER / baud,
                filterMs,
                glide ? intervalMs : 0);
    }

    /** The sum. */
    public double totalMs() {
        return sensorMs + waitMs + wireMs + filterMs + glideMs;
    }
}
