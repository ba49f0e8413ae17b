package handspan.room.calibrate;

import handspan.number.units.Figures;
import handspan.room.Aim;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.StepKind;
import java.util.List;
import java.util.Optional;

/**
 * A player's aim from unaided reaches for places that were held before.
 *
 * <p>Each reach i ended {@code e_i = d(x_i) - d(p_i)} mm beyond its place, d the room's response, x_i the reading where
 * the hand stopped and p_i that of the hold at the place: so the response's own error cancels. Their mean square holds
 * more than the aim: the reading's uncertainty u(x_i), and that of the place, u(p_i), which is the hold's own, what the
 * hand wandered while it was held, and what the sensor drifts until then. Both are independent of the reach, so
 *
 * <p>{@code aim^2 = (1/n) sum(e_i^2 - u(x_i)^2 - u(p_i)^2)}.
 *
 * <p>Nothing is taken off for a mean: to reach too far each time is an error as well. So all n squares are free, and
 * with {@code q^2 = (1/n) sum e_i^2} of normal values {@code u(q) / q = 1 / sqrt(2 n)} (JCGM 100:2008, E.4.3, with n
 * degrees of freedom in the place of n - 1), which comes to {@code u(aim) = q^2 / (aim sqrt(2 n))}.
 *
 * <p>Where notes are looked for on a finished map, the place is where the map has the note: then u(p) is 0, for what
 * the map itself is off is heard and learned along with it.
 *
 * @param aim the rms error, at least {@value #LEAST_MM} mm
 * @param standardUncertaintyMm of it, mm
 * @param meanMm how far beyond its place a reach ended on average, mm; below 0 it fell short
 * @param squareMm2 {@code aim^2} before it is held to what an aim can be, mm^2; may be below 0
 */
public record AimFit(Aim aim, double standardUncertaintyMm, double meanMm, double squareMm2) {
    /** Fewest reaches that tell an aim: by five it is known to a third (this project's own choice). */
    public static final int FEWEST = 5;

    /** No aim is smaller than what a held hand wanders anyway, mm (this project's own choice). */
    public static final double LEAST_MM = 0.5;

    private static final double MOST_MM = 100;

    /**
     * How far a reach ended from its place.
     *
     * @param offMm beyond the place; below 0 it fell short
     * @param explainedMm2 what of the square is not the hand's: variance of reading and place, mm^2
     */
    public record Miss(double offMm, double explainedMm2) {
        /** Checks that the figures are numbers. */
        public Miss {
            if (!Double.isFinite(offMm) || !(explainedMm2 >= 0) || !Double.isFinite(explainedMm2)) {
                throw new IllegalArgumentException("miss of " + offMm + " mm, explained " + explainedMm2
                        + " mm^2 (numbers, the latter 0 or more)");
            }
        }
    }

    /** Checks that the figures are numbers. */
    public AimFit {
        if (!(standardUncertaintyMm >= 0) || !Double.isFinite(standardUncertaintyMm + meanMm + squareMm2)) {
            throw new IllegalArgumentException("aim with uncertainty " + standardUncertaintyMm + " mm, mean " + meanMm
                    + " mm, square " + squareMm2 + " mm^2 (numbers, the uncertainty 0 or more)");
        }
    }

    /**
     * The aim that a room's holds tell.
     *
     * @return empty when fewer than {@value #FEWEST} reaches have a place that was held
     */
    public static Optional<AimFit> of(Room room) {
        HandSetup pitch = room.pitch();
        List<Hold> reaches = room.holds().stream()
                .filter(hold ->
                        hold.kind() == StepKind.AIM && place(hold, room.holds()).isPresent())
                .toList();
        return of(reaches.stream()
                .map(reach -> miss(reach, place(reach, room.holds()).orElseThrow(), pitch))
                .toList());
    }

    private static Miss miss(Hold reach, Hold place, HandSetup pitch) {
        double offMm = pitch.response().mm(reach.physical()) - pitch.response().mm(place.physical());
        double ofReach = reach.standardUncertainty() * HandFit.slope(pitch.response(), reach.physical());
        double ofPlace =
                RulerFit.holdMm(place, pitch.channel().kind(), HandFit.slope(pitch.response(), place.physical()));
        return new Miss(offMm, ofReach * ofReach + ofPlace * ofPlace);
    }

    /**
     * The aim that misses tell.
     *
     * @return empty when they are fewer than {@value #FEWEST}
     */
    public static Optional<AimFit> of(List<Miss> misses) {
        int n = misses.size();
        if (n < FEWEST) {
            return Optional.empty();
        }
        double sum = 0;
        double squares = 0;
        double explained = 0;
        for (Miss miss : misses) {
            sum += miss.offMm();
            squares += miss.offMm() * miss.offMm();
            explained += miss.explainedMm2();
        }
        double square = (squares - explained) / n;
        double mm = Math.min(MOST_MM, Math.max(LEAST_MM, Math.sqrt(Math.max(0, square))));
        return Optional.of(new AimFit(new Aim(mm, n), squares / n / (mm * Math.sqrt(2.0 * n)), sum / n, square));
    }

    private static Optional<Hold> place(Hold reach, List<Hold> holds) {
        return reach.target().flatMap(kind -> ReachJudge.held(holds, kind, reach.mm(), reach.key()));
    }

    /** In words, with the unit. */
    public String words() {
        boolean tiny = squareMm2 < LEAST_MM * LEAST_MM;
        String mean = Figures.text(Math.abs(meanMm), 1);
        return (tiny ? "at most " : "") + Figures.text(aim.mm(), 1) + " mm rms over " + aim.reaches()
                + " reaches (standard uncertainty "
                + Figures.text(standardUncertaintyMm, 1) + " mm; on average "
                + (Double.parseDouble(mean) == 0
                        ? "neither short nor too far"
                        : "you reach " + mean + " mm too " + (meanMm > 0 ? "far" : "near"))
                + ")";
    }
}
