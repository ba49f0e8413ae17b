package handspan.outside.simulate;

import handspan.number.units.Nanos;

/** One stretch of a hand's planned way: where the hand is meant to be, for every time from the stretch's start on. */
sealed interface Motion {
    /** Distance above the sensor in mm. */
    double mm(long timeNanos);

    /** The hand stays where it is. */
    record Hold(double placeMm) implements Motion {
        @Override
        public double mm(long timeNanos) {
            return placeMm;
        }
    }

    /**
     * Minimum-jerk move to a place, then rest there.
     *
     * <p>From rest: {@code x = x0 + (x1-x0)(10 s^3 - 15 s^4 + 6 s^5)} with s = 0..1 the share of the time gone. Source:
     * T. Flash, N. Hogan, The coordination of arm movements, J. Neurosci. 5 (1985) 1688-1703. A move that begins while
     * the hand is under way uses the same fifth-order polynomial with the velocity and acceleration of that moment as
     * its start conditions, which is the minimum-jerk solution for them; so the hand's speed never jumps.
     *
     * @param from state of the hand at the start
     * @param toMm goal, reached with velocity and acceleration 0
     */
    record MinimumJerk(long startNanos, double seconds, State from, double toMm) implements Motion {
        @Override
        public double mm(long timeNanos) {
            double s = share01(timeNanos - startNanos, seconds);
            if (s >= 1) {
                return toMm;
            }
            double way = toMm - from.mm();
            double v = from.mmPerS() * seconds;
            double a = from.mmPerS2() * seconds * seconds;
            double c3 = 10 * way - 6 * v - 1.5 * a;
            double c4 = -15 * way + 8 * v + 1.5 * a;
            double c5 = 6 * way - 3 * v - 0.5 * a;
            return from.mm() + s * (v + s * (a / 2 + s * (c3 + s * (c4 + s * c5))));
        }
    }

    /**
     * Sinusoidal motion about a centre that swells in and dies away smoothly and ends at the centre.
     *
     * @param fromMm where the hand is at the start; it is led to the centre while the swing grows
     */
    record Sway(long startNanos, double seconds, double fromMm, double centreMm, double amplitudeMm, double hz)
            implements Motion {
        /** Time for the swing to grow and to die, unless the whole is shorter. */
        private static final double RAMP_SECONDS = 0.25;

        @Override
        public double mm(long timeNanos) {
            double gone = Math.max(0, Nanos.toSeconds(timeNanos - startNanos));
            if (gone >= seconds) {
                return centreMm;
            }
            double ramp = Math.min(RAMP_SECONDS, seconds / 2);
            double in = eased01(gone / ramp);
            double out = eased01((seconds - gone) / ramp);
            return centreMm
                    + (fromMm - centreMm) * (1 - in)
                    + amplitudeMm * in * out * Math.sin(2 * Math.PI * hz * gone);
        }
    }

    /** Place, velocity and acceleration at one moment. */
    record State(double mm, double mmPerS, double mmPerS2) {
        private static final long STEP_NANOS = Nanos.PER_MS;

        /** State of a motion, by central differences over 2 ms. */
        static State of(Motion motion, long timeNanos) {
            double before = motion.mm(timeNanos - STEP_NANOS);
            double now = motion.mm(timeNanos);
            double after = motion.mm(timeNanos + STEP_NANOS);
            double h = Nanos.toSeconds(STEP_NANOS);
            return new State(now, (after - before) / (2 * h), (after - 2 * now + before) / (h * h));
        }
    }

    private static double share01(long goneNanos, double seconds) {
        return Math.max(0, Math.min(1, Nanos.toSeconds(goneNanos) / seconds));
    }

    private static double eased01(double share) {
        double s = Math.max(0, Math.min(1, share));
        return s * s * s * (10 + s * (-15 + 6 * s));
    }
}
