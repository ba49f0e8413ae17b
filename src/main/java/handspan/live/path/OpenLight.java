package handspan.live.path;

import handspan.number.units.Nanos;

/**
 * Where the light sensor's open level is. It follows the room slowly, only while nobody plays and no hand is near, and
 * no further than {@value #MOST_LN} from where it was last taken. Pure: light and time come with the calls. Owned by
 * one thread.
 *
 * <p>Another brightness shifts the log of the resistance by one amount for all places of a hand, so that one number,
 * {@link #shiftLn}, corrects the whole response.
 *
 * <p>No hand is near when light is within {@value #DARKER_LN} below and {@value #BRIGHTER_LN} above the open level and
 * has not just become darker: a hand comes within a second, a room darkens within minutes. A hand that already rested
 * high above the sensor when the playing ended can't be told from a darker room; the band limits what it does.
 */
public final class OpenLight {
    /** Time constant of following. */
    static final double FOLLOW_SECONDS = 120;

    /** Furthest from where it was taken, ln of resistance: a factor of 2, some 3 in light. */
    static final double MOST_LN = 0.7;

    /** Darker than this is a hand, ln of resistance: some 17 % less light. */
    static final double DARKER_LN = 0.12;

    /** Brighter than this is another lighting, not a drift. */
    static final double BRIGHTER_LN = LightGuard.BRIGHTER_LN;

    private static final long AWAY_NANOS = 5 * Nanos.PER_SECOND;
    private static final double FAST_SECONDS = 1;
    private static final double SLOW_SECONDS = 10;

    /** A drop of the fast below the slow mean that means a hand, and one that means that it has gone. */
    private static final double COMES_LN = 0.03;

    private static final double GONE_LN = 0.02;

    private final double savedLn;
    private final double brighter;
    private double takenLn;
    private double openLn;
    private double fastLn;
    private double slowLn;
    private boolean handNear;
    private boolean averaging;
    private boolean away;
    private long awayNanos;
    private long lastNanos;

    /**
     * The open level of a room.
     *
     * @param openLn ln of resistance ratio of the open sensor
     * @param coveredLn the same of the covered one
     */
    public OpenLight(double openLn, double coveredLn) {
        this.savedLn = openLn;
        this.takenLn = openLn;
        this.openLn = openLn;
        this.brighter = openLn > coveredLn ? 1 : -1;
    }

    /** A reading's distance from the open level, brighter positive. */
    public double overOpenLn(double ln) {
        return brighter * (ln - openLn);
    }

    /**
     * Follows.
     *
     * @param ln ln of resistance ratio
     * @param timeNanos not before the last call's
     * @param pitchHand whether the pitch hand plays
     */
    public void onLight(double ln, long timeNanos, boolean pitchHand) {
        double seconds = Math.min(1, Nanos.toSeconds(timeNanos - lastNanos));
        lastNanos = timeNanos;
        if (pitchHand || !away) {
            away = !pitchHand;
            awayNanos = timeNanos;
            averaging = false;
            return;
        }
        if (timeNanos - awayNanos < AWAY_NANOS) {
            return;
        }
        if (!averaging) {
            averaging = true;
            handNear = false;
            fastLn = ln;
            slowLn = ln;
            return;
        }
        fastLn += (ln - fastLn) * Math.min(1, seconds / FAST_SECONDS);
        double dropLn = brighter * (slowLn - fastLn);
        handNear = dropLn > (handNear ? GONE_LN : COMES_LN);
        double overLn = overOpenLn(fastLn);
        if (handNear || overLn < -DARKER_LN || overLn > BRIGHTER_LN) {
            return;
        }
        slowLn += (fastLn - slowLn) * seconds / SLOW_SECONDS;
        double followed = openLn + (fastLn - openLn) * seconds / FOLLOW_SECONDS;
        openLn = Math.max(takenLn - MOST_LN, Math.min(takenLn + MOST_LN, followed));
    }

    /** Takes a level as the open one. */
    public void take(double ln) {
        takenLn = ln;
        openLn = ln;
        averaging = false;
    }

    /** The open level, ln of resistance ratio. */
    public double openLn() {
        return openLn;
    }

    /** How far the open level is from the room's saved one: to be taken off each reading before the response. */
    public double shiftLn() {
        return openLn - savedLn;
    }

    /** How far it has moved by following since it was last taken, brighter positive. */
    public double followedLn() {
        return brighter * (openLn - takenLn);
    }
}
