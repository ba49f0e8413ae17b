package handspan.outside.simulate;

import java.util.List;

/**
 * How a board runs and what its lines look like.
 *
 * @param linesPerSecond true line rate, 0.1..2000
 * @param jitterMs each line leaves up to this much early or late, spread evenly; under half a line period
 * @param style shape of a line
 * @param banner lines printed once after power-up, before the first reading
 * @param bootMs silence after power-up, ms
 * @param settlingReadings how many readings after power-up are wrong
 * @param settlingErrorMm by how much, mm, give or take a tenth; negative reads short
 * @param timerMs latency timer of the USB serial chip: lines come at whole multiples of it; 0 for none, 0..255 ms
 */
public record BoardSettings(
        double linesPerSecond,
        double jitterMs,
        LineStyle style,
        List<String> banner,
        double bootMs,
        int settlingReadings,
        double settlingErrorMm,
        double timerMs) {

    /** Wrong readings after power-up, unless told otherwise (a real ranger read 40 mm short at first). */
    public static final int USUAL_SETTLING_READINGS = 3;

    /** Error of those readings, mm. */
    public static final double USUAL_SETTLING_ERROR_MM = -40;

    private static final double USUAL_BOOT_MS = 200;

    public BoardSettings {
        Allowed.within("line rate", linesPerSecond, 0.1, 2000, "lines/s");
        Allowed.within("line jitter", jitterMs, 0, 499.9 / linesPerSecond, "ms");
        Allowed.within("time to boot", bootMs, 0, 60_000, "ms");
        Allowed.within("count of settling readings", settlingReadings, 0, 1000, "readings");
        Allowed.within("settling error", settlingErrorMm, -1000, 1000, "mm");
        Allowed.within("latency timer", timerMs, 0, 255, "ms");
        banner = List.copyOf(banner);
    }

    /** Without a latency timer. */
    public BoardSettings(
            double linesPerSecond,
            double jitterMs,
            LineStyle style,
            List<String> banner,
            double bootMs,
            int settlingReadings,
            double settlingErrorMm) {
        this(linesPerSecond, jitterMs, style, banner, bootMs, settlingReadings, settlingErrorMm, 0);
    }

    /** Jitter of a fiftieth of the period, no banner, 200 ms to boot, three readings 40 mm short. */
    public static BoardSettings usual(double linesPerSecond, LineStyle style) {
        return new BoardSettings(
                linesPerSecond,
                20 / linesPerSecond,
                style,
                List.of(),
                USUAL_BOOT_MS,
                USUAL_SETTLING_READINGS,
                USUAL_SETTLING_ERROR_MM);
    }

    /** Exact times, right from the first reading. */
    public static BoardSettings ideal(double linesPerSecond, LineStyle style) {
        return new BoardSettings(linesPerSecond, 0, style, List.of(), USUAL_BOOT_MS, 0, 0);
    }

    /** The same board with lines of text after power-up. */
    public BoardSettings withBanner(String... lines) {
        return new BoardSettings(
                linesPerSecond, jitterMs, style, List.of(lines), bootMs, settlingReadings, settlingErrorMm, timerMs);
    }

    /** The same board behind a USB serial chip with a latency timer. */
    public BoardSettings behindTimer(double milliseconds) {
        return new BoardSettings(
                linesPerSecond, jitterMs, style, banner, bootMs, settlingReadings, settlingErrorMm, milliseconds);
    }
}
