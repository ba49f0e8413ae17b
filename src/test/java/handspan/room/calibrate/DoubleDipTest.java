package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.number.units.Nanos;
import handspan.outside.simulate.HandSettings;
import handspan.outside.simulate.SimulatedHand;
import java.util.Random;
import java.util.function.LongPredicate;
import java.util.function.LongToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The hand is the simulator's: minimum-jerk moves (Flash, Hogan 1985), tremor and wander. Each motion that must not
 * count is a near miss of one that does.
 */
class DoubleDipTest {
    private static final double NOISE_MM = 2;

    private final SimulatedHand hand = new SimulatedHand(HandSettings.USUAL, 51);
    private final Random random = new Random(52);
    private final DoubleDip dip = new DoubleDip();
    private long now = Nanos.PER_SECOND;
    private long until = now;

    private DoubleDipTest at(double mm, double seconds) {
        hand.goTo(mm, now, 0.001);
        until = now + Nanos.ofSeconds(seconds);
        return this;
    }

    private DoubleDipTest to(double mm, double seconds) {
        until = hand.goTo(mm, until, seconds);
        return this;
    }

    private DoubleDipTest stay(double seconds) {
        until += Nanos.ofSeconds(seconds);
        return this;
    }

    private DoubleDipTest dips(int count, double topMm, double depthMm, double secondsEach) {
        for (int i = 0; i < count; i++) {
            to(topMm - depthMm, secondsEach / 2).to(topMm, secondsEach / 2);
        }
        return this;
    }

    private int signs(double perS, double noiseMm) {
        return signs(perS, noiseMm, hand::trueMm, time -> true);
    }

    private int signs(double perS, double noiseMm, LongToDoubleFunction mm, LongPredicate isReading) {
        int signs = 0;
        for (; now < until + Nanos.PER_SECOND; now += Nanos.ofSeconds(1 / perS)) {
            double read = Math.rint(mm.applyAsDouble(now) + noiseMm * random.nextGaussian());
            signs += dip.onReading(now, read, isReading.test(now), noiseMm) ? 1 : 0;
        }
        return signs;
    }

    @ParameterizedTest(name = "{0} mm in {1} s at {2} readings/s")
    @CsvSource({"80, 0.7, 50", "80, 0.7, 18", "150, 0.6, 50", "150, 0.7, 18", "100, 0.5, 100", "70, 0.7, 30"})
    void twoDipsOutOfStillnessAreTheSign(double depthMm, double secondsEach, double perS) {
        assertEquals(1, at(300, 1).dips(2, 300, depthMm, secondsEach).signs(perS, NOISE_MM));
    }

    @Test
    void aHandNearTheSensorCanGiveItToo() {
        assertEquals(1, at(110, 1).dips(2, 110, 75, 0.6).signs(50, NOISE_MM));
    }

