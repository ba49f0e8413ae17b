package handspan.live.path;

import handspan.hand.smooth.SmoothSettings;
import handspan.music.level.LevelCurve;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Snapper;
import handspan.music.tuning.Tuning;
import handspan.room.Zone;
import org.jspecify.annotations.Nullable;

/** From where the hands are to what sounds: zones, pitch curve, snapping, level curve. Owned by the path thread. */
final class Voice {
    private final Zone pitchZone;
    private final @Nullable Zone levelZone;
    private final LevelCurve level;
    private final SmoothSettings smoothing;
    private final double ratePerS;
    private Tuning tuning;
    private PitchCurve curve;
    private ScaleLadder ladder;
    private Snapper snapper;

    Voice(
            Zone pitchZone,
            @Nullable Zone levelZone,
            LevelCurve level,
            Tuning tuning,
            SmoothSettings smoothing,
            double ratePerS) {
        this.pitchZone = pitchZone;
        this.levelZone = levelZone;
        this.level = level;
        this.smoothing = smoothing;
        this.ratePerS = ratePerS;
        this.tuning = tuning;
        this.curve = tuning.curve();
        this.ladder = tuning.ladder();
        this.snapper = snapperFor(tuning);
    }

    private Snapper snapperFor(Tuning chosen) {
        return new Snapper(chosen.snap(), chosen.ladder(), hysteresisCents(chosen, pitchZone, smoothing, ratePerS));
    }

    /** Half-width of the hysteresis that a room's noise asks for. */
    static double hysteresisCents(Tuning tuning, Zone zone, SmoothSettings smoothing, double ratePerS) {
        double share01 = 1 / (1 + smoothing.stillLagMs() / 1000 * ratePerS);
        return Snapper.hysteresisCents(smoothing.jitterMm() * tuning.centsPerMm(zone.lengthMm()), share01, ratePerS);
    }

    void tune(Tuning chosen) {
        tuning = chosen;
        curve = chosen.curve();
        ladder = chosen.ladder();
        snapper = snapperFor(chosen);
    }

    void onPitchHand(double mm) {
        snapper.onReading(curve.key(pitchZone.place01(mm)));
    }

    void reset() {
        snapper.reset();
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
        double inScale = snapper.sounding(curve.key(place01));
        int note = ladder.nearest(inScale);
        double key = inScale + tuning.shiftKeys();
        int nearest = (int) Math.rint(key);
        return new SoundFrame(
                timeNanos,
                tuning.reference().hz(key),
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
}
