package handspan.room.budget;

import handspan.hand.smooth.HandSmoother;
import handspan.hand.smooth.SmoothSettings;
import handspan.hand.trial.Eye;
import handspan.hand.trial.Feel;
import handspan.hand.trial.Gesture;
import handspan.hand.trial.Trace;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.Random;

/**
 * What is left of a vibrato of 25 cents either way, six times a second, when it is sent.
 *
 * @param kept01 share of its width
 * @param ratePerS readings a second
 */
public record VibratoBudget(double kept01, double ratePerS) {
    /** Rate of the vibrato, Hz. */
    public static final double HZ = 6;

    /** Half its width, cents. */
    public static final double CENTS = 25;

    /** With fewer readings a second it can't be sent well, whatever is done. */
    public static final double LEAST_RATE_PER_S = 30;

    /** Under half of its width it is as good as gone (this project's own choice). */
    private static final double LOST_01 = 0.5;

    private static final double TRIED_S = 31;
    private static final int TRIES = 6;
    private static final long SEED = 30;

    /**
     * The budget of a room under a tuning, in the middle of its zone.
     *
     * <p>It is tried on simulated hands with this room's noise. Straight lines between readings pass another
     * {@code sin(x) / x} of what is held between them, x = pi f T, T the time between readings (mean of a sine over T).
     */
    public static VibratoBudget of(Room room, Tuning tuning) {
        HandSetup hand = room.pitch();
        Zone zone = hand.zone();
        double mm = CENTS / tuning.centsPerMm(zone.lengthMm(), 0.5);
        double left01 = switch (tuning.snap()) {
            case STEPS -> 0;
            case PULL -> 1 - tuning.snapping().strength01();
            case FREE, ONSET -> 1;
        };
        SmoothSettings settings = PitchSmoothing.of(room, tuning);
        Eye eye = new Eye(settings.noise(), room.ratePerS(), room.sensor(hand).measuringMs());
        double held = 0;
        for (int i = 0; i < TRIES; i++) {
            Trace swing = Gesture.sway(TRIED_S, zone.mm(0.5), mm, HZ, (double) i / TRIES);
            Trace out = eye.follow(swing, new HandSmoother(settings)::next, new Random(SEED + i));
            held += Feel.gain01(out, HZ, mm) / TRIES;
        }
        return new VibratoBudget(held * sinc(HZ / room.ratePerS()) * left01, room.ratePerS());
    }

    private static double sinc(double turns) {
        double x = Math.PI * turns;
        return x == 0 ? 1 : Math.abs(Math.sin(x) / x);
    }

    /** Whether it is as good as gone, though it might be wanted: {@link Snap#STEPS} has none on purpose. */
    public boolean isLost() {
        return kept01 > 0 && (ratePerS < LEAST_RATE_PER_S || kept01 < LOST_01);
    }

    /** In words, with the figure. */
    public String words() {
        if (kept01 == 0) {
            return "no vibrato: only notes sound";
        }
        String figure = Figures.percent(kept01) + " of a vibrato of 25 cents either way at 6 a second";
        return isLost()
                ? "vibrato will be lost: " + figure + " is left at " + Figures.text(ratePerS, 0) + " readings a second"
                : figure + " is kept";
    }
}
