package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * The truth about one hand: how many mm it is above its sensor at any time.
 *
 * <p>Its place is a pure function of time and of the goals given so far. A goal counts from its start time on and
 * replaces what had been planned from then on; earlier times keep their answer for ever. The hand begins absent; its
 * first goal brings it in from {@link #AWAY_MM}, and {@link #leave} lifts it out again, so that a sensor loses it on
 * the way.
 *
 * <p>Goals may come from one thread while another reads places.
 */
public final class SimulatedHand {
    /** Where a withdrawn hand comes from and goes to: beyond the sight of every sensor here. */
    public static final double AWAY_MM = 1500;

    private static final double CLOSEST_MM = 1;
    private static final double LONGEST_SECONDS = 3600;

    private final Sines tremor;
    private final Sines wander;
    private final List<Segment> segments = new ArrayList<>();

    /** A hand that is absent until its first goal. */
    public SimulatedHand(HandSettings settings, long seed) {
        Random random = Seeds.random(seed, "hand");
        tremor = new Sines(settings.tremorRmsMm(), 6, 12, 5, random);
        wander = new Sines(settings.wanderRmsMm(), 0.05, 0.5, 6, random);
        segments.add(new Segment(Long.MIN_VALUE, new Motion.Hold(AWAY_MM), Long.MIN_VALUE));
    }

    /**
     * Moves to a place and holds there.
     *
     * @param mm goal above the sensor, 1..1500 mm
     * @param seconds duration of the move, above 0
     * @return when the hand arrives
     */
    public synchronized long goTo(double mm, long startNanos, double seconds) {
        Allowed.within("goal of a hand", mm, CLOSEST_MM, AWAY_MM, "mm");
        long end = endOf(startNanos, seconds);
        append(startNanos, new Motion.MinimumJerk(startNanos, seconds, stateAt(startNanos), mm), Long.MAX_VALUE);
        return end;
    }

    /**
     * Lifts the hand out of sight; it is seen on its way until out of a sensor's range, and absent once it has arrived.
     * Does nothing to a hand that is absent already.
     *
     * @return when the hand is gone
     */
    public synchronized long leave(long startNanos, double seconds) {
        long end = endOf(startNanos, seconds);
        if (!presentAt(startNanos)) {
            append(startNanos, new Motion.Hold(AWAY_MM), Long.MIN_VALUE);
            return startNanos;
        }
        append(startNanos, new Motion.MinimumJerk(startNanos, seconds, stateAt(startNanos), AWAY_MM), end);
        return end;
    }

    /**
     * Swings to and fro about a centre, which is reached smoothly from wherever the hand is, and ends there.
     *
     * @param amplitudeMm half the width of the swing
     * @return when the swing is over
     */
    public synchronized long sway(double centreMm, double amplitudeMm, double hz, long startNanos, double seconds) {
        Allowed.within("amplitude of a swing", amplitudeMm, 0, AWAY_MM, "mm");
        Allowed.within("nearest place of a swing", centreMm - amplitudeMm, CLOSEST_MM, AWAY_MM, "mm");
        Allowed.within("frequency of a swing", hz, 0.001, 20, "Hz");
        long end = endOf(startNanos, seconds);
        double from = segmentAt(startNanos).motion().mm(startNanos);
        append(startNanos, new Motion.Sway(startNanos, seconds, from, centreMm, amplitudeMm, hz), Long.MAX_VALUE);
        return end;
    }

    /**
     * Swings to and fro about the place where the hand is meant to be at the start; ends there.
     *
     * @return when the vibrato is over
     */
    public synchronized long vibrato(double amplitudeMm, double hz, long startNanos, double seconds) {
        return sway(segmentAt(startNanos).motion().mm(startNanos), amplitudeMm, hz, startNanos, seconds);
    }

    /** Whether the hand is anywhere near the instrument; while it is not, both distances read {@link #AWAY_MM}. */
    public synchronized boolean presentAt(long timeNanos) {
        return timeNanos < segmentAt(timeNanos).goneFromNanos();
    }

    /** True distance above the sensor in mm, with tremor and wander. */
    public synchronized double trueMm(long timeNanos) {
        if (!presentAt(timeNanos)) {
            return AWAY_MM;
        }
        double unsteady = tremor.at(timeNanos) + wander.at(timeNanos);
        return Math.max(CLOSEST_MM, intendedMm(timeNanos) + unsteady);
    }

    /** Distance the player means to hold, in mm: the planned way without tremor and wander. */
    public synchronized double intendedMm(long timeNanos) {
        return Math.max(CLOSEST_MM, segmentAt(timeNanos).motion().mm(timeNanos));
    }

    private Motion.State stateAt(long timeNanos) {
        return Motion.State.of(segmentAt(timeNanos).motion(), timeNanos);
    }

    private Segment segmentAt(long timeNanos) {
        int i = segments.size() - 1;
        while (i > 0 && segments.get(i).startNanos() > timeNanos) {
            i--;
        }
        return segments.get(i);
    }

    private void append(long startNanos, Motion motion, long goneFromNanos) {
        while (segments.size() > 1 && segments.get(segments.size() - 1).startNanos() >= startNanos) {
            segments.remove(segments.size() - 1);
        }
        segments.add(new Segment(startNanos, motion, goneFromNanos));
    }

    private static long endOf(long startNanos, double seconds) {
        Allowed.within("duration of a move", seconds, 0.001, LONGEST_SECONDS, "s");
        return startNanos + Nanos.ofSeconds(seconds);
    }

    private record Segment(long startNanos, Motion motion, long goneFromNanos) {}
}
