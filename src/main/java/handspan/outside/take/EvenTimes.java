package handspan.outside.take;

/**
 * Times for lines that have none: line n (from 0) stands at n / rate, rounded to a microsecond from the start each
 * time, so that rounding never adds up.
 *
 * @param ratePerS lines per second, above 0, at most 1,000,000 (beyond, neighbours would share a microsecond)
 */
record EvenTimes(double ratePerS) {
    private static final double MICROS_PER_S = 1e6;

    EvenTimes {
        if (!(ratePerS > 0 && ratePerS <= MICROS_PER_S)) {
            throw new IllegalArgumentException("rate " + ratePerS
                    + " per second (allowed above 0, to 1000000): give the lines per second of the log");
        }
    }

    long micros(long index) {
        return Math.round(index * MICROS_PER_S / ratePerS);
    }
}
