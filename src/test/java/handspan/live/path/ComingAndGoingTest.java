package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.send.SoundFrame;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is heard of hands that come and go, as means over sixty of them. The figures before: measured the same way with
 * a presence that knew nothing of moves, waited 180 ms before each fade and let sound in at the second reading.
 */
class ComingAndGoingTest {
    private static final int HANDS = 60;

    /** What noise and smoothing alone make of a hand that lies still, cents: furthest of the frames. */
    private static final double STILL_CENTS = 25;

    private static double left(
            HandTrial.Kind kind, HandTrial.Way way, double mm, double mmPerS, ToDoubleFunction<HandTrial.Left> figure) {
        return LongStream.range(0, HANDS)
                .mapToObj(seed -> new HandTrial(kind, seed)
                        .play(way.leaving(mm, mmPerS), 4)
                        .left())
                .mapToDouble(figure)
                .average()
                .orElseThrow();
    }

    private static double slideCents(HandTrial.Kind kind, HandTrial.Way way, double mm, double mmPerS) {
        return LongStream.range(0, HANDS)
                .mapToObj(seed -> new HandTrial(kind, seed)
                        .play(way.coming(mm, mmPerS), 4)
                        .came())
                .mapToDouble(HandTrial.Came::slideCents)
                .average()
                .orElseThrow();
    }

    /** From the last reading with the hand in reach to silence, ms. */
    @ParameterizedTest(name = "{0} {1} from {2} mm at {3} mm/s: {4} ms, was {5}")
    @CsvSource({
        "FLIGHT, OUTWARD,  300,  700,  75, 240",
        "FLIGHT, OUTWARD,  300, 1500,  75, 240",
        "FLIGHT, INWARD,   300, 1500,  75, 240",
        "FLIGHT, SIDEWAYS, 300,  300,  75, 240",
        "FLIGHT, SIDEWAYS, 300, 1500,  90, 220",
        "ECHO,   OUTWARD,  300,  700, 130, 253",
        "ECHO,   OUTWARD,  300, 1500, 130, 254",
        "ECHO,   SIDEWAYS, 300,  300, 135, 250"
    })
    void aFastHandIsSilentSoon(
            HandTrial.Kind kind, HandTrial.Way way, double mm, double mmPerS, double mostMs, double beforeMs) {
        double ms = left(kind, way, mm, mmPerS, HandTrial.Left::silentMs);
        assertTrue(ms <= mostMs && mostMs < beforeMs, ms + " ms");
    }

    /** Furthest pitch heard from where the hand was, cents. */
    @ParameterizedTest(name = "{0} from {1} mm at {2} mm/s: {3} cents, was {4}")
    @CsvSource({
        "FLIGHT, 300,  700,  33, 267",
        "FLIGHT, 300, 1500,  33, 270",
        "FLIGHT, 450,  700,  33, 300",
        "FLIGHT, 450, 1500,  33, 160",
        "FLIGHT, 300,  300, 700, 1185"
    })
    void aHandThatLeavesTheBeamSidewaysKeepsItsPitch(
            HandTrial.Kind kind, double mm, double mmPerS, double mostCents, double beforeCents) {
        double cents = left(kind, HandTrial.Way.SIDEWAYS, mm, mmPerS, HandTrial.Left::sweepCents);
        assertTrue(cents <= mostCents && mostCents < beforeCents, cents + " cents");
    }

    /** Cents off the note before, weighted by gain, times seconds: how much of a departure is heard. */
    @ParameterizedTest(name = "{0} {1} at {2} mm/s: {3}, was {4}")
    @CsvSource({
        "FLIGHT, OUTWARD, 300, 760, 778",
        "FLIGHT, OUTWARD, 700, 270, 461",
        "FLIGHT, OUTWARD, 1500, 115, 339",
        "ECHO, OUTWARD, 700, 240, 376",
        "ECHO, OUTWARD, 1500, 165, 306",
        "ECHO, SIDEWAYS, 300, 60, 144",
    })
    void lessOfADepartureIsHeard(HandTrial.Kind kind, HandTrial.Way way, double mmPerS, double most, double before) {
        double heard = left(kind, way, 300, mmPerS, HandTrial.Left::centSeconds);
        assertTrue(heard <= most && most < before, heard + " cent seconds");
    }

