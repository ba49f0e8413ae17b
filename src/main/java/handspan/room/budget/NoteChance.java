package handspan.room.budget;

import handspan.hand.smooth.SmoothSettings;
import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import handspan.number.fit.Normal;
import handspan.number.units.Figures;
import handspan.room.Aim;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;

/**
 * How likely one note is missed by a player who reaches for it.
 *
 * <p>With where the reach ends spread normally about the note's place, standard deviation s, and the boundaries of its
 * cell a mm nearer and b mm farther: {@code P = Q(a / s) + Q(b / s)}, Q the normal distribution's upper tail. An
 * outermost note has one term, since the hand that goes too far still sounds it.
 *
 * @param note of the tuning's ladder, 0 = the lowest
 * @param atMm its place
 * @param nearMm the boundary of its cell towards the sensor; negative infinity where its outer side is clamped
 * @param farMm the boundary of its cell away from the sensor; infinity where its outer side is clamped
 * @param spreadMm standard deviation of where the reach ends, as the map sees it
 * @param miss01 chance that another note is hit
 */
public record NoteChance(int note, double atMm, double nearMm, double farMm, double spreadMm, double miss01) {
    private static final double LEAST_TOLD01 = 0.001;

    /**
     * The chances of all notes of a tuning, from low to high.
     *
     * @param room with its noise and the uncertainty of its map
     * @param tuning whose scale's notes are reached for
     * @param aim of the player
     */
    public static List<NoteChance> of(Room room, Tuning tuning, Aim aim) {
        return of(Reach.in(room, aim), tuning);
    }

    static List<NoteChance> of(Reach reach, Tuning tuning) {
        PitchCurve curve = tuning.curve();
        ScaleLadder ladder = tuning.ladder();
        SmoothSettings smoothing = reach.smoothing(curve, tuning.quickness());
        boolean lowNear = curve.direction() == Direction.HIGH_FAR;
        List<NoteChance> chances = new ArrayList<>();
        for (int note = 0; note < ladder.size(); note++) {
            double low = ladder.lowerBoundary(note);
            double high = ladder.upperBoundary(note);
            double place = curve.place01(ladder.key(note));
            chances.add(of(
                    note,
                    reach.hand().zone().mm(place),
                    boundaryMm(reach, curve, lowNear ? low : high, Double.NEGATIVE_INFINITY),
                    boundaryMm(reach, curve, lowNear ? high : low, Double.POSITIVE_INFINITY),
                    reach.spreadMm(smoothing, curve, place)));
        }
        return chances;
    }

    /** Where a boundary lies, or the given infinity where there is none. */
    private static double boundaryMm(Reach reach, PitchCurve curve, double key, double none) {
        Zone zone = reach.hand().zone();
        return Double.isInfinite(key) ? none : zone.mm(curve.place01(key));
    }

    /**
     * The chance of one cell.
     *
     * @param note of a ladder
     * @param atMm its place
     * @param nearMm boundary towards the sensor, or negative infinity
     * @param farMm boundary away from it, or infinity
     * @param spreadMm above 0
     */
    static NoteChance of(int note, double atMm, double nearMm, double farMm, double spreadMm) {
        double miss = Normal.upperTail((atMm - nearMm) / spreadMm) + Normal.upperTail((farMm - atMm) / spreadMm);
        return new NoteChance(note, atMm, nearMm, farMm, spreadMm, miss);
    }

    /** The note of some that is missed most; the lowest of several. */
    public static NoteChance worst(List<NoteChance> chances) {
        return chances.stream().reduce((a, b) -> b.miss01 > a.miss01 ? b : a).orElseThrow();
    }

    /** A chance in words: what is next to nothing is not called nothing. */
    public static String percent(double miss01) {
        return miss01 < LEAST_TOLD01 ? "under 0.1 %" : Figures.percent(miss01);
    }
}
