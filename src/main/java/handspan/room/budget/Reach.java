package handspan.room.budget;

import handspan.hand.smooth.Quickness;
import handspan.hand.smooth.SmoothSettings;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ReferencePitch;
import handspan.number.fit.MonotoneCurve;
import handspan.room.Aim;
import handspan.room.FitQuality;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.List;

/**
 * What a reach for a note meets: the hand's sensor and zone, and the player. Changed one thing at a time, it tells what
 * would help.
 *
 * @param hand the pitch hand
 * @param ratePerS readings a second
 * @param aim of the player
 */
record Reach(HandSetup hand, double ratePerS, Aim aim) {
    static Reach in(Room room, Aim aim) {
        return new Reach(room.pitch(), room.ratePerS(), aim);
    }

    /** The smoothing along a curve, which is the same for all its notes. */
    SmoothSettings smoothing(PitchCurve curve, Quickness quickness) {
        return PitchSmoothing.of(hand, ratePerS, Math.max(centsPerMm(curve, 0), centsPerMm(curve, 1)), quickness);
    }

    /**
     * Standard deviation of where a reach ends, as the map sees it: {@code s^2 = noise^2 + map^2 + aim^2}, the noise
     * after smoothing, the map's uncertainty that of {@link PitchBudget}; independent, so summed in squares.
     *
     * @param smoothing of {@link #smoothing}
     * @param place01 0 = near end, 1 = far end
     * @return mm
     */
    double spreadMm(SmoothSettings smoothing, PitchCurve curve, double place01) {
        double centsPerMm = centsPerMm(curve, place01);
        double mapMm = PitchBudget.at(hand, place01, centsPerMm).standardCents() / centsPerMm;
        return Math.hypot(Math.hypot(smoothing.jitterMm(hand.zone().mm(place01)), mapMm), aim.mm());
    }

    private double centsPerMm(PitchCurve curve, double place01) {
        return ReferencePitch.CENTS_PER_KEY
                * curve.steepness(place01)
                / hand.zone().lengthMm();
    }

    /** By a player who reaches otherwise. */
    Reach by(Aim other) {
        return new Reach(hand, ratePerS, other);
    }

    /** With a sensor whose noise and step are this many times as large. */
    Reach withNoiseTimes(double factor) {
        return with(hand.with(hand.noise().times(factor)).inSteps(hand.stepMm() * factor));
    }

    /** Over a zone that is this many times as long, calibrated as well as before. */
    Reach withZoneTimes(double factor) {
        Zone zone = hand.zone();
        Zone longer = new Zone(
                zone.nearMm(),
                zone.nearMm() + factor * zone.lengthMm(),
                zone.nearUncertaintyMm(),
                zone.farUncertaintyMm());
        FitQuality fit = hand.fit();
        HandSetup over = hand.with(hand.response(), longer);
        if (fit == null || !fit.spans(zone)) {
            return with(over);
        }
        return with(fitted(
                over,
                fit,
                FitQuality.along(
                        longer.nearMm(), longer.farMm(), mm -> fit.uncertaintyMm(zone.mm(longer.place01(mm))))));
    }

    private Reach with(HandSetup other) {
        return new Reach(other, ratePerS, aim);
    }

    private static HandSetup fitted(HandSetup hand, FitQuality fit, List<MonotoneCurve.Point> uncertainty) {
        return hand.with(new FitQuality(
                fit.method(),
                fit.parameters(),
                fit.residuals(),
                fit.rmsMm(),
                fit.leftOutMm(),
                fit.widened(),
                uncertainty));
    }

    /** Whether the zone is already known by ruler holds over its whole length. */
    boolean isByRuler() {
        FitQuality fit = hand.fit();
        return fit != null && fit.spans(hand.zone());
    }

    /**
     * As if five holds by ruler, evenly spread from end to end, had been fitted by a parabola (assumed: each hold
     * uncertain by how still a hand is held at a ruler, {@link PitchBudget#HAND_BY_RULER_MM}, and nothing else). Of
     * least squares with orthogonal polynomials at t = -2..2 the variance is {@code (1/5 + t^2/10 + (t^2 - 2)^2 / 14)}
     * of that of a hold.
     */
    Reach byFiveRulerHolds() {
        Zone zone = hand.zone();
        FitQuality fit =
                new FitQuality("parabola", 3, List.of(), 0, 0, 1, FitQuality.along(zone.nearMm(), zone.farMm(), mm -> {
                    double t = 4 * zone.place01(mm) - 2;
                    return PitchBudget.HAND_BY_RULER_MM
                            * Math.sqrt(1.0 / 5 + t * t / 10 + (t * t - 2) * (t * t - 2) / 14);
                }));
        return with(fitted(hand, fit, fit.uncertainty()));
    }
}
