package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.number.units.Nanos;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FadeTest {
    /** Amplitudes of -60 and -6 dB: ISO 80000-3, 20 lg; figures of a published table of ratios. */
    private static final double FLOOR = 0.001;

    private static final double CEILING = 0.501187233627;
    private static final double TOLERANCE = 1e-9;
    private static final long MS = Nanos.PER_MS;
    private static final long FADE = 60 * MS;

    private final Fade fade = new Fade(LevelCurve.USUAL);

    private double openFully() {
        double gain = 0;
        for (long ms = 1; ms <= 100; ms++) {
            gain = fade.next(1, true, FADE, ms * MS);
        }
        return gain;
    }

    @Test
    void itStartsSilent() {
        assertTrue(fade.isSilent());
        assertEquals(0, fade.next(0.5, false, FADE, MS), TOLERANCE);
    }

    /** 1 dB a ms from -60 dB: -50 dB (0.00316...) after 10 ms, the ceiling of -6 dB after 54. */
    @Test
    void itRisesFromTheFloorNoFasterThanAllowed() {
        assertEquals(FLOOR, fade.next(1, true, FADE, MS), TOLERANCE);
        double gain = 0;
        for (long ms = 2; ms <= 11; ms++) {
            gain = fade.next(1, true, FADE, ms * MS);
        }
        assertEquals(0.00316227766017, gain, TOLERANCE);
        for (long ms = 12; ms <= 54; ms++) {
            gain = fade.next(1, true, FADE, ms * MS);
        }
        assertTrue(gain < CEILING, "just below the ceiling after 53 ms");
        assertEquals(CEILING, fade.next(1, true, FADE, 56 * MS), TOLERANCE);
    }

    @Test
    void theCeilingIsNeverPassedWhateverIsAsked() {
        Random random = new Random(7);
        double last = 0;
        long time = 0;
        for (int i = 0; i < 100_000; i++) {
            long step = (1 + random.nextInt(30)) * MS;
            time += step;
            double wanted = random.nextInt(10) == 0 ? 1e6 * random.nextDouble() : random.nextDouble();
            double gain = fade.next(wanted, random.nextInt(20) > 0, FADE, time);
            assertTrue(gain >= 0 && gain <= CEILING + TOLERANCE, "gain " + gain);
            double most = Math.max(last, FLOOR) * Math.pow(10, Nanos.toMs(step) / 20);
            assertTrue(gain <= most * (1 + 1e-9), "rise from " + last + " to " + gain);
            last = gain;
        }
    }

    @Test
    void closingRunsDownInAStraightLineOverTheFade() {
        double full = openFully();
        assertEquals(full, fade.next(1, false, FADE, 101 * MS), TOLERANCE);
        assertEquals(full / 2, fade.next(1, false, FADE, 131 * MS), TOLERANCE);
        assertFalse(fade.isSilent());
        assertEquals(0, fade.next(1, false, FADE, 161 * MS), TOLERANCE);
        assertTrue(fade.isSilent());
    }

    @Test
    void openedAgainWhileClosingItRisesFromWhereItIs() {
        double full = openFully();
        fade.next(1, false, FADE, 101 * MS);
        double low = fade.next(1, false, FADE, 151 * MS);
        double next = fade.next(1, true, FADE, 152 * MS);
        assertEquals(full / 6, low, TOLERANCE);
        assertEquals(low * 1.1220184543, next, TOLERANCE);
    }

    /** Half of a fade of a second is over when mute wants silence in 60 ms. */
    @Test
    void aShorterFadeTakesOverFromALongOne() {
        double full = openFully();
        fade.next(1, false, 1000 * MS, 101 * MS);
        assertEquals(full / 2, fade.next(1, false, 1000 * MS, 601 * MS), TOLERANCE);
        assertEquals(full / 2, fade.next(1, false, FADE, 601 * MS), TOLERANCE);
        assertEquals(full / 4, fade.next(1, false, FADE, 631 * MS), TOLERANCE);
        assertEquals(full / 8, fade.next(1, false, 1000 * MS, 646 * MS), TOLERANCE, "a longer one does not");
        assertEquals(0, fade.next(1, false, FADE, 661 * MS), TOLERANCE);
    }

    @Test
    void withoutAFadeItIsSilentAtOnce() {
        Fade hard = new Fade(LevelCurve.USUAL);
        hard.next(1, true, 0, MS);
        assertEquals(0, hard.next(1, false, 0, 2 * MS), TOLERANCE);
    }
}
