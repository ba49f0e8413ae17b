package handspan.show.chart;

import static handspan.show.chart.Rehearsal.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.Command;
import handspan.music.tuning.Direction;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The room is 100 to 500 mm for A3 to A5, so that its middle, 300 mm, is A4: 440 Hz after ISO 16. */
class SentPitchChartTest {
    private static final double TOLERANCE_HZ = 0.2;
    private static final double TOLERANCE_PX = 1;

    /** On a fine screen text is measured more finely, which moves the axes by a px or so. */
    private static final double FINER_PX = 2;

    private static final double FRAME_S = 0.005;

    private final Tuning tuning = Samples.twoOctaves("minor-pentatonic", Direction.HIGH_FAR, Snap.FREE);
    private final Rehearsal rehearsal = new Rehearsal(tuning);
    private final SentPitchChart chart = new SentPitchChart(tuning);
    private final SentPitchTrail trail = new SentPitchTrail(tuning);

    private void play(double seconds, double mm) {
        rehearsal.play(seconds, held(mm), held(250));
        trail.onSnapshot(rehearsal.snapshot());
    }

    @Test
    void everyFrameOfTheLastTenSecondsIsKeptAndNoneBefore() {
        rehearsal.play(false);
        for (int i = 0; i < 150; i++) {
            play(0.1, 300);
        }
        TimeRun run = trail.run();
        // 200 frames a second for 10 s, both ends included
        assertEquals(2001, run.size(), 1);
        assertTrue(run.timeS(0) >= -10, () -> run.timeS(0) + " s");
        for (int i = 1; i < run.size(); i++) {
            assertEquals(FRAME_S, run.timeS(i) - run.timeS(i - 1), 1e-6);
            assertEquals(440, run.value(i), TOLERANCE_HZ);
            assertEquals(SentPitchTrail.SOUNDS, run.kind(i));
        }
        assertTrue(trail.words().startsWith("playing: A4 +0 cents, 440.0 Hz, "), trail::words);
    }

    /** The lines of A3 and A5 stand where the chart has drawn them; half-way between them, in cents, is A4. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void theLiveDotStandsHalfWayBetweenTheOctaves(Theme theme) {
        rehearsal.play(false);
        rehearsal.play(3, held(300), held(250), chart);
        BufferedImage picture = Dots.picture(chart, theme);
        Point2D dot = Dots.middleOfDot(picture, theme.live(), 5);
        // a column of the plot where nothing has been played yet; rows about the uppermost and lowest note line
        int free = 200;
        double top = Dots.row(picture, theme.plot(), free, 46, 58);
        double foot = Dots.row(picture, theme.plot(), free, 317, 329);
        assertEquals((top + foot) / 2, dot.getY(), TOLERANCE_PX);
    }

    @Test
    void whereNothingSoundsThereIsNoLine() {
        rehearsal.play(false);
        rehearsal.play(3, held(300), held(250), chart);
        rehearsal.play(3, t -> Double.NaN, held(250), chart);
        rehearsal.play(2, held(400), held(250), chart);
        BufferedImage picture = Dots.picture(chart, Theme.LIGHT);
        // ten seconds are some 730 px wide, 0 at 806: sound from 222 to 441, and from 660
        BufferedImage plot = Dots.above(picture, 340);
        assertTrue(Dots.count(plot, Theme.LIGHT.line(), 250, 420) > 170);
        assertEquals(0, Dots.count(plot, Theme.LIGHT.line(), 470, 650));
        assertTrue(Dots.count(plot, Theme.LIGHT.line(), 700, 790) > 80);
    }

    @Test
    void aMutedHandIsShownAsWhatItWouldPlay() {
        rehearsal.play(true);
        for (int i = 0; i < 30; i++) {
            play(0.1, 300);
        }
        TimeRun run = trail.run();
        assertEquals(0, run.count(SentPitchTrail.SOUNDS));
        assertTrue(run.count(SentPitchTrail.WAITS) > 20, () -> run.count(SentPitchTrail.WAITS) + " waiting");
        assertTrue(trail.words().startsWith("muted: would play A4 "), trail::words);
        play(1, Double.NaN);
        assertEquals("muted: no hand", trail.words());
    }

    @Test
    void anotherTuningBringsItsOwnNotes() {
        rehearsal.play(false);
        rehearsal.play(2, held(300), held(250), chart);
        rehearsal.tell(new Command.Tune(tuning.shifted(12, 0)));
        rehearsal.play(1, held(300), held(250), chart);
        assertTrue(chart.words().startsWith("playing: A5 +0 cents, 880.0 Hz"), chart::words);
        Point2D dot = Dots.middleOfDot(Dots.picture(chart, Theme.DARK), Theme.DARK.live(), 5);
        assertEquals(188, dot.getY(), 3);
    }

    @Test
    void nothingIsDrawnAnewWhileNothingPlays() {
        rehearsal.play(1, held(300), held(250), chart);
        long before = chart.version();
        rehearsal.play(1, held(300), held(250), chart);
        assertEquals(before, chart.version());
        assertEquals("not playing", chart.words());
    }

    @Test
    void onAFineScreenTheDotIsAtTheSamePlace() {
        rehearsal.play(false);
        rehearsal.play(3, held(220), held(250), chart);
        Point2D once = Dots.middleOfDot(Dots.picture(chart, Theme.DARK), Theme.DARK.live(), 5);
        Point2D twice = Dots.middleOfDot(Dots.picture(chart, Theme.DARK, 2), Theme.DARK.live(), 10);
        assertEquals(once.getX(), twice.getX() / 2, FINER_PX);
        assertEquals(once.getY(), twice.getY() / 2, FINER_PX);
    }
}
