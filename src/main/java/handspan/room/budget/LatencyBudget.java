package handspan.room.budget;

import handspan.instrument.sensor.Sensor;
import handspan.number.units.Figures;
import handspan.room.Room;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the time between hand and datagram goes, in ms, and what would make it less.
 *
 * @param measuringMs the sensor's measuring time
 * @param cycleMs shortest time from one measurement of the sensor to the next
 * @param ratePerS readings a second
 * @param charactersPerLine with the line end
 * @param baud link speed; 0 where it is not known
 * @param timerPeriodMs what lines wait for before they come, up to this long; 0 where none was seen, NaN where it can't
 *     be known
 * @param filterMs lag of the smoothing for a moving hand; 0 where nothing is smoothed yet, below 0 where the hand is
 *     placed ahead of its reading
 * @param stillMs what small steps of a still hand take longer
 * @param glide whether pitch glides between readings
 */
public record LatencyBudget(
        double measuringMs,
        double cycleMs,
        double ratePerS,
        double charactersPerLine,
        int baud,
        double timerPeriodMs,
        double filterMs,
        double stillMs,
        boolean glide) {
    /** Characters in a usual line with its end; only its order of magnitude counts. */
    private static final double USUAL_CHARACTERS = 9;

    /** Bits on the wire for a character: start, 8 data, stop. */
    private static final double BITS_PER_CHARACTER = 10;

    /** A wire that is busy for more than this share is full: what a board prints on top waits in it. */
    private static final double FULL01 = 0.95;

    private static final double LEAST_TOLD_MS = 0.05;

    private static final int FASTER_BAUD = 115_200;

    /** Shortest that the timer of a USB serial chip can usually be set to, ms (common practice). */
    private static final double SHORTEST_TIMER_MS = 1;

    /** What helps by less is not worth a word, ms. */
    private static final double WORTH_MS = 3;

    /** A board that prints at so much less than its sensor's pace leaves readings out. */
    private static final double SLOWER = 1.25;

    /**
     * One part of the sum.
     *
     * @param name in words
     * @param ms what it takes; NaN where it can't be known, infinite for a queue without end
     */
    public record Term(String name, double ms) {}

    private record Help(double savesMs, String words) {}

    /**
     * The budget of an instrument of which no timer is known.
     *
     * @param measuringMs the sensor's measuring time
     * @param ratePerS readings a second
     * @param charactersPerLine with the line end
     * @param baud link speed; 0 where it is not known
     * @param filterMs lag of the smoothing for a moving hand
     * @param glide whether pitch glides between readings
     */
    public static LatencyBudget of(
            double measuringMs, double ratePerS, double charactersPerLine, int baud, double filterMs, boolean glide) {
        return new LatencyBudget(
                measuringMs, measuringMs, ratePerS, charactersPerLine, baud, Double.NaN, filterMs, 0, glide);
    }

    /**
     * The budget of a moving hand in a room, with glide.
     *
     * @param feel of the tuning that is played
     */
    public static LatencyBudget of(Room room, FeelBudget feel) {
        Sensor sensor = room.sensor(room.pitch());
        return of(
                        sensor.measuringMs(),
                        room.ratePerS(),
                        USUAL_CHARACTERS,
                        room.instrument().baud(),
                        feel.trial().movingLagMs(),
                        true)
                .cyclingIn(sensor.cycleMs())
                .steadyingFor(feel.settings().stillLagMs());
    }

    /** The same with a sensor that can't measure more often than once in so long. */
    public LatencyBudget cyclingIn(double ms) {
        return new LatencyBudget(
                measuringMs, ms, ratePerS, charactersPerLine, baud, timerPeriodMs, filterMs, stillMs, glide);
    }

    /** The same with a smoothing by which small steps of a still hand take so much longer. */
    public LatencyBudget steadyingFor(double ms) {
        return new LatencyBudget(
                measuringMs, cycleMs, ratePerS, charactersPerLine, baud, timerPeriodMs, filterMs, ms, glide);
    }

    /** The same with what has been seen of a timer: up to so long lines wait for it, 0 for none. */
    public LatencyBudget waitingFor(double timerMs) {
        return new LatencyBudget(
                measuringMs, cycleMs, ratePerS, charactersPerLine, baud, timerMs, filterMs, stillMs, glide);
    }

    /** Half the sensor's measuring time. */
    public double sensorMs() {
        return measuringMs / 2;
    }

    private double intervalMs() {
        return 1000 / ratePerS;
    }

    /** Half a reading interval, for which the latest reading is held; 0 where glide makes use of it. */
    public double waitMs() {
        return glide ? 0 : intervalMs() / 2;
    }

    /** What lines wait for in the board: 0, or infinite where it prints more than its wire can carry; NaN unknown. */
    public double queueMs() {
        return baud == 0 ? Double.NaN : isFull() ? Double.POSITIVE_INFINITY : 0;
    }

    /** A line over the wire; NaN where its speed is not known. */
    public double wireMs() {
        return baud == 0 ? Double.NaN : wireMs(baud);
    }

    private double wireMs(int at) {
        return 1000 * charactersPerLine * BITS_PER_CHARACTER / at;
    }

    /** Share of the time in which the wire is busy; NaN where its speed is not known. */
    public double wireBusy01() {
        return wireMs() / intervalMs();
    }

    private boolean isFull() {
        return wireBusy01() > FULL01;
    }

    /** Half the timer, which lines wait for on average; NaN where it can't be known. */
    public double timerMs() {
        return timerPeriodMs / 2;
    }

    /** One reading interval when glide is on. */
    public double glideMs() {
        return glide ? intervalMs() : 0;
    }

    /** The sum of what is known; without a queue that has no end. */
    public double totalMs() {
        return sensorMs() + waitMs() + known(wireMs()) + known(timerMs()) + filterMs + glideMs();
    }

    private static double known(double ms) {
        return Double.isNaN(ms) ? 0 : ms;
    }

    /** The sum by its terms, in words, with what is not known. */
    public String words() {
        List<String> terms = new ArrayList<>();
        terms.add(ms(sensorMs()) + " sensor");
        if (!glide) {
            terms.add(ms(waitMs()) + " between readings");
        }
        if (baud > 0) {
            terms.add(ms(wireMs()) + " wire at " + baud + " baud");
        }
        if (timerPeriodMs > 0) {
            terms.add(ms(timerMs()) + " timer");
        }
        if (filterMs >= LEAST_TOLD_MS) {
            terms.add(ms(filterMs) + " smoothing");
        }
        if (glide) {
            terms.add(ms(glideMs()) + " glide");
        }
        String ahead = filterMs <= -LEAST_TOLD_MS ? " - " + ms(-filterMs) + " placed ahead" : "";
        List<String> unknown = new ArrayList<>();
        if (baud == 0) {
            unknown.add("wire");
        }
        if (Double.isNaN(timerPeriodMs)) {
            unknown.add("timer of a USB serial chip");
        }
        return ms(totalMs()) + " ms = " + String.join(" + ", terms) + ahead
                + (baud > 0 && isFull() ? " + a queue without end" : "")
                + (unknown.isEmpty() ? "" : "; not known: " + String.join(", ", unknown));
    }

    /** The parts of the sum from the sensor to the message, what is not known among them. */
    public List<Term> terms() {
        List<Term> terms = new ArrayList<>();
        terms.add(new Term("sensor: half its measuring time of " + ms(measuringMs) + " ms", sensorMs()));
        if (!glide) {
            terms.add(new Term("between readings: half of " + ms(intervalMs()) + " ms", waitMs()));
        }
        terms.add(new Term("queue in the board", queueMs()));
        terms.add(new Term(baud == 0 ? "wire" : "wire: one line at " + baud + " baud", wireMs()));
        terms.add(new Term("timer of a USB serial chip", timerMs()));
        terms.add(new Term(
                filterMs < 0 ? "smoothing: the hand is placed ahead" : "smoothing of a moving hand", filterMs));
        if (glide) {
            terms.add(new Term("glide: one reading interval", glideMs()));
        }
        return terms;
    }

    private static String ms(double value) {
        return Figures.text(value, 1);
    }

    /** What would make it less by {@value #WORTH_MS} ms or more, what helps most first; sentences. */
    public List<String> advice() {
        List<Help> helps = new ArrayList<>();
        wire(helps);
        if (timerPeriodMs > 0) {
            helps.add(new Help(
                    timerMs() - SHORTEST_TIMER_MS / 2,
                    "a latency timer of " + Figures.text(timerPeriodMs, 0) + " ms costs " + ms(timerMs())
                            + " on average; set to 1 ms in the driver of the USB serial chip it would cost "
                            + ms(SHORTEST_TIMER_MS / 2)));
        }
        if (glide) {
            helps.add(new Help(
                    intervalMs() / 2,
                    "glide costs " + Figures.text(glideMs(), 0) + " ms at " + Figures.text(ratePerS, 0)
                            + " readings a second; play --no-glide would leave " + Figures.text(intervalMs() / 2, 0)
                            + " and pitch in steps"));
        }
        helps.add(new Help(
                stillMs / 2,
                "small steps of a still hand are smoothed over " + Figures.text(stillMs, 0)
                        + " ms more; fewer cents to the mm (a narrower range, a longer zone) need less, tune --quickness 1"
                        + " halves it for twice the wobble"));
        sensor(helps);
        helps.removeIf(help -> !(help.savesMs() >= WORTH_MS));
        helps.sort((a, b) -> Double.compare(b.savesMs(), a.savesMs()));
        return helps.stream().map(Help::words).toList();
    }

    private void wire(List<Help> helps) {
        if (baud == 0 || baud >= FASTER_BAUD) {
            if (baud > 0 && isFull()) {
                helps.add(new Help(Double.MAX_VALUE, full() + ": print less"));
            }
            return;
        }
        if (isFull()) {
            helps.add(new Help(Double.MAX_VALUE, full() + ": print less, or change the board to " + FASTER_BAUD));
        } else {
            helps.add(new Help(
                    wireMs() - wireMs(FASTER_BAUD),
                    Figures.text(charactersPerLine, 0) + " characters a line cost " + ms(wireMs()) + " ms at " + baud
                            + " baud; print fewer, or raise the rate: " + FASTER_BAUD + " would cost "
                            + ms(wireMs(FASTER_BAUD))));
        }
    }

    private String full() {
        return Figures.text(ratePerS, 0) + " lines a second of " + Figures.text(charactersPerLine, 0)
                + " characters fill " + Figures.text(100 * wireBusy01(), 0) + " % of " + baud
                + " baud, and what does not fit waits in the board ever longer";
    }

    private void sensor(List<Help> helps) {
        if (measuringMs > 0 && intervalMs() > SLOWER * cycleMs) {
            double nowMs = waitMs() + glideMs();
            double thenMs = nowMs * cycleMs / intervalMs();
            helps.add(new Help(
                    nowMs - thenMs,
                    "the board prints " + Figures.text(ratePerS, 0) + " times a second, the sensor can measure "
                            + Figures.text(1000 / cycleMs, 0) + " times: that would cost " + ms(thenMs)
                            + " ms between readings instead of " + ms(nowMs)));
        }
        if (sensorMs() >= 0.4 * totalMs()) {
            helps.add(new Help(
                    sensorMs(),
                    "the sensor's own measuring time of " + Figures.text(measuringMs, 0) + " ms costs " + ms(sensorMs())
                            + ", " + Figures.text(100 * sensorMs() / totalMs(), 0)
                            + " % of it all: only a shorter one would help"));
        }
    }
}