    @Test
    void oneDipIsNoSign() {
        assertEquals(0, at(300, 1).dips(1, 300, 120, 0.7).signs(50, NOISE_MM));
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 40, 52})
    void shallowDipsAreNoSign(double depthMm) {
        assertEquals(0, at(300, 1).dips(2, 300, depthMm, 0.6).signs(50, NOISE_MM));
    }

    @Test
    void slowDipsAreNoSign() {
        assertEquals(0, at(300, 1).dips(2, 300, 100, 1.0).signs(50, NOISE_MM));
    }

    /** 20 times 5 mm of noise are 100 mm. */
    @ParameterizedTest
    @CsvSource({"80, 0", "135, 1"})
    void aNoisySensorNeedsDeeperDips(double depthMm, int signs) {
        assertEquals(signs, at(300, 1).dips(2, 300, depthMm, 0.7).signs(50, 5));
    }

    @ParameterizedTest(name = "from {0} to {1} mm in {2} s")
    @CsvSource({"100, 500, 0.8", "500, 100, 0.6", "300, 200, 0.5", "200, 260, 0.4"})
    void aMoveToTheNextPlaceIsNoSign(double fromMm, double toMm, double seconds) {
        assertEquals(0, at(fromMm, 1).to(toMm, seconds).stay(2).signs(50, NOISE_MM));
    }

    @Test
    void aMoveThatOvershootsAndIsPutRightIsNoSign() {
        assertEquals(
                0, at(500, 1).to(100, 0.5).to(170, 0.3).to(120, 0.3).stay(2).signs(50, NOISE_MM));
    }

    @Test
    void aDipThatEndsInAMoveIsNoSign() {
        assertEquals(0, at(300, 1).dips(1, 300, 100, 0.6).to(180, 0.4).stay(2).signs(50, NOISE_MM));
    }

    @Test
    void searchingForAPlaceWithoutAStopIsNoSign() {
        at(300, 0.1);
        for (int i = 0; i < 6; i++) {
            to(180 + 30 * (i % 3), 0.5).to(320 - 40 * (i % 2), 0.5);
        }
        assertEquals(0, signs(50, NOISE_MM));
    }

    /** The widest tremor and a wide vibrato together stay far from a dip. */
    @Test
    void tremorAndVibratoAreNoSign() {
        at(300, 1);
        hand.vibrato(25, 6, until, 3);
        assertEquals(0, stay(3).signs(50, NOISE_MM));
    }

    /** In and out of the beam: no reading in between, as over a free sensor. */
    @ParameterizedTest(name = "{0} s away")
    @ValueSource(doubles = {0.05, 0.15, 0.4})
    void aHandThatComesAndGoesIsNoSign(double awaySeconds) {
        long away = Nanos.ofSeconds(awaySeconds);
        at(300, 6);
        assertEquals(0, signs(50, NOISE_MM, hand::trueMm, time -> time % (Nanos.PER_SECOND / 2) > away));
    }

    /** Over a table at 620 mm each coming and going has one reading half-way, as measured over a real sensor. */
    @ParameterizedTest
    @ValueSource(doubles = {18, 50})
    void aHandThatComesAndGoesOverATableIsNoSign(double perS) {
        at(119, 8);
        long line = Nanos.ofSeconds(1 / perS);
        LongToDoubleFunction seen = time -> {
            long beat = (time + Nanos.PER_SECOND) % Nanos.ofSeconds(0.7);
            boolean covered = time > 2 * Nanos.PER_SECOND && beat < Nanos.ofSeconds(0.35);
            boolean halfWay = time > 2 * Nanos.PER_SECOND && (beat + line) % Nanos.ofSeconds(0.35) < line;
            return halfWay ? 370 : covered ? 119 : 620;
        };
        assertEquals(0, signs(perS, NOISE_MM, seen, time -> true));
    }

    /** Jumps of 12..20 cm between lines for one or two lines, as measured over hands. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void ghostsAreNoSign(int lines) {
        at(300, 20);
        LongToDoubleFunction seen = time -> 300 - (time / (20 * Nanos.PER_MS) % 23 < lines ? 120 + time % 80 : 0);
        assertEquals(0, signs(50, NOISE_MM, seen, time -> true));
    }

    @Test
    void aFewMissingReadingsDoNotHideTheSign() {
        at(300, 1).dips(2, 300, 110, 0.7);
        assertEquals(1, signs(50, NOISE_MM, hand::trueMm, time -> time / (20 * Nanos.PER_MS) % 16 >= 2));
    }

    @Test
    void theSignCanBeGivenAgainAfterAStop() {
        at(300, 1).dips(2, 300, 100, 0.6).stay(1).dips(2, 300, 100, 0.6);
        assertEquals(2, signs(50, NOISE_MM));
    }

    @Test
    void serialLinesInBurstsDoNotHideTheSign() {
        at(300, 1).dips(2, 300, 110, 0.7);
        long[] burst = {0};
        int signs = 0;
        for (; now < until + Nanos.PER_SECOND; now += 20 * Nanos.PER_MS) {
            burst[0] = now / (60 * Nanos.PER_MS) * (60 * Nanos.PER_MS);
            signs += dip.onReading(burst[0], hand.trueMm(now), true, NOISE_MM) ? 1 : 0;
        }
        assertTrue(signs == 1, signs + " signs");
    }
}
