package handspan.live.path;

import handspan.music.level.LevelCurve;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.PitchBridge;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.SnapLimits;
import handspan.music.tuning.Snapper;
import handspan.music.tuning.Tuning;
import handspan.room.Zone;
import org.jspecify.annotations.Nullable;

/** From where the hands are to what sounds: zones, pitch curve, snapping, level curve. Owned by the path thread. */
final class Voice {
    /** Least time for passing over into another tuning, ms (this project's own choice). */
    private static final double BRIDGE_MS = 60;

    private final Zone pitchZone;
    private final @Nullable Zone levelZone;
    private LevelCurve level;
    private final PitchBridge bridge = new PitchBridge(BRIDGE_MS);
    private Tuning tuning;
    private PitchCurve curve;
    private ScaleLadder ladder;
    private Snapper snapper;
    private double soundedHz;
    private double leftHz;
    private double leftKey;

    Voice(Zone pitchZone, @Nullable Zone levelZone, LevelCurve level, Tuning tuning, SnapLimits limits) {
        this.pitchZone = pitchZone;
        this.levelZone = levelZone;
        this.level = level;
        this.tuning = tuning;
        this.curve = tuning.curve();
        this.ladder = tuning.ladder();
        this.snapper = Snapper.of(tuning.snapping(), ladder, limits);
    }

    /**
     * Puts another tuning in. What sounds now passes over into it.
     *
     * @param limits of its snapping in this room
     * @param sounds whether anything sounds: in silence there is nothing to pass over from
     */
    void tune(Tuning chosen, SnapLimits limits, boolean sounds) {
        leftHz = sounds ? soundedHz : 0;
        bridge.reset();
        tuning = chosen;
        curve = chosen.curve();
        ladder = chosen.ladder();
        snapper = Snapper.of(chosen.snapping(), ladder, limits);
    }

    /** Puts another level curve in, at once: what sounds passes over in the {@link Fade}. */
    void level(LevelCurve curve) {
        level = curve;
    }

    void onPitchHand(double mm, long timeNanos) {
        snapper.onReading(curve.key(pitchZone.place01(mm)), timeNanos);
    }

    void reset() {
        snapper.reset();
        bridge.reset();
        leftHz = 0;
    }

    /** Where pitch stands before the first hand: the low end. */
    double restMm() {
        return pitchZone.mm(curve.place01(curve.lowKey()));
    }

    double gain01(double levelMm) {
        return levelZone == null ? level.ceilingGain01() : level.gain01(levelZone.place01(levelMm));
    }

    SoundFrame frame(long timeNanos, double pitchMm, double levelMm, double gain01, boolean hand, PlayState state) {
        double place01 = pitchZone.place01(pitchMm);
        double inScale = snapper.sounding(curve.key(place01), timeNanos);
        int note = ladder.nearest(inScale);
        double newKey = inScale + tuning.shiftKeys();
        if (leftHz > 0) {
            leftKey = tuning.reference().key(leftHz);
            bridge.add(leftKey - newKey, timeNanos);
            leftHz = 0;
        }
        double key = bridged(newKey, bridge.at(timeNanos));
        soundedHz = tuning.reference().hz(key);
        int nearest = (int) Math.rint(key);
        return new SoundFrame(
                timeNanos,
                soundedHz,
                nearest,
                (key - nearest) * ReferencePitch.CENTS_PER_KEY,
                ladder.degree(note),
                ladder.octave(note),
                gain01,
                hand,
                place01,
                levelZone == null ? 1 : levelZone.place01(levelMm),
                state);
    }

    /** A hand that moves while pitch passes over must not carry it beyond both what was left and the new range. */
    private double bridged(double newKey, double offKeys) {
        if (offKeys == 0) {
            return newKey;
        }
        double least = Math.min(newKey, Math.min(leftKey, curve.lowKey() + tuning.shiftKeys()));
        double most = Math.max(newKey, Math.max(leftKey, curve.highKey() + tuning.shiftKeys()));
        return Math.max(least, Math.min(most, newKey + offKeys));
    }
}
