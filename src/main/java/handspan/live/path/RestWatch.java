package handspan.live.path;

import handspan.number.fit.Robust;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.room.Zone;
import handspan.room.budget.PitchSmoothing;
import java.util.Arrays;
import java.util.Optional;

/**
 * Watches, between songs, what the pitch sensor sees when no hand plays: where that is one fixed thing beyond the zone,
 * a change of its distance means that the sensor or the air has changed, and pitch with it. Pure: readings and time
 * come with the calls. Owned by one thread.
 *
 * <p>A rest level is the median of 10 s without a hand, of which at least half gave a reading and those agree: somebody
 * who walks past is in the beam for a second or two, somebody who stays moves. Two rest levels in a row must agree that
 * it has moved before a word is said.
 */
public final class RestWatch {
    /** Least move that is worth a word, mm. */
    static final double LEAST_MM = 3;

    /** Least move that is worth a word, cents: the smallest pitch step that is heard. */
    static final double LEAST_CENTS = PitchSmoothing.TARGET_CENTS;

    /** Share of the limit under which it is not any more. */
    private static final double BACK01 = 0.7;

    /** A move by more than this share, and more than so many mm, is another thing in the beam. */
    private static final double OTHER_THING01 = 0.05;

    private static final double OTHER_THING_MM = 60;

    /** Scatter of a fixed thing: at most so many times the noise of the room's own holds, and never under a floor. */
    private static final double SCATTER_TIMES = 3;

    private static final double SCATTER_FLOOR_MM = 5;

    /** Standard deviations of the difference that count as moved. */
    private static final double SIGNIFICANT = 4;

    /** Standard deviation of a median over that of a mean, of normal data: the root of pi/2. */
    private static final double MEDIAN_TO_MEAN = 1.2533;

    private static final long AWAY_NANOS = 2 * Nanos.PER_SECOND;
    private static final long BLOCK_NANOS = 10 * Nanos.PER_SECOND;
    private static final int MOST = 1024;

    /**
     * What the pitch sensor is good for.
     *
     * @param zone what is within it, or near its far end, may be a hand
     * @param noiseMm of one reading
     * @param centsPerMm of the tuning
     * @param perC share by which distances read shorter for each degree of warmer air; 0 where air does not matter
     */
    record Scene(Zone zone, double noiseMm, double centsPerMm, double perC) {}

    /** A rest level and its standard uncertainty. */
    private record Rest(double mm, double uncertaintyMm) {}

    private final Scene scene;
    private final double[] values = new double[MOST];
    private int kept;
    private int valid;
    private int seen;
    private int every = 1;
    private boolean away;
    private long fromNanos;
    private Optional<Rest> first = Optional.empty();
    private double lastMoveMm;
    private String hint = "";

    RestWatch(Scene scene) {
        this.scene = scene;
    }

    /**
     * A reading came.
     *
     * @param mm distance; NaN where the sensor saw nothing
     * @param timeNanos not before the last call's
     * @param pitchHand whether the pitch hand plays
     */
    void onReading(double mm, long timeNanos, boolean pitchHand) {
        if (pitchHand || !away) {
            away = !pitchHand;
            begin(timeNanos + AWAY_NANOS);
            return;
        }
        if (timeNanos < fromNanos) {
            return;
        }
        seen++;
        if (mm > scene.zone().farMm() && !scene.zone().holds(mm)) {
            keep(mm);
        }
        if (timeNanos - fromNanos >= BLOCK_NANOS) {
            rest().ifPresentOrElse(this::compare, () -> lastMoveMm = 0);
            begin(timeNanos);
        }
    }

    private void begin(long timeNanos) {
        fromNanos = timeNanos;
        kept = 0;
        valid = 0;
        seen = 0;
        every = 1;
    }

    /** Where readings come so fast that they do not fit, every other one is dropped, again and again. */
    private void keep(double mm) {
        if (kept == MOST) {
            for (int i = 0; i < MOST / 2; i++) {
                values[i] = values[2 * i];
            }
            kept = MOST / 2;
            every *= 2;
        }
        if (valid % every == 0) {
            values[kept++] = mm;
        }
        valid++;
    }

    private Optional<Rest> rest() {
        if (2 * valid < seen || kept < 10) {
            return Optional.empty();
        }
        double[] all = Arrays.copyOf(values, kept);
        double median = Robust.median(all);
        double scatterMm = Robust.MAD_TO_SD * Robust.medianAbsoluteDeviation(all, median);
        if (scatterMm > Math.max(SCATTER_FLOOR_MM, SCATTER_TIMES * scene.noiseMm())) {
            return Optional.empty();
        }
        // on sensors that print whole steps the deviation alone may be 0: the room's own noise is the least
        double sdMm = Math.max(scatterMm, scene.noiseMm());
        return Optional.of(new Rest(median, MEDIAN_TO_MEAN * sdMm / Math.sqrt(kept)));
    }

    private void compare(Rest now) {
        if (first.isEmpty()) {
            first = Optional.of(now);
            return;
        }
        Rest then = first.get();
        double moveMm = now.mm() - then.mm();
        if (Math.abs(moveMm) > Math.max(OTHER_THING_MM, OTHER_THING01 * then.mm())) {
            first = Optional.of(now);
            lastMoveMm = 0;
            hint = "";
            return;
        }
        double uncertaintyMm = Math.hypot(now.uncertaintyMm(), then.uncertaintyMm());
        double limitMm = Math.max(SIGNIFICANT * uncertaintyMm, Math.max(LEAST_MM, leastMm(then.mm())));
        boolean twice = Math.abs(lastMoveMm) > limitMm && Math.abs(moveMm - lastMoveMm) <= limitMm;
        if (hint.isEmpty() && Math.abs(moveMm) > limitMm && twice) {
            hint = words(moveMm, then.mm());
        } else if (Math.abs(moveMm) < BACK01 * limitMm) {
            hint = "";
        }
        lastMoveMm = moveMm;
    }

    /** The move of the thing that stands for the least number of cents at the far end. */
    private double leastMm(double thingMm) {
        return LEAST_CENTS / scene.centsPerMm() / atFarEnd(thingMm);
    }

    /** Sound that runs faster shortens all distances by one factor, anything else shifts them by one amount. */
    private double atFarEnd(double thingMm) {
        return scene.perC() > 0 ? scene.zone().farMm() / thingMm : 1;
    }

    private String words(double moveMm, double thingMm) {
        String cents = Figures.text(Math.abs(moveMm) * atFarEnd(thingMm) * scene.centsPerMm(), 0);
        String ending = " (about " + cents + " cents at the far end): check when the song is over";
        String moved = "rest level moved " + Figures.text(Math.abs(moveMm), 0) + " mm since the start";
        if (scene.perC() == 0) {
            return moved + ending;
        }
        double degrees = -moveMm / thingMm / scene.perC();
        return moved + ", echo times by " + Figures.text(100 * Math.abs(moveMm) / thingMm, 1) + " %: about "
                + Figures.text(Math.abs(degrees), 0) + " C " + (degrees > 0 ? "warmer" : "colder")
                + " or the object moved" + ending;
    }

    /** The link is gone: what is there afterwards is looked at anew. */
    void onLost() {
        away = false;
    }

    /** What is worth a word; empty when nothing is. */
    String hint() {
        return hint;
    }
}
