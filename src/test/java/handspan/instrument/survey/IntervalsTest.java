package handspan.instrument.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.number.units.Nanos;
import java.util.Random;
import org.junit.jupiter.api.Test;

class IntervalsTest {
    private static final double EXACT = 1e-9;

    private final Intervals intervals = new Intervals();

    /** Ten and thirty milliseconds in turn: mean 20, standard deviation 10. */
    @Test
    void rateIsTheMeanAndJitterTheScatterOfTheIntervals() {
        long timeNanos = 5;
        intervals.onReading(timeNanos);
        for (int i = 0; i < 1000; i++) {
            timeNanos += Nanos.ofMs(i % 2 == 0 ? 10 : 30);
            intervals.onReading(timeNanos);
        }
        assertEquals(50, intervals.ratePerS(), EXACT);
        assertEquals(10, intervals.jitterMs(), EXACT);
        assertEquals(1001, intervals.count());
        assertEquals(Nanos.ofSeconds(20), intervals.spanNanos());
    }

    /** An hour at 55.6 a second with half a millisecond of jitter: nothing is lost in the long sum. */
    @Test
    void anHourOfReadingsKeepsItsFigures() {
        Random random = new Random(81);
        long timeNanos = 0;
        for (int i = 0; i < 200_000; i++) {
            timeNanos += Nanos.ofMs(1000 / 55.6 + 0.5 * random.nextGaussian());
            intervals.onReading(timeNanos);
        }
        assertEquals(55.6, intervals.ratePerS(), 0.01);
        assertEquals(0.5, intervals.jitterMs(), 0.01);
    }

    @Test
    void perfectlyEvenReadingsHaveNoJitter() {
        for (int i = 0; i < 100; i++) {
            intervals.onReading(i * 20_000_000L);
        }
        assertEquals(0, intervals.jitterMs(), 1e-6);
    }

    @Test
    void oneReadingHasNoRateYet() {
        assertEquals(0, intervals.ratePerS());
        intervals.onReading(77);
        assertEquals(0, intervals.ratePerS());
        assertEquals(0, intervals.jitterMs());
        intervals.onReading(77);
        assertEquals(0, intervals.ratePerS(), "two at the same moment");
    }
}
