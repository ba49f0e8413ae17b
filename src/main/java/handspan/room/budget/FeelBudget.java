package handspan.room.budget;

import handspan.hand.smooth.SmoothSettings;
import handspan.hand.trial.Trial;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;

/**
 * How a tuning will feel in a room: how much a still hand wobbles, how far behind a moving one is. The smoothing is
 * tried out on simulated hands, with this room's noise and rate.
 *
 * @param settings of the smoothing
 * @param trial what came out
 * @param centsPerMm of the pitch curve where it is steepest
 * @param offers what would make a hand that wobbles too much steadier, in words; empty where it is steady
 */
public record FeelBudget(SmoothSettings settings, Trial trial, double centsPerMm, List<String> offers) {
    /** A small step, cents: arrives to four fifths. */
    private static final double STEP_CENTS = 10;

    /** A near end that is so much steadier is worth a word. */
    private static final double NEARER_IS_BETTER = 0.75;

    private static final double KEYS_PER_FIFTH = 7;

    private static final double USUAL_NEAR_MM = 100;
    private static final double USUAL_FAR_MM = 500;

    /** Copies the offers. */
    public FeelBudget {
        offers = List.copyOf(offers);
    }

    /** The feel of a tuning in a room. */
    public static FeelBudget of(Room room, Tuning tuning) {
        HandSetup hand = room.pitch();
        Zone zone = hand.zone();
        SmoothSettings settings = PitchSmoothing.of(room, tuning);
        double centsPerMm = tuning.centsPerMm(zone.lengthMm());
        Trial trial = Trial.of(
                settings, room.sensor(hand).measuringMs(), zone.nearMm(), zone.farMm(), STEP_CENTS / centsPerMm);
        return new FeelBudget(
                settings,
                trial,
                centsPerMm,
                settings.reachesTarget() ? List.of() : offers(room, tuning, settings, centsPerMm));
    }

    /**
     * The feel of a sensor that has not been calibrated yet, over the usual zone: two octaves in 400 mm, as noisy
     * everywhere as where it was surveyed.
     *
     * @param noiseMm of one reading, mm
     * @param ratePerS new values a second
     * @param measuringMs of the sensor
     */
    public static FeelBudget ofSensor(double noiseMm, double ratePerS, double measuringMs) {
        double centsPerMm = Tuning.usual().centsPerMm(USUAL_FAR_MM - USUAL_NEAR_MM);
        SmoothSettings settings = SmoothSettings.reaching(noiseMm, ratePerS, PitchSmoothing.TARGET_CENTS / centsPerMm);
        return new FeelBudget(
                settings,
                Trial.of(settings, measuringMs, USUAL_NEAR_MM, USUAL_FAR_MM, STEP_CENTS / centsPerMm),
                centsPerMm,
                List.of());
    }

    private static List<String> offers(Room room, Tuning tuning, SmoothSettings settings, double centsPerMm) {
        List<String> offers = new ArrayList<>();
        double keys = (tuning.highKey() - tuning.lowKey()) * settings.targetMm() / settings.jitterMm();
        if (keys >= KEYS_PER_FIFTH) {
            offers.add("a range of " + Figures.text(keys / 12, 1) + " octaves");
        }
        Zone zone = room.pitch().zone();
        double nearMm = settings.jitterMm(zone.nearMm());
        if (nearMm < NEARER_IS_BETTER * settings.jitterMm()) {
            offers.add("a nearer zone with " + Figures.text(nearMm * centsPerMm, 1) + " cents at its near end");
        }
        boolean stepping = tuning.snap() == Snap.STEPS;
        if (!stepping && StepsBudget.refusal(room, tuning.withSnap(Snap.STEPS)).isEmpty()) {
            offers.add("--snap steps");
        }
        return offers;
    }

    /** Wobble of a still hand at the worst place, cents rms. */
    public double jitterCents() {
        return settings.jitterMm() * centsPerMm;
    }

    /** Wobble that is aimed at, cents rms. */
    public double targetCents() {
        return settings.targetMm() * centsPerMm;
    }

    /** The rms error of a moving hand, lag and all, cents. */
    public double movingErrorCents() {
        return trial.movingErrorMm() * centsPerMm;
    }

    /** In a sentence. */
    public String words() {
        String still = "a still hand wobbles " + Figures.text(jitterCents(), 1) + " cents rms and is smoothed over "
                + Figures.text(settings.stillLagMs(), 0) + " ms";
        String honest = settings.reachesTarget()
                ? ""
                : " (" + Figures.text(targetCents(), 1) + " cents would cost "
                        + Figures.text(settings.lagForTargetMs(), 0) + " ms"
                        + (offers.isEmpty() ? "" : "; steadier with " + String.join(", ", offers)) + ")";
        return still + honest + "; a moving hand is followed " + follows();
    }

    private String follows() {
        long ms = Math.round(trial.movingLagMs());
        return ms > 0 ? ms + " ms behind its readings" : "without lag behind its readings";
    }
}
