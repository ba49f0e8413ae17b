package handspan.room;

import handspan.number.fit.MonotoneCurve;
import java.util.List;

/** From a sensor's physical value to the hand's distance in mm, as captured in the room. Immutable. */
public sealed interface Response {
    /** Distance of the hand in mm. */
    double mm(double physical);

    /** Physical value at a distance: the inverse of {@link #mm}. */
    double physical(double mm);

    /** The sensor's own mm are taken as they are. */
    record AsMeasured() implements Response {
        @Override
        public double mm(double physical) {
            return physical;
        }

        @Override
        public double physical(double mm) {
            return mm;
        }
    }

    /**
     * A parabola {@code mm = c0 + c1 x + c2 x^2} of the physical value between two ends, going on straight beyond them:
     * a sensor with an offset, a scale and a bend of its own. A straight line where {@code c2} is 0.
     *
     * @param c0 mm
     * @param c1 mm for a unit of the physical value
     * @param c2 mm for the square of a unit
     * @param fromPhysical lower end of what was captured
     * @param toPhysical upper end
     */
    record Parabola(double c0, double c1, double c2, double fromPhysical, double toPhysical) implements Response {
        /** Checks that it rises from end to end. */
        public Parabola {
            boolean numbers = Double.isFinite(c0 + c1 + c2) && Double.isFinite(toPhysical - fromPhysical);
            if (!numbers || !(toPhysical > fromPhysical)) {
                throw new IllegalArgumentException("response parabola " + c0 + ", " + c1 + ", " + c2 + " from "
                        + fromPhysical + " to " + toPhysical + " (numbers, the upper end above the lower)");
            }
            if (!(c1 + 2 * c2 * fromPhysical > 0 && c1 + 2 * c2 * toPhysical > 0)) {
                throw new IllegalArgumentException("response parabola " + c0 + ", " + c1 + ", " + c2
                        + ": mm must rise with the physical value from end to end");
            }
        }

        @Override
        public double mm(double physical) {
            if (physical < fromPhysical) {
                return inside(fromPhysical) + slope(fromPhysical) * (physical - fromPhysical);
            }
            if (physical > toPhysical) {
                return inside(toPhysical) + slope(toPhysical) * (physical - toPhysical);
            }
            return inside(physical);
        }

        private double inside(double x) {
            return c0 + x * (c1 + x * c2);
        }

        private double slope(double x) {
            return c1 + 2 * c2 * x;
        }

        @Override
        public double physical(double mm) {
            double low = inside(fromPhysical);
            double high = inside(toPhysical);
            if (mm <= low) {
                return fromPhysical + (mm - low) / slope(fromPhysical);
            }
            if (mm >= high) {
                return toPhysical + (mm - high) / slope(toPhysical);
            }
            if (c2 == 0) {
                return (mm - c0) / c1;
            }
            // the root that lies on the rising side, in the form that does not cancel
            double root = Math.sqrt(c1 * c1 - 4 * c2 * (c0 - mm));
            return 2 * (mm - c0) / (c1 + root);
        }
    }

    /**
     * Infrared triangulation beyond its peak: {@code V = a + b / (d + k)}, so {@code d = b / (V - a) - k}. At or below
     * {@code a} nothing is in sight: the distance is held at {@value #FARTHEST_MM} mm.
     *
     * @param aVolts output at a great distance
     * @param bVoltMm how fast it falls, above 0
     * @param kMm how far before the sensor's face the law begins
     */
    record Triangulation(double aVolts, double bVoltMm, double kMm) implements Response {
        /** What stands for "very far". */
        public static final double FARTHEST_MM = 5000;

        /** Checks the figures. */
        public Triangulation {
            if (!Double.isFinite(aVolts + kMm) || !(bVoltMm > 0) || !Double.isFinite(bVoltMm)) {
                throw new IllegalArgumentException("response law V = " + aVolts + " + " + bVoltMm + " / (d + " + kMm
                        + ") (numbers, the second above 0)");
            }
        }

        @Override
        public double mm(double physical) {
            double distance = physical <= aVolts ? FARTHEST_MM : bVoltMm / (physical - aVolts) - kMm;
            return Math.min(FARTHEST_MM, distance);
        }

        @Override
        public double physical(double mm) {
            return aVolts + bVoltMm / (mm + kMm);
        }
    }

    /** A monotone curve through points of physical value (x) and mm (y). */
    final class Curve implements Response {
        private final List<MonotoneCurve.Point> points;
        private final MonotoneCurve curve;

        /**
         * A curve.
         *
         * @param points at least 2, both coordinates strictly monotone
         */
        public Curve(List<MonotoneCurve.Point> points) {
            this.points = List.copyOf(points);
            this.curve = MonotoneCurve.through(points);
            if (!curve.isInvertible()) {
                throw new IllegalArgumentException("response points " + points + ": mm must run one way");
            }
        }

        /** The points it runs through. */
        public List<MonotoneCurve.Point> points() {
            return points;
        }

        @Override
        public double mm(double physical) {
            return curve.at(physical);
        }

        @Override
        public double physical(double mm) {
            return curve.inverse(mm);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Curve that && points.equals(that.points);
        }

        @Override
        public int hashCode() {
            return points.hashCode();
        }
    }
}
