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
