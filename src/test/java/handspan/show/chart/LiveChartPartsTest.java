package handspan.show.chart;

import static handspan.show.chart.Rehearsal.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import java.awt.image.BufferedImage;
import java.util.List;
import javax.accessibility.AccessibleContext;
import org.junit.jupiter.api.Test;

/** What live charts are put together from. */
class LiveChartPartsTest {
    @Test
    void aRingKeepsItsSpanAndNoMoreThanItsBound() {
        TimeRing ring = new TimeRing(Nanos.PER_SECOND, 1000);
        for (int i = 0; i < 5000; i++) {
            ring.add(i * 10L * Nanos.PER_MS, i, 1);
        }
        // a second of one value in 10 ms, both ends included
        TimeRun run = ring.run(4999 * 10L * Nanos.PER_MS);
        assertEquals(101, run.size());
        assertEquals(4899, run.value(0));
        assertEquals(-1, run.timeS(0), 1e-9);
        TimeRing bounded = new TimeRing(Nanos.PER_SECOND, 1000);
        for (int i = 0; i < 5000; i++) {
            bounded.add(i * Nanos.PER_MS / 10, i, i % 2);
        }
        TimeRun latest = bounded.run(4999 * Nanos.PER_MS / 10);
        assertEquals(1000, latest.size());
        assertEquals(4000, latest.value(0));
        assertEquals(500, latest.count(1));
    }

    @Test
    void aTimeBeforeTheLastStartsAnewAsAScrubBackwardsDoes() {
        TimeRing ring = new TimeRing(Nanos.PER_SECOND, 1000);
        ring.add(5 * Nanos.PER_SECOND, 1, 0);
        ring.add(2 * Nanos.PER_SECOND, 2, 0);
        TimeRun run = ring.run(2 * Nanos.PER_SECOND);
        assertEquals(1, run.size());
        assertEquals(2, run.value(0));
    }

    /** By hand: 0 to 10 with 6 % to spare in steps of 2. */
    @Test
    void anAxisWidensAtOnceToRoundNumbersAndDoesNotTwitch() {
        CalmRange range = new CalmRange();
        range.show(0, 10);
        assertEquals(List.of(-2.0, 12.0), List.of(range.low(), range.high()));
        long before = range.edition();
        range.show(1, 9);
        range.show(-1, 11.5);
        assertEquals(before, range.edition());
        range.show(0, 13);
        assertEquals(List.of(-2.0, 14.0), List.of(range.low(), range.high()));
        range.show(5, 6);
        assertTrue(range.low() > 4 && range.high() < 7, () -> range.low() + " to " + range.high());
    }

    @Test
    void aViewFeedsItsChartUnseenAndTellsWhoListens() {
        Rehearsal rehearsal = new Rehearsal(Tuning.usual()).play(false);
        SentPitchChart chart = new SentPitchChart(Tuning.usual());
        LiveChartView view = new LiveChartView(chart, Theme.DARK);
        rehearsal.play(2, held(300), held(250));
        assertFalse(view.beat(rehearsal.snapshot()), "nothing is painted that can't be seen");
        assertTrue(chart.words().startsWith("playing: A4"), chart::words);
        AccessibleContext told = view.getAccessibleContext();
        assertEquals("Pitch sent", told.getAccessibleName());
        assertEquals(chart.words(), told.getAccessibleDescription());
        view.setSize(Dots.WIDTH, Dots.HEIGHT);
        BufferedImage image = new BufferedImage(Dots.WIDTH, Dots.HEIGHT, BufferedImage.TYPE_INT_RGB);
        view.paint(image.getGraphics());
        BufferedImage drawn = Dots.picture(chart, Theme.DARK);
        for (int x = 0; x < Dots.WIDTH; x += 7) {
            assertEquals(drawn.getRGB(x, 200), image.getRGB(x, 200));
        }
    }
}
