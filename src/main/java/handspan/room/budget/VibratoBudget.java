package handspan.room.budget;

import handspan.hand.smooth.HandSmoother;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.Zone;

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

    private static final int SETTLE_PERIODS = 12;
    private static final int PERIODS = 24;

    /**
     * The budget of a room under a tuning, in the middle of its zone.
     *
     * <p>A sensor that measures for a time T passes {@code sin(x) / x}, x = pi f T (mean of a sine over T); straight
     * lines between readings pass the square of that, T being the time between readings (their Fourier transform is
     * that of a triangle). The smoother is tried on the vibrato itself.
     */
    public static VibratoBudget of(Room room, Tuning tuning) {
        HandSetup hand = room.pitch();
        Zone zone = hand.zone();
        double mm = CENTS / tuning.centsPerMm(zone.lengthMm(), 0.5);
        double measured = sinc(HZ * room.sensor(hand).measuringMs() / 1000);
        double glided = Math.pow(sinc(HZ / room.ratePerS()), 2);
        double smoothed = smoothed(
                new HandSmoother(PitchSmoothing.of(room, tuning), hand.noiseMm(), room.ratePerS()),
                mm,
                room.ratePerS());
        double left01 = switch (tuning.snap()) {
            case STEPS -> 0;
            case PULL -> 1 - tuning.snapping().strength01();
            case FREE, ONSET -> 1;
        };
        return new VibratoBudget(measured * glided * smoothed * left01, room.ratePerS());
    }

    private static double sinc(double turns) {
        double x = Math.PI * turns;
        return x == 0 ? 1 : Math.abs(Math.sin(x) / x);
    }

    /** Share of a sine's amplitude that a smoother passes, by its correlation with the sine and its cosine. */
    private static double smoothed(HandSmoother smoother, double mm, double ratePerS) {
        double sine = 0;
        double cosine = 0;
        int settled = (int) (SETTLE_PERIODS * ratePerS / HZ);
        int count = (int) (PERIODS * ratePerS / HZ);
        for (int i = 0; i < settled + count; i++) {
            double angle = 2 * Math.PI * HZ * i / ratePerS;
            double out = smoother.next(mm * Math.sin(angle), 1 / ratePerS);
            if (i >= settled) {
                sine += out * Math.sin(angle);
                cosine += out * Math.cos(angle);
            }
        }
        return 2 * Math.hypot(sine, cosine) / count / mm;
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
