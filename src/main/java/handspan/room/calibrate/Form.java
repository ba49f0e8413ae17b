package handspan.room.calibrate;

import handspan.instrument.sensor.InfraredLaw;
import handspan.instrument.sensor.SensorKind;
import handspan.number.fit.Covariance;
import handspan.number.fit.CurveFit;
import handspan.number.fit.CurveModel;
import handspan.number.fit.MonotoneCurve;
import handspan.number.fit.PolynomialFit;
import handspan.room.FitQuality;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.budget.PitchBudget;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A form that a response can have, fitted to ruler holds by weighted least squares. */
sealed interface Form {
    /** Standard uncertainty in mm at a distance in mm. */
    interface Uncertainty {
        double at(double mm);
    }

    /**
     * A fitted form.
     *
     * @param response from the sensor to mm
     * @param uncertainty of it
     * @param widened by what factor, because the holds scatter more than their own uncertainties explain; 1 = not
     * @param coefficients what was fitted, with standard uncertainties; empty for a curve through the holds
     */
    record Made(
            Response response, Uncertainty uncertainty, double widened, List<FitQuality.Coefficient> coefficients) {}

    /** Coefficients with their uncertainties, widened. */
    static List<FitQuality.Coefficient> named(
            List<String> names, List<Double> values, Covariance covariance, double widened) {
        return IntStream.range(0, names.size())
                .mapToObj(i -> new FitQuality.Coefficient(
                        names.get(i), values.get(i), widened * covariance.standardUncertainty(i)))
                .toList();
    }

    /** Its name in words. */
    String name();

    /** How many parameters it takes from a number of holds. */
    int parameters(int holds);

    /** Fits it; empty when these holds can't carry it, or it would turn back. */
    Optional<Made> fit(List<Hold> holds);

    /** A straight line (degree 1) or a parabola (degree 2) of a sensor that measures a length. */
    record Polynomial(int degree, SensorKind kind) implements Form {
        private static final List<String> NAMES = List.of("c0 mm", "c1 mm/mm", "c2 mm/mm^2");

        @Override
        public String name() {
            return degree == 1 ? "straight line" : "parabola";
        }

        @Override
        public int parameters(int holds) {
            return degree + 1;
        }

        @Override
        public Optional<Made> fit(List<Hold> holds) {
            if (holds.size() < degree + 1) {
                return Optional.empty();
            }
            double[] x = Holds.physical(holds);
            double[] u = holds.stream()
                    .mapToDouble(hold -> RulerFit.holdMm(hold, kind, 1))
                    .toArray();
            PolynomialFit fit = PolynomialFit.of(x, Holds.rulerMm(holds), u, degree);
            List<Double> c = fit.coefficients();
            try {
                Response.Parabola response =
                        new Response.Parabola(c.get(0), c.get(1), degree == 2 ? c.get(2) : 0, x[0], x[x.length - 1]);
                // more scatter than the uncertainties explain widens them (JCGM 100:2008 leaves this to judgement)
                double widened = Math.max(1, fit.misfit().scatter().orElse(1));
                return Optional.of(new Made(
                        response,
                        mm -> widened * fit.at(response.physical(mm)).standardUncertainty(),
                        widened,
                        named(NAMES.subList(0, degree + 1), c, fit.covariance(), widened)));
            } catch (IllegalArgumentException e) {
                return Optional.empty();
            }
        }
    }

    /** The triangulation law {@code V = a + b / (d + k)}, fitted in volts. */
    record Infrared(InfraredLaw start) implements Form {
        private static final int PARAMETERS = 3;
        private static final List<String> NAMES = List.of("a V", "b V mm", "k mm");

        @Override
        public String name() {
            return "triangulation law";
        }

        @Override
        public int parameters(int holds) {
            return PARAMETERS;
        }

        @Override
        public Optional<Made> fit(List<Hold> holds) {
            if (holds.size() < PARAMETERS) {
                return Optional.empty();
            }
            double[] mm = Holds.rulerMm(holds);
            double[] u = new double[mm.length];
            for (int i = 0; i < u.length; i++) {
                double voltsPerMm = 1 / start.mmPerVolt(mm[i]);
                double placeMm = RulerFit.holdMm(holds.get(i), SensorKind.INFRARED, 0);
                u[i] = Math.hypot(
                        holds.get(i).standardUncertainty(),
                        voltsPerMm * Math.hypot(placeMm, PitchBudget.INFRARED_FITTED_MM));
            }
            Optional<CurveFit.Fitted> found = CurveFit.of(
                            LAW,
                            new double[] {start.aVolts(), start.bVoltMm(), start.kMm()},
                            mm,
                            Holds.physical(holds),
                            u)
                    .fitted()
                    .filter(CurveFit.Fitted::converged);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            CurveFit.Fitted fit = found.get();
            double b = fit.parameters().get(1);
            double k = fit.parameters().get(2);
            if (!(b > 0) || mm[0] + k <= 0) {
                return Optional.empty();
            }
            Response.Triangulation response =
                    new Response.Triangulation(fit.parameters().get(0), b, k);
            double widened = Math.max(1, fit.misfit().scatter().orElse(1));
            return Optional.of(new Made(
                    response,
                    at -> widened * fit.at(at).standardUncertainty() * Math.pow(at + k, 2) / b,
                    widened,
                    named(NAMES, fit.parameters(), fit.covariance(), widened)));
        }

        private static final CurveModel LAW = (d, p) -> p[0] + p[1] / (d + p[2]);
    }

    /** A monotone curve through all holds. */
    record Monotone(SensorKind kind) implements Form {
        @Override
        public String name() {
            return "monotone curve";
        }

        @Override
        public int parameters(int holds) {
            return holds;
        }

        @Override
        public Optional<Made> fit(List<Hold> holds) {
            try {
                Response.Curve curve = new Response.Curve(holds.stream()
                        .map(hold -> new MonotoneCurve.Point(
                                hold.physical(), hold.mm().orElseThrow()))
                        .toList());
                return Optional.of(new Made(curve, mm -> between(holds, curve, mm), 1, List.of()));
            } catch (IllegalArgumentException e) {
                return Optional.empty();
            }
        }

        /** From the two holds around a distance; what the curve may miss between them is not in it. */
        private double between(List<Hold> holds, Response.Curve curve, double mm) {
            int right = 1;
            while (right < holds.size() - 1 && holds.get(right).mm().orElseThrow() < mm) {
                right++;
            }
            double from = holds.get(right - 1).mm().orElseThrow();
            double to = holds.get(right).mm().orElseThrow();
            double share = Math.max(0, Math.min(1, (mm - from) / (to - from)));
            return Math.hypot(
                    (1 - share) * holdMm(holds.get(right - 1), curve), share * holdMm(holds.get(right), curve));
        }

        private double holdMm(Hold hold, Response.Curve curve) {
            return RulerFit.holdMm(hold, kind, HandFit.slope(curve, hold.physical()));
        }
    }
}
