package handspan.show.chart;

import static handspan.show.chart.Rehearsal.held;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.Command;
import handspan.music.tuning.Tuning;
import handspan.room.HandRole;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LiveRawChartTest {
    private static final double TOLERANCE_PX = 1;

    private final Rehearsal rehearsal = new Rehearsal(Tuning.usual());
    private final LiveRawChart chart = LiveRawChart.of(rehearsal.room().room(), HandRole.PITCH);

    private void spoil() {
        rehearsal.line("251,200,7", chart);
        rehearsal.line("480,200", chart);
        rehearsal.play(0.2, held(250), held(200), chart);
        rehearsal.line("8190,200", chart);
        rehearsal.play(0.2, held(250), held(200), chart);
        rehearsal.look(chart);
    }

    /** The lines are counted as they were sent: a malformed one, a leap of 230 mm in 20 ms, a "nothing seen". */
    @Test
    void eachKindOfWhatWasNotTakenIsToldApart() {
        rehearsal.play(true);
        rehearsal.play(1.5, held(250), held(200), chart);
        int settling = chart.run().count(RawTrail.REJECTED);
        spoil();
        TimeRun run = chart.run();
        assertEquals(1, run.count(RawTrail.HELD_BACK));
        assertEquals(1, run.count(RawTrail.NO_READING));
        assertEquals(1, run.count(RawTrail.REJECTED) - settling);
        assertTrue(chart.words().matches("now 2(49\\.95|50\\.05) mm; in 10 s \\d+ taken, 1 held back, 1 without, .*"));
    }

    @Test
    void nothingIsKeptForLongerThanTenSeconds() {
        rehearsal.play(true);
        rehearsal.play(1, held(250), held(200), chart);
        spoil();
        rehearsal.play(10.5, held(250), held(200), chart);
        TimeRun run = chart.run();
        assertEquals(0, run.count(RawTrail.HELD_BACK) + run.count(RawTrail.NO_READING) + run.count(RawTrail.REJECTED));
        // 50 lines a second for 10 s, both ends included
        assertEquals(501, run.size(), 1);
    }

    /** The ends stand as lines at 100 and 500 mm; the latest reading divides the way between them. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void aReadingStandsWhereItIsBetweenTheEnds(Theme theme) {
        rehearsal.play(true);
        rehearsal.play(4, held(237), held(200), chart);
        BufferedImage picture = Dots.picture(chart, theme);
        double far = Dots.line(picture, theme.edge(), 300, 800, 44, 120);
        double near = Dots.line(picture, theme.edge(), 300, 800, 205, 244);
        double reading = Dots.line(picture, theme.line(), 700, 800, 120, 204);
        assertEquals(near + (237.0 - 100) / 400 * (far - near), reading, TOLERANCE_PX);
    }

    @Test
    void aNumberOfWhichNothingIsKnownIsShownAsPrinted() {
        LiveRawChart plain = LiveRawChart.of("2");
        rehearsal.tell(new Command.Watch());
        rehearsal.play(1, held(250), t -> 40 + t, plain);
        rehearsal.look(plain);
        assertTrue(plain.words().matches("now 4[01](\\.\\d+)?; in 10 s .*"), plain::words);
        assertTrue(Dots.count(Dots.picture(plain, Theme.LIGHT), Theme.LIGHT.line(), 805, 860) > 20);
    }

    @Test
    void aRoomWithoutALevelHandHasNoReadingsOfIt() {
        var attic = Samples.attic(Tuning.usual());
        assertThrows(IllegalArgumentException.class, () -> LiveRawChart.of(attic.room(), HandRole.LEVEL));
    }
}
