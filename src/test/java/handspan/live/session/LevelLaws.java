package handspan.live.session;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.path.FrameTarget;
import handspan.live.path.TargetStatus;
import handspan.music.level.LevelCurve;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;

/**
 * A target that holds what it gets against the promises made to ears: never above the ceiling, a rise of so many dB a
 * ms from the floor up, out of silence at every start, only downward once the sound has been closed, and a pitch within
 * what was tuned. Amplitude from dB is {@code 10^(dB/20)} (IEC 60027-3).
 */
final class LevelLaws implements FrameTarget {
    /** Rounding of a few products of doubles, as a share. */
    private static final double ROUNDING = 1e-9;

    private static final double FADE_MS = 60;

    /** The ends of a range stand at the scale's own notes where these are nearer than a quarter tone: in keys. */
    private static final double END_KEYS = 0.5;

    private double ceiling01;
    private double floor01;
    private double riseDbPerMs;
    private long changedNanos = Long.MIN_VALUE / 2;
    private double lowHz = Double.MAX_VALUE;
    private double highHz;
    private double gain01;
    private long timeNanos;
    private boolean closed;
    private long closedNanos = Long.MAX_VALUE;
    private long frames;
    private double loudest01;

    LevelLaws(LevelCurve curve) {
        this.ceiling01 = gain(curve.ceilingDb());
        this.floor01 = gain(curve.floorDb());
        this.riseDbPerMs = curve.riseDbPerMs();
    }

    /** Another level curve holds from now on: its ceiling once a short fade is over, until then all may only fall. */
    void follow(LevelCurve curve, long nowNanos) {
        ceiling01 = gain(curve.ceilingDb());
        floor01 = gain(curve.floorDb());
        riseDbPerMs = curve.riseDbPerMs();
        changedNanos = nowNanos;
    }

    private static double gain(double db) {
        return Math.pow(10, db / 20);
    }

    /** This tuning may be heard from now on; the way to it from any other leads between them. */
    void allow(Tuning tuning) {
        lowHz = Math.min(lowHz, tuning.reference().hz(tuning.lowKey() - END_KEYS + tuning.shiftKeys()));
        highHz = Math.max(highHz, tuning.reference().hz(tuning.highKey() + END_KEYS + tuning.shiftKeys()));
    }

    /** Another path begins: it knows nothing of what sounded before. */
    void start() {
        gain01 = 0;
        open();
    }

    /** The sound has been closed: by mute, loss or the end. */
    void shut() {
        if (!closed) {
            closed = true;
            closedNanos = Long.MAX_VALUE;
        }
    }

    /** The sound may be open again. */
    void open() {
        closed = false;
    }

    @Override
    public void send(SoundFrame frame, boolean withState) {
        frames++;
        double now01 = frame.gain01();
        boolean passes = frame.timeNanos() - changedNanos < FADE_MS * 1e6;
        double highest01 = passes ? Math.max(ceiling01, gain01) : ceiling01;
        assertTrue(now01 >= 0 && now01 <= highest01 * (1 + ROUNDING), () -> "above the ceiling: " + frame);
        double sinceMs = (frame.timeNanos() - timeNanos) / 1e6;
        double most01 = gain01 <= 0 ? floor01 : Math.max(gain01, floor01) * gain(riseDbPerMs * sinceMs);
        double before01 = gain01;
        assertTrue(
                now01 <= most01 * (1 + ROUNDING),
                () -> "rises too fast, from " + before01 + " within " + sinceMs + " ms: " + frame);
        if (closed) {
            closedNanos = Math.min(closedNanos, frame.timeNanos());
            assertTrue(now01 <= before01, () -> "rises although closed, from " + before01 + ": " + frame);
            boolean over = frame.timeNanos() - closedNanos >= FADE_MS * 1e6;
            assertTrue(!over || now01 == 0, () -> "sounds although closed for " + FADE_MS + " ms: " + frame);
        }
        double hz = frame.pitchHz();
        assertTrue(
                hz >= lowHz * (1 - ROUNDING) && hz <= highHz * (1 + ROUNDING),
                () -> "pitch outside " + lowHz + ".." + highHz + " Hz: " + frame);
        gain01 = now01;
        timeNanos = frame.timeNanos();
        loudest01 = Math.max(loudest01, now01);
    }

    /** How many were judged. */
    long frames() {
        return frames;
    }

    /** The loudest so far, as a share of the ceiling. */
    double loudestOfCeiling() {
        return loudest01 / ceiling01;
    }

    @Override
    public TargetStatus status() {
        return new TargetStatus("laws", frames, 0, 0, "");
    }

    @Override
    public void close() {
        // nothing is held
    }
}
