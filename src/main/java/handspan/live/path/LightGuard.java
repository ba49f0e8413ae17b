package handspan.live.path;

import handspan.number.units.Figures;
import handspan.number.units.Nanos;

/**
 * Keeps changes of light from being played as if they were a hand: what no hand can do mutes. A pure state machine;
 * light and time come with the calls. Owned by one thread.
 *
 * <p>Light is told as the log of the sensor's resistance over the open level, brighter positive: 0 is open,
 * {@code -spanLn} is covered. A hand over the sensor only takes light away, and it needs some 150 ms from end to end.
 *
 * <pre>
 * none    brighter than open by more than {@value #BRIGHTER_LN}        -> BRIGHT  (a hand can't)
 * none    darker than covered by more than {@value #DARKER_LN}         -> DARK    (where covered is silent only after 0.5 s: a finger
 *                                                         may press tighter than at the calibration)
 * none    towards loud by 0.8 of the span in 45 ms        -> JUMP    (faster than a hand)
 * none    the same by 0.35 while no pitch hand plays      -> JUMP
 * DARK    out of it at a hand's pace, covered is silent   -> none    (it was a finger)
 * DARK    out of it faster                                -> JUMP
 * any     within the usual range for 1 s, the lamps not known to be brighter ({@link Lamps}) -> none
 * any     {@link #reset}                                  -> none
 * </pre>
 *
 * <p>Not to be told apart from a hand, and not muted: a change that stays between covered and open and is slower than
 * the limits above, for example lamps that grow tenfold while a hand covers the sensor.
 */
public final class LightGuard {
    /** How much brighter than open mutes, ln of resistance: a factor of 1.65, some 2.2 in light. */
    static final double BRIGHTER_LN = 0.5;

    /** How much darker than covered mutes, ln of resistance: a factor of 2.7, some 4.7 in light. */
    static final double DARKER_LN = 1.0;

    /** Share of both at which light counts as usual again. */
    private static final double BACK01 = 0.7;

    /**
     * Shares of the span that no hand, and that few hands, move within {@link LightTrail#WINDOW_NANOS}. A hand that
     * opens in 150 ms from 8 mm on the quickest smooth path (minimum jerk; T. Flash, N. Hogan, J. Neurosci. 5 (1985)
     * 1688, from memory) moves 0.66 as a cell with 20 ms of rise shows it, one in 300 ms 0.43, in 600 ms 0.24; light
     * that grows tenfold 0.6, thirtyfold 0.9 (computed here for a span of a factor 50 in light).
     */
    private static final double NO_HAND_SPANS = 0.8;

    private static final double FEW_HANDS_SPANS = 0.35;

    /**
     * Where covered is loud: what lights that fail reach within half a reading at 50 a second (0.4 in 45 ms), and a
     * hand that closes in 0.5 s.
     */
    private static final double HOLD_SPANS = 0.2;

    /** How long light must have been slow again until level may rise. */
    private static final long HOLD_NANOS = 60 * Nanos.PER_MS;

    private static final long DARK_NANOS = 500 * Nanos.PER_MS;
    private static final long SETTLED_NANOS = Nanos.PER_SECOND;
    private static final long NEVER = Long.MIN_VALUE;

    /** How fast a room brightens or dims by itself, ln of resistance a second: not a jump. */
    private static final double BRIGHTENS_PER_S = 0.02;

    private static final double DIMS_PER_S = 0.002;

    /** Why it mutes. */
    private enum Cause {
        NONE,
        BRIGHT,
        DARK,
        JUMP
    }

    private final double spanLn;
    private boolean loudOpen;
    private final LightTrail trail = new LightTrail();
    private final Lamps lamps;
    private double brightestLn;
    private long darkNanos = NEVER;
    private long usualNanos = NEVER;
    private long fastNanos = NEVER;
    private boolean holds;
    private Cause cause = Cause.NONE;
    private String reason = "";

    /**
     * A guard that lets through.
     *
     * @param spanLn from covered to open, ln of resistance, above 0
     * @param loudOpen whether the open sensor is loud and the covered one silent; else the other way round
     */
    public LightGuard(double spanLn, boolean loudOpen) {
        if (!(spanLn > 0) || !Double.isFinite(spanLn)) {
            throw new IllegalArgumentException("light span of " + spanLn + " (above 0)");
        }
        this.spanLn = spanLn;
        this.lamps = new Lamps(spanLn);
        this.loudOpen = loudOpen;
    }

