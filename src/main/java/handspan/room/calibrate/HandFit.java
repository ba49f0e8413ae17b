package handspan.room.calibrate;

import handspan.hand.smooth.SensorNoise;
import handspan.instrument.sensor.SensorKind;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import java.util.List;
import java.util.Optional;

/**
 * One hand fitted, or why not.
 *
 * @param setup empty when refused
 * @param byEar where notes were heard, when they were asked for
 * @param reasons why not; empty when there is a setup
 */
record HandFit(Optional<HandSetup> setup, Optional<Outcome.ByEar> byEar, List<String> reasons) {
    HandFit {
        reasons = List.copyOf(reasons);
    }

    /** A hand made from holds, which also tell its sensor's step. */
    static HandFit of(HandSetup setup, List<Hold> holds) {
        return new HandFit(Optional.of(inSteps(setup, holds)), Optional.empty(), List.of());
    }

    /** The same with what was heard. */
    static HandFit of(HandSetup setup, List<Hold> holds, Outcome.ByEar byEar) {
        return new HandFit(Optional.of(inSteps(setup, holds)), Optional.of(byEar), List.of());
    }

    private static HandSetup inSteps(HandSetup setup, List<Hold> holds) {
        double stepMm = holds.stream()
                .mapToDouble(hold -> hold.step() * slope(setup.response(), hold.physical()))
                .max()
                .orElse(0);
        return setup.inSteps(stepMm);
    }

    static HandFit no(String reason) {
        return no(List.of(reason));
    }

    static HandFit no(List<String> reasons) {
        return new HandFit(Optional.empty(), Optional.empty(), reasons);
    }

    /** Why a zone can't be played; empty when it can. */
    static Optional<String> zoneRefusal(HandRole hand, SensorKind kind, double fromMm, double toMm) {
        if (toMm - fromMm < Fit.LEAST_ZONE_MM) {
            return Optional.of(hand.word() + ": near and far lie only " + mm(toMm - fromMm) + " apart (at least "
                    + mm(Fit.LEAST_ZONE_MM) + "): hold further apart");
        }
        boolean garblesNear = kind.isLength() || kind == SensorKind.INFRARED;
        if (garblesNear && fromMm < Fit.LEAST_NEAR_MM) {
            return Optional.of(hand.word() + ": the near hold at " + mm(fromMm)
                    + " is too near to the sensor (at least " + mm(Fit.LEAST_NEAR_MM) + "): hold further away");
        }
        return Optional.empty();
    }

    /** Millimetres for a unit of the physical value, by a small central difference. */
    static double slope(Response response, double physical) {
        double step = 1e-4 * Math.max(1, Math.abs(physical));
        return Math.abs(response.mm(physical + step) - response.mm(physical - step)) / (2 * step);
    }

    /** Fast noise of a reading along the distance, from some holds. */
    static SensorNoise noise(List<Hold> holds, Response response) {
        return new SensorNoise(holds.stream()
                .map(hold -> new SensorNoise.Point(
                        response.mm(hold.physical()), hold.noise() * slope(response, hold.physical())))
                .toList());
    }

    static String mm(double value) {
        return Figures.text(value, 0) + " mm";
    }
}
