package handspan.outside.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.HeardWav;
import java.io.IOException;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Frames with times become sound at those times; measured as a stranger would. */
class ToneTrackTest {
    private static final long MS = 1_000_000;
    private static final double LATE_S = 0.005;
    private static final double CEILING_DB = -12;
    private static final double CENT = 1;
    private static final double LEVEL_TOLERANCE_DB = 0.2;
    private static final double CLICK_LIMIT_DB = -90;
    private static final double FULL_RMS_DB = 20 * Math.log10(ToneVoice.FULL_RMS / 32_768);

    private short[] all = new short[0];
    private final ToneTrack track = new ToneTrack((samples, count) -> {
        int at = all.length;
        all = Arrays.copyOf(all, at + count);
        System.arraycopy(samples, 0, all, at, count);
    });

    private HeardWav heard() throws IOException {
        track.end();
        return HeardWav.of(all, all.length);
    }

    private static double cents(double hz, double ofHz) {
        return 1200 * Math.log(hz / ofHz) / Math.log(2);
    }

    /** A slide of an octave a second: its mean between two moments is the geometric middle, shorter by a known bit. */
    @Test
    void aSlideIsWhereItWasSentAtEveryMoment() throws IOException {
        for (int ms = 0; ms <= 2000; ms += 5) {
            track.add(ms * MS, 220 * Math.pow(2, ms / 1000.0), 0.5);
        }
        HeardWav heard = heard();
        for (double atS = 0.1; atS < 1.8; atS += 0.1) {
            double fromS = atS + LATE_S;
            // the mean of 220 * 2^t over a stretch, by its integral
            double meanHz = 220 * (Math.pow(2, atS + 0.06) - Math.pow(2, atS)) / Math.log(2) / 0.06;
            assertEquals(0, cents(heard.hz(fromS, fromS + 0.06, 0.03), meanHz), CENT / 4);
            assertEquals(FULL_RMS_DB - 6.0206, heard.rmsDb(fromS, 0.05), LEVEL_TOLERANCE_DB / 4);
        }
    }

    /** Linear in amplitude between frames 20 ms apart and less; on the frame it is what the frame says. */
    @ParameterizedTest
    @ValueSource(ints = {2, 5, 10, 20})
    void aFadeHasTheLevelThatWasSent(int everyMs) throws IOException {
        for (int ms = 0; ms <= 2000; ms += everyMs) {
            track.add(ms * MS, 440, Math.pow(10, -ms / 1000.0));
        }
        HeardWav heard = heard();
        for (double atS = 0.1; atS < 1.9; atS += 0.1) {
            assertEquals(FULL_RMS_DB - 20 * atS, heard.rmsDb(atS + LATE_S, 0.03), LEVEL_TOLERANCE_DB);
        }
    }

    /** What is sent eighteen times a second is held, and is another after 20 ms. */
    @Test
    void rareFramesAreHeldUntilShortlyBeforeTheNext() throws IOException {
        for (int i = 0; i < 10; i++) {
            track.add(i * 100L * MS, i % 2 == 0 ? 300 : 400, i % 2 == 0 ? 0.5 : 0.25);
        }
        HeardWav heard = heard();
        for (int i = 1; i < 9; i++) {
            double middleS = 0.1 * i + 0.045;
            assertEquals(0, cents(heard.hz(middleS - 0.012, middleS + 0.012, 0.03), i % 2 == 0 ? 300 : 400), CENT);
            assertEquals(FULL_RMS_DB - (i % 2 == 0 ? 6.02 : 12.04), heard.rmsDb(middleS, 0.04), LEVEL_TOLERANCE_DB);
        }
    }

    /** As the watchdog of a receiver, 1.5 s. */
    @Test
    void aToneThatIsLeftAloneFadesAfterOneAndAHalfSeconds() throws IOException {
        track.add(0, 440, 1);
        track.add(4000 * MS, 440, 0.5);
        track.add(4500 * MS, 440, 0.5);
        HeardWav heard = heard();
        assertEquals(FULL_RMS_DB, heard.rmsDb(1.4, 0.1), LEVEL_TOLERANCE_DB);
        for (int i = (int) (1.54 * HeardWav.SAMPLES_PER_S); i < 3.97 * HeardWav.SAMPLES_PER_S; i++) {
            assertEquals(0, heard.at(i), "sample " + i);
        }
        assertEquals(FULL_RMS_DB - 6.02, heard.rmsDb(4.3, 0.1), LEVEL_TOLERANCE_DB);
        assertTrue(heard.clickDb(4000) < CLICK_LIMIT_DB, heard.clickDb(4000) + " dBFS");
    }

    @Test
    void aMachineThatSleptForHoursLeavesTenSeconds() throws IOException {
        track.add(0, 440, 0);
        track.add(8 * 3_600_000L * MS, 440, 0);
        track.add(8 * 3_600_000L * MS + 1000 * MS, 440, 0);
        assertEquals(11, heard().seconds(), 0.1);
    }

    /** The five bundles of a hand-off may come at one moment; a clock may give one time twice, or an earlier one. */
    @Test
    void framesOfOneMomentAndOfAnEarlierOneNeitherClickNorAddTime() throws IOException {
        for (int ms = 0; ms <= 500; ms += 5) {
            track.add(ms * MS, 440, 1);
        }
        for (int i = 0; i < 5; i++) {
            track.add(500 * MS, 440, 0);
        }
        track.add(300 * MS, 440, 0);
        HeardWav heard = heard();
        assertEquals(0.53, heard.seconds(), 0.001);
        assertTrue(heard.clickDb(4000) < CLICK_LIMIT_DB, heard.clickDb(4000) + " dBFS");
        assertEquals(0, heard.at(heard.count() - 1));
    }

    @Test
    void anEndInTheMiddleOfAToneFades() throws IOException {
        for (int ms = 0; ms <= 200; ms += 5) {
            track.add(ms * MS, 550, 1);
        }
        HeardWav heard = heard();
        assertTrue(heard.clickDb(4000) < CLICK_LIMIT_DB, heard.clickDb(4000) + " dBFS");
        assertEquals(0, heard.at(0));
        assertEquals(0, heard.at(heard.count() - 1));
    }

    @Test
    void ofNoFrameAtAllNothingIsHeard() throws IOException {
        assertEquals(Double.NEGATIVE_INFINITY, heard().peakDb());
    }

    private static LongStream manySeeds() {
        return LongStream.range(100, 124);
    }

    @Tag("deep")
    @ParameterizedTest
    @MethodSource("manySeeds")
    void nothingElseByChanceDoesEither(long seed) throws IOException {
        noFramesClickOrPassTheCeiling(seed);
    }

    /** Frames as wild as they come. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void noFramesClickOrPassTheCeiling(long seed) throws IOException {
        Random chance = new Random(seed);
        long timeNanos = chance.nextLong() >> 8;
        for (int i = 0; i < 200; i++) {
            double hz = chance.nextInt(20) == 0 ? Double.NaN : 40 * Math.pow(2, 3.5 * chance.nextDouble());
            double gain01 = chance.nextInt(4) == 0 ? 0 : chance.nextDouble() * 1.2;
            track.add(timeNanos, hz, gain01);
            timeNanos += chance.nextInt(50) == 0 ? 1700 * MS : (chance.nextInt(30) - 2) * MS;
        }
        HeardWav heard = heard();
        assertTrue(heard.peakDb() <= CEILING_DB && heard.peakDb() > CEILING_DB - 6, heard.peakDb() + " dBFS");
        assertTrue(heard.clickDb(4000) < CLICK_LIMIT_DB, heard.clickDb(4000) + " dBFS");
    }
}