    /**
     * Judges a reading.
     *
     * @param overOpenLn ln of resistance over the open level, brighter positive
     * @param timeNanos not before the last call's
     * @param pitchHand whether the pitch hand plays
     */
    public void onLight(double overOpenLn, long timeNanos, boolean pitchHand) {
        double loudLn = loudOpen ? overOpenLn : -spanLn - overOpenLn;
        double anyRiseSpans =
                trail.fastestLn(loudLn, timeNanos, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY) / spanLn;
        // beyond the quiet end all is silent, beyond the loud one nothing gets louder
        double riseSpans = trail.fastestLn(loudLn, timeNanos, -spanLn, 0) / spanLn;
        boolean jump = riseSpans > (pitchHand ? NO_HAND_SPANS : FEW_HANDS_SPANS)
                || (cause == Cause.DARK && anyRiseSpans > NO_HAND_SPANS);
        // where dark is loud, light that fails looks like a closing hand until it is darker than one: wait and see
        fastNanos = !loudOpen && anyRiseSpans > HOLD_SPANS ? timeNanos : fastNanos;
        holds = fastNanos != NEVER && timeNanos - fastNanos < HOLD_NANOS;
        darkNanos = overOpenLn >= -spanLn - DARKER_LN ? NEVER : darkNanos == NEVER ? timeNanos : darkNanos;
        boolean dark = darkNanos != NEVER && (!loudOpen || timeNanos - darkNanos >= DARK_NANOS);
        lamps.onLight(overOpenLn, timeNanos, darkNanos != NEVER);
        if (overOpenLn > brightestLn + BRIGHTER_LN) {
            lamps.bright(overOpenLn);
            mute(Cause.BRIGHT, overOpenLn, pitchHand);
        } else if (jump) {
            double riseLn = trail.riseLn(loudLn, timeNanos);
            if (loudOpen && anyRiseSpans > NO_HAND_SPANS) {
                lamps.jump(overOpenLn - riseLn, timeNanos);
            }
            mute(Cause.JUMP, riseLn, pitchHand);
        } else if (dark) {
            mute(Cause.DARK, -spanLn - overOpenLn, pitchHand);
        } else if (cause == Cause.NONE) {
            follow(overOpenLn, timeNanos);
        } else {
            settle(overOpenLn, timeNanos, pitchHand);
        }
        trail.add(loudLn, timeNanos);
    }

    private void mute(Cause seen, double byLn, boolean pitchHand) {
        usualNanos = NEVER;
        boolean worse = cause == Cause.NONE || (cause == Cause.DARK && seen != Cause.DARK);
        if (worse) {
            cause = seen;
            reason = words(seen, Figures.text(Math.exp(byLn), Math.exp(byLn) < 10 ? 1 : 0), pitchHand);
        }
    }

    private static String words(Cause seen, String factor, boolean pitchHand) {
        String what = switch (seen) {
            case BRIGHT -> "light is brighter than open, by a factor of " + factor + " or more, which no hand can do";
            case DARK ->
                "light is darker than a covered sensor, by a factor of " + factor + " or more"
                        + " (if it was your hand: calibrate covered as close as you play)";
            default ->
                "light jumped by a factor of " + factor
                        + (pitchHand ? ", faster than a hand can move" : " with no hand playing");
        };
        return what + ": muted until it is as usual for 1 s, or the open level is taken again";
    }

    /** A room that brightens by itself takes the limit along; a jump does not. */
    private void follow(double overOpenLn, long timeNanos) {
        lamps.usual();
        double seconds = Math.min(1, trail.secondsSince(timeNanos));
        brightestLn = overOpenLn > brightestLn
                ? Math.min(overOpenLn, brightestLn + BRIGHTENS_PER_S * seconds)
                : Math.max(0, brightestLn - DIMS_PER_S * seconds);
    }

    private void settle(double overOpenLn, long timeNanos, boolean pitchHand) {
        boolean usual = !lamps.brighter()
                && overOpenLn <= brightestLn + BACK01 * BRIGHTER_LN
                && overOpenLn >= -spanLn - BACK01 * DARKER_LN;
        if (!usual) {
            usualNanos = NEVER;
            return;
        }
        if (usualNanos == NEVER) {
            usualNanos = timeNanos;
        }
        boolean finger = cause == Cause.DARK && loudOpen && pitchHand;
        if (finger || timeNanos - usualNanos >= SETTLED_NANOS) {
            cause = Cause.NONE;
            reason = "";
            lamps.usual();
        }
    }

    /** The open level has been taken again, or nothing was heard for a while: what was seen says nothing any more. */
    public void reset() {
        trail.clear();
        lamps.onLost();
        lamps.usual();
        brightestLn = 0;
        darkNanos = NEVER;
        usualNanos = NEVER;
        fastNanos = NEVER;
        holds = false;
        cause = Cause.NONE;
        reason = "";
    }

    /** The other end is the loud one: how fast light moved towards the one before says nothing. A mute stays. */
    void loudOpen(boolean open) {
        if (open != loudOpen) {
            loudOpen = open;
            trail.clear();
            usualNanos = NEVER;
            fastNanos = NEVER;
            holds = false;
        }
    }

    /** Nothing was heard for a while: what was seen last says nothing of how fast light moves. A mute stays. */
    public void onLost() {
        trail.clear();
        usualNanos = NEVER;
        lamps.onLost();
    }

    /** Whether it mutes. */
    public boolean mutes() {
        return cause != Cause.NONE;
    }

    /** Whether level must not rise just now: light moves so fast towards loud that it may not be a hand. */
    public boolean holds() {
        return holds;
    }

    /** Why it mutes, in words; empty when it does not. */
    public String reason() {
        return reason;
    }
}
