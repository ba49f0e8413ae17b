package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.TestRooms;
import handspan.hand.smooth.HandSmoother;
import handspan.hand.smooth.SmoothSettings;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.SnapLimits;
import handspan.music.tuning.Snapper;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.room.Room;
import handspan.room.Zone;
import handspan.room.budget.PitchSmoothing;
import handspan.room.budget.StepsBudget;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two hours of a hand that rests exactly on the boundary of two notes, through the smoother with the settings that its
 * room gets: it changes less than once a minute. With half the hysteresis it changes more often than that.
 */
class SnapRestTest {
    private static final double MINUTES = 120;

    /** C5 and A4 of minor pentatonic on A meet at 70.5. */
    private static final double BOUNDARY_KEY = 70.5;

    @ParameterizedTest(name = "{0} readings a second, noise {1} mm, step {2} mm: {3}")
    @CsvSource({
        "50, 2.15, 0, steps",
        "50, 2.15, 1, steps",
        "30, 1.5, 0, steps",
        "100, 3, 0, steps",
        "18, 0.8, 0, steps",
        "50, 2.15, 0, pull",
        "50, 2.15, 1, pull"
    })
    void itChangesLessThanOnceAMinute(double ratePerS, double noiseMm, double stepMm, String snap) {
        Tuning tuning =
                Tuning.usual().withScale(Scales.named("minor-pentatonic")).withSnap(Snap.parse(snap));
        Room room = TestRooms.twoDistances(ratePerS, tuning, noiseMm).room();
        SmoothSettings smoothing = PitchSmoothing.of(room, tuning);
        SnapLimits limits = StepsBudget.limits(room, tuning);
        double whole = changesPerMinute(room, tuning, smoothing, limits, stepMm);
        assertTrue(whole <= 1, whole + " a minute with " + limits.hysteresisCents() + " cents");
        SnapLimits half = new SnapLimits(limits.jitterCents(), limits.hysteresisCents() / 2);
        double withHalf = changesPerMinute(room, tuning, smoothing, half, stepMm);
        assertTrue(withHalf > 1, withHalf + " a minute with half of it");
    }

    private static double changesPerMinute(
            Room room, Tuning tuning, SmoothSettings smoothing, SnapLimits limits, double stepMm) {
        Zone zone = room.pitch().zone();
        PitchCurve curve = tuning.curve();
        HandSmoother smoother = new HandSmoother(smoothing);
        Snapper snapper = Snapper.of(tuning.snapping(), tuning.ladder(), limits);
        Random random = new Random(61);
        double placeMm = zone.mm(curve.place01(BOUNDARY_KEY));
        int changes = 0;
        boolean above = false;
        for (int i = 0; i < MINUTES * 60 * room.ratePerS(); i++) {
            double read = placeMm + room.pitch().noiseMm() * random.nextGaussian();
            double mm = stepMm > 0 ? stepMm * Math.rint(read / stepMm) : read;
            double key = curve.key(zone.place01(smoother.next(mm, 1 / room.ratePerS())));
            long now = Nanos.ofSeconds(i / room.ratePerS());
            snapper.onReading(key, now);
            // what is drawn to: the sounding pitch without the hand's own wobble
            double drawn = snapper.sounding(BOUNDARY_KEY, now + Nanos.PER_SECOND);
            boolean isAbove = drawn > BOUNDARY_KEY;
            changes += i > 0 && isAbove != above ? 1 : 0;
            above = isAbove;
        }
        return changes / MINUTES;
    }
}
