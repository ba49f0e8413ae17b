package handspan.music.tuning;

import handspan.number.units.Nanos;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * When a hand comes to rest, its place becomes the nearest note of the scale: the map is bent there
 * ({@link OnsetBend}), and from then on pitch is free. Source of the idea: O. Perrotin, C. d'Alessandro, Target
 * acquisition vs. expressive motion: dynamic pitch warping for intonation correction, ACM TOCHI 23(3), 2016.
 *
 * <pre>
 * MOVING   pitch has ranged little for 150 ms -> RESTING   and a new bend ramps in, in the place of the old
 * RESTING  pitch has ranged far within 150 ms -> MOVING    the bend stays
 * any      the hand goes                      -> MOVING    without a bend
 * </pre>
 *
 * <p>A slide so slow that the hand counts as resting keeps its bend: it fades along the way, and pitch never steps. The
 * two limits are apart so that noise does not make a resting hand rest again.
 */
final class OnsetSnapper implements Snapper {
    /** Time in which a shift ramps in, ms (30..80: slow enough for no step, quick enough for the attack). */
    static final double RAMP_MS = 80;

    private final ScaleLadder ladder;
    private final double restKeys;
    private final double moveKeys;
    private final Deque<Seen> window = new ArrayDeque<>();
    private boolean resting;
    private OnsetBend bend = OnsetBend.NONE;
    private OnsetBend before = OnsetBend.NONE;
    private long rampNanos;

    private record Seen(double key, long timeNanos) {}

    OnsetSnapper(ScaleLadder ladder, SnapLimits limits) {
        this.ladder = ladder;
        this.restKeys = limits.restKeys();
        this.moveKeys = limits.moveKeys();
    }

    @Override
    public void onReading(double key, long timeNanos) {
        window.addLast(new Seen(key, timeNanos));
        long from = timeNanos - Nanos.ofMs(SnapLimits.REST_MS);
        // the last one before the window stays, so that the whole time is covered
        while (window.size() > 2 && secondNanos() <= from) {
            window.removeFirst();
        }
        if (window.getFirst().timeNanos() > from) {
            return;
        }
        double[] keys = new double[window.size()];
        int i = 0;
        for (Seen seen : window) {
            keys[i++] = seen.key();
        }
        Arrays.sort(keys);
        double ranged = keys[keys.length - 1] - keys[0];
        if (!resting && ranged <= restKeys) {
            // the median: the last of the way there does not count
            rest((keys[(keys.length - 1) / 2] + keys[keys.length / 2]) / 2, timeNanos);
        } else if (resting && ranged > moveKeys) {
            resting = false;
        }
    }

    private long secondNanos() {
        var each = window.iterator();
        each.next();
        return each.next().timeNanos();
    }

    private void rest(double key, long timeNanos) {
        resting = true;
        before = bend;
        bend = OnsetBend.at(key, ladder);
        rampNanos = timeNanos;
    }

    @Override
    public double sounding(double key, long timeNanos) {
        double share = Math.max(0, Math.min(1, Nanos.toMs(timeNanos - rampNanos) / RAMP_MS));
        return key + (1 - share) * before.shift(key) + share * bend.shift(key);
    }

    @Override
    public void reset() {
        window.clear();
        resting = false;
        bend = OnsetBend.NONE;
        before = OnsetBend.NONE;
    }
}
