package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import handspan.room.Zone;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RestWatchTest {
    /** Of a ranger on a fixed target over an hour of readings, as measured. */
    private static final double NOISE_MM = 2.15;

    /** Two octaves in 400 mm. */
    private static final double CENTS_PER_MM = 6;

    private static final Zone ZONE = new Zone(100, 500, 0, 0);

    private final Random random = new Random(11);
    private RestWatch watch = new RestWatch(new RestWatch.Scene(ZONE, NOISE_MM, CENTS_PER_MM, 0));
    private double second;
    private int said;

    private void see(double mm, double seconds, boolean pitchHand) {
        drift(mm, mm, seconds, pitchHand);
    }

    /** Whole millimetres, as boards print them. */
    private void drift(double fromMm, double toMm, double seconds, boolean pitchHand) {
        double start = second;
        while (second < start + seconds) {
            second += 0.02;
            double mm = fromMm + (toMm - fromMm) * (second - start) / seconds;
            read(Math.rint(mm + NOISE_MM * random.nextGaussian()), pitchHand);
        }
    }

    private void read(double mm, boolean pitchHand) {
        boolean before = !watch.hint().isEmpty();
        watch.onReading(mm, Nanos.ofSeconds(second), pitchHand);
        said += !before && !watch.hint().isEmpty() ? 1 : 0;
    }

    @Test
    void aRestLevelThatMovedIsSaidOnceWithItsCents() {
        see(900, 30, false);
        assertEquals("", watch.hint());
        see(300, 200, true);
        see(907, 60, false);
        assertEquals(1, said);
        assertEquals(
                "rest level moved 7 mm since the start (about 42 cents at the far end): check when the song is over",
                watch.hint());
        see(900, 30, false);
        assertEquals("", watch.hint());
    }

    /** Drift of the measured hour: under a millimetre between medians; and 2 mm are under the limit of 3. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.7, 2})
    void noiseAndASmallWanderSayNothing(double wanderMm) {
        for (int i = 0; i < 60; i++) {
            drift(900 + wanderMm * Math.sin(i), 900 + wanderMm * Math.sin(i + 1), 30, false);
        }
        assertEquals(0, said);
    }

    @Test
    void aSlowCreepIsFound() {
        see(900, 20, false);
        drift(900, 908, 600, false);
        assertEquals(1, said);
    }

    @Test
    void whileAHandPlaysNothingIsJudged() {
        see(900, 30, false);
        see(910, 600, true);
        assertEquals(0, said);
        see(910, 11, false);
        assertEquals(0, said, "less than two rest levels since");
    }

    /** In the beam for 1.2 s every 15 s, at a different distance each time. */
    @Test
    void somebodyWhoWalksPastSaysNothing() {
        for (int i = 0; i < 60; i++) {
            see(900, 13.8, false);
            drift(600 + 3 * i, 700 + 2 * i, 1.2, false);
        }
        assertEquals(0, said);
    }

    @Test
    void somebodyWhoStandsAboutInTheBeamSaysNothing() {
        see(900, 30, false);
        for (int i = 0; i < 40; i++) {
            drift(880 + 30 * Math.sin(i), 880 + 30 * Math.sin(i + 1), 5, false);
        }
        assertEquals(0, said);
    }

    @Test
    void anotherThingInTheBeamIsANewBeginning() {
        see(900, 30, false);
        see(1300, 60, false);
        assertEquals(0, said);
        see(1308, 60, false);
        assertEquals(1, said);
        assertTrue(watch.hint().startsWith("rest level moved 8 mm"), watch.hint());
    }

    @Test
    void aSensorThatSeesNothingAtRestSaysNothing() {
        for (int i = 0; i < 60_000; i++) {
            second += 0.02;
            read(i % 97 == 0 ? 1500 + random.nextInt(100) : Double.NaN, false);
        }
        assertEquals(0, said);
    }

    /**
     * Speed of sound 343.4 m/s at 20 C rises by 0.606 m/s for each degree (331.5 + 0.606 t, the usual linear form):
     * 0.18 % shorter. 4 C at 1500 mm are 10.6 mm, and 3.5 mm at the far end of 500 mm, 21 cents.
     */
    @Test
    void echoesThatBecomeShorterMeanWarmerAir() {
        watch = new RestWatch(new RestWatch.Scene(ZONE, NOISE_MM, CENTS_PER_MM, 0.606 / 343.4));
        see(1500, 30, false);
        see(1500 / (1 + 4 * 0.606 / 343.4), 60, false);
        assertEquals(1, said);
        assertTrue(
                watch.hint()
                        .matches(".*echo times by 0.7 %: about 4 C warmer or the object moved \\(about 2[012] cents.*"),
                watch.hint());
    }

    /** 1 C at 1500 mm is 2.6 mm, 5 cents at the far end: under 3 mm. */
    @Test
    void aDegreeAloneSaysNothing() {
        watch = new RestWatch(new RestWatch.Scene(ZONE, NOISE_MM, CENTS_PER_MM, 0.606 / 343.4));
        see(1500, 30, false);
        see(1500 / (1 + 0.606 / 343.4), 60, false);
        assertEquals(0, said);
    }

    @Test
    void aFastBoardIsWatchedOverTheSameTime() {
        for (int i = 0; i < 40_000; i++) {
            second += 0.001;
            read(Math.rint((i < 15_000 ? 900 : 910) + NOISE_MM * random.nextGaussian()), false);
        }
        assertEquals(1, said);
    }
}
