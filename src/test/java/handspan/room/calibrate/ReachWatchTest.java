package handspan.room.calibrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.room.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Fifty readings a second in whole millimetres, a ranger's noise of 2.15 mm; a rest is 0.8 s long. */
class ReachWatchTest {
    private static final double NOISE_MM = 2.15;
    private static final long READING = 20 * Nanos.PER_MS;

    private final Room room =
            TestRooms.twoDistances(50, Tuning.usual(), NOISE_MM).room();
    private final ReachWatch watch = new ReachWatch(TestRooms.SHAPE, room);
    private final Random random = new Random(7);
    private final List<String> reasons = new ArrayList<>();
    private long now = Nanos.PER_SECOND;

    private Optional<ReachWatch.Rest> hand(double seconds, DoubleUnaryOperator mmAtS) {
        long start = now;
        Optional<ReachWatch.Rest> rest = Optional.empty();
        while (now - start < Nanos.ofSeconds(seconds) && rest.isEmpty()) {
            now += READING;
            double mm = mmAtS.applyAsDouble(Nanos.toSeconds(now - start));
            boolean there = !Double.isNaN(mm);
            double raw = there ? Math.rint(mm + NOISE_MM * random.nextGaussian()) : 0;
            rest = watch.onReading(new Reading(now, new double[] {raw, 250}, there ? 3 : 2));
            String news = watch.takeNews();
            if (!news.isEmpty()) {
                reasons.add(news);
            }
        }
        return rest;
    }

    private void ask(double mm) {
        watch.ask(mm, now);
    }

    /** A straight way of 100 mm in half a second, then still. */
    private static double toThree(double s) {
        return 200 + 100 * Math.min(1, s / 0.5);
    }

    @Test
    void aHandThatStopsIsSeenWhereAndSinceWhen() {
        ask(300);
        long asked = now;
        ReachWatch.Rest rest = hand(3, ReachWatchTest::toThree).orElseThrow();
        // 40 readings: the median of noise of 2.15 mm scatters by 0.43 mm, four times that is allowed
        assertEquals(300, rest.mm(), 4 * 0.43);
        // what the hand still did at its arrival is in it too
        assertTrue(rest.standardUncertaintyMm() > 0.3 && rest.standardUncertaintyMm() < 1.5, rest.toString());
        // the last 4 mm of the way are within what a still hand may do, and looks are 0.1 s apart
        assertEquals(0.5, Nanos.toSeconds(rest.sinceNanos() - asked), 0.12);
    }

    @Test
    void aHandThatStaysForTheNextNoteHasToMoveFirst() {
        ask(300);
        assertTrue(hand(3, ReachWatchTest::toThree).isPresent());
        ask(317);
        assertTrue(hand(4, s -> 300).isEmpty());
        // a third of 17 mm is 5.7, three times the noise 6.45
        assertEquals(List.of("no move seen since the last rest (more than 6 mm)"), reasons);
        assertTrue(hand(2, s -> 300 + 15 * Math.min(1, s / 0.3)).isPresent());
    }

    @Test
    void whoMovesAwayAndComesBackHasMoved() {
        ask(300);
        assertTrue(hand(3, ReachWatchTest::toThree).isPresent());
        ask(317);
        assertTrue(hand(1, s -> 300 + 40 * Math.sin(Math.PI * Math.min(1, s))).isEmpty());
        assertTrue(hand(2, s -> 300).isPresent());
    }

    @Test
    void whoWasGoneHasMoved() {
        ask(300);
        assertTrue(hand(3, ReachWatchTest::toThree).isPresent());
        ask(317);
        assertTrue(hand(0.5, s -> Double.NaN).isEmpty());
        assertTrue(hand(3, s -> 300).isPresent());
    }

    @Test
    void aFewLostReadingsAreNoMove() {
        ask(300);
        assertTrue(hand(3, ReachWatchTest::toThree).isPresent());
        ask(317);
        assertTrue(hand(0.2, s -> Double.NaN).isEmpty());
        assertTrue(hand(4, s -> 300).isEmpty());
    }

    /** To and fro by 20 mm at 0.7 Hz: thirds of the window lie up to 20 mm apart. */
    @Test
    void aHandThatSwaysDoesNotRestAndIsToldSo() {
        ask(300);
        assertTrue(hand(8, s -> 300 + 20 * Math.sin(2 * Math.PI * 0.7 * s)).isEmpty());
        assertTrue(!reasons.isEmpty() && reasons.get(0).startsWith("hand "), "" + reasons);
        assertTrue(reasons.stream().noneMatch(reason -> reason.contains("no move")), "" + reasons);
    }

    /** Vibrato of 4 mm either way at 6 a second: five whole turns in the window, whose middle is the note. */
    @Test
    void vibratoRestsAtItsMiddle() {
        ask(300);
        ReachWatch.Rest rest =
                hand(3, s -> 300 + 4 * Math.sin(2 * Math.PI * 6 * s)).orElseThrow();
        // a sine of 4 mm and the noise scatter by sqrt(8 + 4.6) = 3.6 mm; its median over 40 readings by 0.9
        assertEquals(300, rest.mm(), 2);
    }

    @Test
    void noHandIsToldAndNotTakenForARest() {
        ask(300);
        assertTrue(hand(4, s -> Double.NaN).isEmpty());
        assertTrue(reasons.get(0).startsWith("no hand seen: 100 % of readings without one"), "" + reasons);
    }

    @Test
    void whatWasHalfSeenBeforeABreakIsForgotten() {
        ask(300);
        assertTrue(hand(0.7, s -> 300).isEmpty());
        watch.forget(now);
        assertTrue(hand(0.7, s -> 300).isEmpty());
        assertTrue(hand(0.3, s -> 300).isPresent());
    }
}