    /** Furthest pitch in the first 200 ms of sound from where the hand settles, cents. */
    @ParameterizedTest(name = "{0} {1} to {2} mm at {3} mm/s: {4} cents, was {5}")
    @CsvSource({
        "FLIGHT, OUTWARD,  300, 1500,  80, 1130",
        "FLIGHT, INWARD,   300, 1500,  80, 1128",
        "FLIGHT, OUTWARD,  450,  700,  90,  300",
        "FLIGHT, SIDEWAYS, 300,  300,  25, 1039",
        "FLIGHT, SIDEWAYS, 450,  700,  25,   76",
        "ECHO,   OUTWARD,  300, 1500,  25,  627",
        "ECHO,   OUTWARD,  450,  700,  25,  180"
    })
    void aHandThatComesFastIsHeardWhereItStops(
            HandTrial.Kind kind, HandTrial.Way way, double mm, double mmPerS, double mostCents, double beforeCents) {
        double cents = slideCents(kind, way, mm, mmPerS);
        assertTrue(cents <= mostCents && mostCents < beforeCents, cents + " cents");
    }

    /** 12.5 % (echo) and 5 % (time of flight) of readings lost in runs of one and two: nothing of it is heard. */
    @ParameterizedTest
    @EnumSource
    void dropoutsAreNotHeardInAStillHand(HandTrial.Kind kind) {
        PlayedTrial.Played still = PlayedTrial.still(kind, HANDS);
        assertEquals(0, still.leastDb(), 1e-6);
    }

    /**
     * Glissandi with 2 m/s at the peak, which end within the zone, at its ends and 10 mm beyond: never softer, and
     * about as close to the hand as a smoother without regard for leaving, at the lag that fits best.
     */
    @ParameterizedTest(name = "{0}, {1} mm beyond the ends: {2} cents, was {3}")
    @CsvSource({
        "FLIGHT,      -60, 18, 14.3",
        "FLIGHT,        0, 16.5, 15.4",
        "FLIGHT,       10, 16, 14.9",
        "ECHO,          0, 94.5, 94.1",
        "POOR_FLIGHT,   0, 36, 33.7",
        "POOR_ECHO,     0, 139, 138.3",
        "REPEATED_ECHO, 0, 130, 115.2"
    })
    void aFastGlissandoIsNeitherMutedNorFlattened(
            HandTrial.Kind kind, double beyondMm, double mostCents, double beforeCents) {
        PlayedTrial.Played played = PlayedTrial.glissando(kind, beyondMm, 3 * HANDS);
        assertEquals(0, played.leastDb(), 1e-6);
        assertTrue(played.rmsCents() <= mostCents, played + ", was " + beforeCents);
    }

    /** Readings of 62, 49.3 and 11.9 cm, the second half-way; of each, only a hand that stays sounds. */
    @ParameterizedTest
    @CsvSource({"620 493 119, 0", "119 493 620, 0", "119 119 493 620 620 620 620 620, 119"})
    void aHalfWayGhostNeverSounds(String lines, double soundsMm) {
        HandTrial trial = new HandTrial(HandTrial.Kind.ECHO, 1);
        double at = 0.5;
        for (int i = 0; i < 9; i++) {
            trial.reading(HandTrial.NOTHING, at += 1 / 18.0);
        }
        for (String mm : lines.split(" ", -1)) {
            trial.reading(Double.parseDouble(mm), at += 1 / 18.0);
        }
        for (int i = 0; i < 9; i++) {
            trial.reading(HandTrial.NOTHING, at += 1 / 18.0);
        }
        long sounded = trial.between(0, 10).stream().filter(HandTrial::isHeard).count();
        assertEquals(soundsMm > 0, sounded > 0);
        for (SoundFrame frame : trial.between(0, 10)) {
            assertTrue(
                    !HandTrial.isHeard(frame) || Math.abs(trial.cents(frame) - 6 * (soundsMm - 300)) < STILL_CENTS,
                    trial.cents(frame) + " cents");
        }
    }

    /** The same half-way reading five times, from a board that is faster than its sensor, is still one. */
    @ParameterizedTest
    @CsvSource({"5, 0", "10, 1"})
    void aRepeatedGhostIsOneReading(int lines, int sounds) {
        HandTrial trial = new HandTrial(HandTrial.Kind.REPEATED_ECHO, 3);
        trial.play(seconds -> seconds < 3 ? 300 : Double.NaN, 5);
        double at = 5;
        for (int i = 0; i < lines; i++) {
            trial.reading(480, at += 1 / 90.0);
        }
        for (int i = 0; i < 45; i++) {
            trial.reading(HandTrial.NOTHING, at += 1 / 90.0);
        }
        long heard = trial.between(4.5, 10).stream().filter(HandTrial::isHeard).count();
        assertEquals(sounds, Math.min(1, heard));
    }
}
