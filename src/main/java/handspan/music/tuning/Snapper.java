package handspan.music.tuning;

/**
 * Draws pitch to the notes of a scale. Decides at readings, sounds at ticks. With {@link Snap#STEPS} a note is left
 * only when the pitch has gone past its boundary by the hysteresis. Owned by one thread.
 */
public final class Snapper {
    private final Snap snap;
    private final ScaleLadder ladder;
    private final double hysteresisKeys;
    private int note = -1;

    /**
     * A snapper.
     *
     * @param snap how
     * @param ladder the notes
     * @param hysteresisCents half-width of the band around each boundary, 0 or more
     */
    public Snapper(Snap snap, ScaleLadder ladder, double hysteresisCents) {
        this.snap = snap;
        this.ladder = ladder;
        this.hysteresisKeys = hysteresisCents / ReferencePitch.CENTS_PER_KEY;
    }

    /** Takes the pitch of a reading and chooses the note. */
    public void onReading(double key) {
        boolean stays = note >= 0
                && key <= ladder.upperBoundary(note) + hysteresisKeys
                && key >= ladder.lowerBoundary(note) - hysteresisKeys;
        if (!stays) {
            note = ladder.nearest(key);
        }
    }

    /** The pitch that sounds for a pitch between readings. */
    public double sounding(double key) {
        return snap == Snap.STEPS && note >= 0 ? ladder.key(note) : key;
    }

    /** Forgets the note; the next reading chooses afresh. */
    public void reset() {
        note = -1;
    }

    /**
     * Half-width of the hysteresis at which a hand resting exactly on a boundary switches less than once a minute.
     *
     * <p>Rice's formula {@code nu = (1 / 2 pi) (sv / sx) exp(-h^2 / (2 sx^2))} solved for h, with sv the rms finite
     * difference of the smoothed pitch times the rate of decisions. Source: S. O. Rice, Mathematical analysis of random
     * noise, Bell Syst. Tech. J. 23-24 (1944-45), sections 3.3 and 3.4. For a one-pole of share a over white noise the
     * finite difference is {@code sx sqrt(2 a)} (closed form).
     *
     * @param jitterCents wobble of a still hand after smoothing, rms
     * @param share01 share of the one-pole
     * @param ratePerS decisions a second
     * @return cents
     */
    public static double hysteresisCents(double jitterCents, double share01, double ratePerS) {
        double perSecond = 1.0 / 60;
        double crossings = Math.sqrt(2 * share01) * ratePerS / (2 * Math.PI);
        return crossings <= perSecond ? 0 : jitterCents * Math.sqrt(2 * Math.log(crossings / perSecond));
    }
}
