package handspan.room.budget;

import handspan.hand.smooth.SmoothSettings;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Snap;
import handspan.music.tuning.SnapLimits;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.Room;
import java.util.Optional;

/** Whether a room is steady enough for {@link Snap#STEPS}: the play at a boundary must not swallow a note. */
public final class StepsBudget {
    private static final double KEYS_PER_OCTAVE = 12;

    private StepsBudget() {}

    /** What snapping has to know of a room's noise, where the tuning's curve is steepest. */
    public static SnapLimits limits(Room room, Tuning tuning) {
        SmoothSettings smoothing = PitchSmoothing.of(room, tuning);
        double centsPerMm = tuning.centsPerMm(room.pitch().zone().lengthMm());
        return SnapLimits.of(smoothing.jitterMm() * centsPerMm, smoothing.share01(), room.ratePerS());
    }

    /**
     * Why a room is too unsteady for {@link Snap#STEPS} with a tuning: the hysteresis that keeps a resting hand from
     * switching would take more than a quarter of the narrowest note.
     *
     * @return empty when it is steady enough, or the tuning does not snap so
     */
    public static Optional<String> refusal(Room room, Tuning tuning) {
        if (tuning.snap() != Snap.STEPS || holds(room, tuning)) {
            return Optional.empty();
        }
        String range = widest(room, tuning)
                .map(it -> tuning.lowName() + " to " + tuning.with(it).highName() + " ("
                        + Figures.text((it.highKey() - it.lowKey()) / KEYS_PER_OCTAVE, 1)
                        + " octaves) would hold, or a scale with fewer notes, or --snap free")
                .orElse("a scale with fewer notes might hold, or --snap free");
        return Optional.of("steps of " + tuning.scale().name() + " would flutter here: the noise of this room asks for "
                + Figures.text(limits(room, tuning).hysteresisCents(), 0) + " cents of play at each boundary (at most "
                + Figures.text(mostCents(tuning), 0) + " for this scale); " + range);
    }

    /** The widest range from the same low note in which {@link Snap#STEPS} holds; empty when none does. */
    public static Optional<PitchRange> widest(Room room, Tuning tuning) {
        PitchRange range = tuning.range();
        for (int high = range.highKey(); high > range.lowKey(); high--) {
            PitchRange narrower = new PitchRange(range.lowKey(), high, range.direction(), range.warp());
            if (tried(tuning, narrower)
                    .filter(it -> it.ladder().size() > 1 && holds(room, it))
                    .isPresent()) {
                return Optional.of(narrower);
            }
        }
        return Optional.empty();
    }

    /** Empty where no note of the scale lies in the range. */
    private static Optional<Tuning> tried(Tuning tuning, PitchRange range) {
        try {
            return Optional.of(tuning.with(range));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static boolean holds(Room room, Tuning tuning) {
        return limits(room, tuning).hysteresisCents() <= mostCents(tuning);
    }

    private static double mostCents(Tuning tuning) {
        return tuning.ladder().narrowestCell() * ReferencePitch.CENTS_PER_KEY * SnapLimits.MOST_OF_CELL01;
    }
}
