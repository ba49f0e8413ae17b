package handspan.outside.simulate;

import handspan.number.units.Nanos;

/**
 * A lamp that is dimmed by being switched off for part of each period, as a photoresistor follows it: a first-order lag
 * of 25 ms, between the 20 ms it needs to grow and the 30 ms to fade (data sheet, part GL5528 at 10 lux).
 *
 * <p>Steady state of such a lag under a square wave, lit for the share D of the period T: it ends the lit part at
 * {@code x1 = (1 - exp(-D T/tau)) / (1 - exp(-T/tau))} and the dark part at {@code x1 exp(-(1-D) T/tau)}; its mean is
 * D.
 *
 * @param hz switching frequency, 1..10000 Hz; 100 or 120 Hz for a phase-cut dimmer on the mains
 * @param lit01 share of the period for which the lamp is lit, D, 0.02..1; 1 = not dimmed
 */
public record Dimmer(double hz, double lit01) {
    /** Lamps that are not dimmed. */
    public static final Dimmer NONE = new Dimmer(100, 1);

    private static final double LAG_SECONDS = 0.025;

    public Dimmer {
        Allowed.within("frequency of a dimmer", hz, 1, 10_000, "Hz");
        Allowed.within("lit share of a dimmed lamp", lit01, 0.02, 1, "of 1");
    }

    /** Light that the cell follows, as a factor on its mean. */
    double factor(long timeNanos) {
        if (lit01 == 1) {
            return 1;
        }
        double periods = 1 / (hz * LAG_SECONDS);
        double turn = Nanos.toSeconds(timeNanos) * hz;
        double share = turn - Math.floor(turn);
        double top = Math.expm1(-lit01 * periods) / Math.expm1(-periods);
        if (share >= lit01) {
            return top * Math.exp(-(share - lit01) * periods) / lit01;
        }
        double bottom = top * Math.exp(-(1 - lit01) * periods);
        return (1 - (1 - bottom) * Math.exp(-share * periods)) / lit01;
    }
}
