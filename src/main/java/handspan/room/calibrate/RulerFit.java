package handspan.room.calibrate;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.number.fit.MonotoneCurve;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.StepKind;
import handspan.room.Zone;
import handspan.room.budget.PitchBudget;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * From ruler holds to a response. Several forms are tried: the sensor's law (a straight line or a parabola for lengths,
 * the triangulation law for infrared) and a monotone curve through all holds.
 *
 * <p>The rule: each inner hold is left out in turn and foretold by the others; the form with the smallest rms error of
 * foretelling is taken. A form with more parameters has to be better by a tenth; what can't be foretold with (too few
 * holds) is taken only when nothing else is there.
 */
final class RulerFit {
    /** A form with more parameters must foretell better by this. */
    private static final double BETTER = 0.9;

    /** And by this, mm: less is nothing that a sensor could show. */
    private static final double NOTICED_MM = 0.05;

    private RulerFit() {}

    /**
     * A pitch hand from ruler holds.
     *
     * @param channel of the pitch hand
     * @param sensor it
     * @param unsorted holds, each with its ruler distance
     */
    static HandFit of(ChannelSpec channel, Sensor sensor, List<Hold> unsorted) {
        List<Hold> holds = sorted(unsorted);
        int fewest = CalibrationPlan.fewestPlaces(channel);
        if (holds.size() < fewest) {
            return HandFit.no("pitch: only " + holds.size() + " ruler holds (at least " + fewest + ")");
        }
        if (channel.kind() == SensorKind.INFRARED) {
            Optional<String> fold = Folds.between(channel.infraredPart(), holds);
            if (fold.isPresent()) {
                return HandFit.no("pitch: " + fold.get());
            }
        }
        List<String> contradictions = new Contradictions(holds, sensor).found();
        if (!contradictions.isEmpty()) {
            return HandFit.no(contradictions.stream()
                    .map(contradiction -> "pitch: " + contradiction)
                    .toList());
        }
        Optional<Fitted> fitted = of(holds, channel, sensor);
        if (fitted.isEmpty()) {
            return HandFit.no("pitch: no response fits the ruler holds: take them again");
        }
        Response response = fitted.get().response();
        FitQuality quality = fitted.get().quality();
        double from = holds.get(0).mm().orElseThrow();
        double to = holds.get(holds.size() - 1).mm().orElseThrow();
        Optional<String> refusal = HandFit.zoneRefusal(HandRole.PITCH, channel.kind(), from, to);
        if (refusal.isPresent()) {
            return HandFit.no(refusal.get());
        }
        Zone zone = new Zone(from, to, quality.uncertaintyMm(from), quality.uncertaintyMm(to));
        return HandFit.of(
                new HandSetup(channel, response, zone, HandFit.noise(holds, response), false, 0, quality), holds);
    }

    /**
     * A fitted response.
     *
     * @param response from the sensor to mm
     * @param quality how well
     */
    record Fitted(Response response, FitQuality quality) {}

    /**
     * Fits.
     *
     * @param holds 3..9, each with its ruler distance, rising in it, without contradictions
     * @param channel of the sensor
     * @param sensor it
     * @return empty when no form fits
     */
    static Optional<Fitted> of(List<Hold> holds, ChannelSpec channel, Sensor sensor) {
        SensorKind kind = channel.kind();
        List<Form> forms = new ArrayList<>();
        if (sensor.isLength()) {
            forms.add(new Form.Polynomial(1, kind));
            forms.add(new Form.Polynomial(2, kind));
        } else if (kind == SensorKind.INFRARED) {
            forms.add(new Form.Infrared(channel.infraredPart().law()));
        }
        forms.add(new Form.Monotone(kind));
        Form best = null;
        double bestLeftOut = Double.POSITIVE_INFINITY;
        for (Form form : forms) {
            if (form.fit(holds).isEmpty()) {
                continue;
            }
            double leftOut = leftOutMm(form, holds);
            if (best == null || leftOut < BETTER * bestLeftOut - NOTICED_MM) {
                best = form;
                bestLeftOut = leftOut;
            }
        }
        if (best == null) {
            return Optional.empty();
        }
        Form chosen = best;
        double leftOutMm = Double.isFinite(bestLeftOut) ? bestLeftOut : 0;
        return chosen.fit(holds).map(made -> new Fitted(made.response(), quality(chosen, made, holds, leftOutMm)));
    }

    /** Rms error, mm, of foretelling each inner hold; infinite where the form can't be fitted to one hold less. */
    private static double leftOutMm(Form form, List<Hold> holds) {
        double sum = 0;
        for (int i = 1; i < holds.size() - 1; i++) {
            List<Hold> others = new ArrayList<>(holds);
            Hold left = others.remove(i);
            Optional<Form.Made> made = form.fit(others);
            if (made.isEmpty()) {
                return Double.POSITIVE_INFINITY;
            }
            double error = made.get().response().mm(left.physical()) - left.mm().orElseThrow();
            sum += error * error;
        }
        return Math.sqrt(sum / (holds.size() - 2));
    }

    private static FitQuality quality(Form form, Form.Made made, List<Hold> holds, double leftOutMm) {
        List<MonotoneCurve.Point> residuals = new ArrayList<>();
        double sum = 0;
        for (Hold hold : holds) {
            double ruler = hold.mm().orElseThrow();
            double residual = made.response().mm(hold.physical()) - ruler;
            residuals.add(new MonotoneCurve.Point(ruler, residual));
            sum += residual * residual;
        }
        int free = holds.size() - form.parameters(holds.size());
        double from = holds.get(0).mm().orElseThrow();
        double to = holds.get(holds.size() - 1).mm().orElseThrow();
        return new FitQuality(
                form.name(),
                form.parameters(holds.size()),
                residuals,
                Math.sqrt(sum / Math.max(1, free)),
                leftOutMm,
                made.widened(),
                FitQuality.along(from, to, made.uncertainty()::at),
                made.coefficients());
    }

    /** Standard uncertainty of a hold's place in mm: its own, the hand's slow wander, the sensor's slow drift. */
    static double holdMm(Hold hold, SensorKind kind, double mmPerPhysical) {
        double handMm = hold.kind() == StepKind.RULER ? PitchBudget.HAND_BY_RULER_MM : PitchBudget.HAND_MM;
        return Math.hypot(hold.standardUncertainty() * mmPerPhysical, Math.hypot(handMm, PitchBudget.driftMm(kind)));
    }

    /** Ruler holds in the order of their distances. */
    static List<Hold> sorted(List<Hold> holds) {
        return holds.stream()
                .sorted(Comparator.comparingDouble(hold -> hold.mm().orElseThrow()))
                .toList();
    }
}
