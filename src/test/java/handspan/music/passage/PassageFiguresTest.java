package handspan.music.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.music.tuning.Tuning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Passages made by hand, whose figures follow from how they were made. */
class PassageFiguresTest {
    /** Chromatic, A3 to A5. */
    private static final Tuning TUNING = Tuning.usual();

    private static final LevelCurve LEVEL = LevelCurve.USUAL;

    /** Rounding of straight lines between moments, cents. */
    private static final double ROUNDING_CENTS = 0.01;

    private static PassageFigures of(Played played) {
        return PassageFigures.of(played.moments(), TUNING, LEVEL);
    }

    @Test
    void steadyNotesHaveTheErrorThatTheyWerePlayedWith() {
        // 8 cents sharp for 1 s, then 4 flat for 3 s: mean (8 - 12) / 4 = -1, rms sqrt((64 + 48) / 4) = 5.29
        PassageFigures figures = of(new Played().note(69.08, 1).note(71.96, 3));
        assertEquals(-1, figures.sound().meanCents(), 0.1);
        assertEquals(5.29, figures.sound().rmsCents(), 0.1);
        assertEquals(1, figures.sound().within10Share01(), 0);
        assertEquals(
                List.of("A4", "C5"),
                figures.notes().stream().map(PlayedNote::name).toList());
        assertEquals(8, figures.notes().get(0).sound().meanCents(), ROUNDING_CENTS);
        assertEquals(-4, figures.notes().get(1).sound().meanCents(), ROUNDING_CENTS);
        assertEquals(440, figures.notes().get(0).hz(), 1e-9);
    }

    @Test
    void sharesCountTheTimeWithinTenTwentyFiveAndFiftyCents() {
        // 5, 20 and 40 cents off, 1 s each
        PassageFigures figures = of(new Played().note(69.05, 1).note(72.20, 1).note(76.40, 1));
        assertEquals(1 / 3.0, figures.sound().within10Share01(), 0.02);
        assertEquals(2 / 3.0, figures.sound().within25Share01(), 0.02);
        assertEquals(1, figures.sound().within50Share01(), 0);
    }

    @Test
    void timeIsSharedOutBetweenNotesGlidesAndRests() {
        // 1 s note, 0.5 s over four semitones (800 cents/s), 1 s note, 2 s away, 0.5 s note
        PassageFigures figures = of(new Played()
                .note(69, 1)
                .glide(69, 73, 0.5)
                .note(73, 1)
                .away(2, 73)
                .note(76, 0.5));
        assertEquals(3, figures.visits().size());
        assertEquals(5, figures.time().passageS(), 0.02);
        assertEquals(2, figures.time().awayS(), 0.02);
        assertEquals(1, figures.time().rests());
        assertEquals(0.5, figures.time().glidingS(), 0.06);
        assertEquals(2.5, figures.time().onNotesS(), 0.06);
        // three notes in 5 s
        assertEquals(36, figures.notesPerMin(), 0.5);
    }

    @Test
    void aSlowSlideIsNoGlideAndCountsAgainstItsNotes() {
        // 100 cents a second, half the limit, from A4 to B4: errors run evenly over -50..50, rms 100 / sqrt(12) = 28.9
        PassageFigures figures = of(new Played().glide(68.5, 71.5, 3));
        assertEquals(0, figures.time().glidingS(), 0.01);
        assertEquals(3, figures.visits().size());
        assertEquals(28.9, figures.sound().rmsCents(), 1.5);
    }

    @Test
    void aNoteIsStillANoteBetweenFastGlidesWhenItLastsAFifthOfASecond() {
        PassageFigures figures = of(new Played()
                .note(69, 0.5)
                .glide(69, 72, 0.1)
                .note(72, 0.2)
                .glide(72, 76, 0.1)
                .note(76, 0.5));
        assertEquals(
                List.of("A4", "C5", "E5"),
                figures.notes().stream().map(PlayedNote::name).toList());
        // the glide rule sees 0.03 s to either side
        assertEquals(0.2, figures.notes().get(1).seconds(), 0.06);
    }

    @Test
    void theHandIsToldApartFromWhatSnappingMakesOfIt() {
        PassageFigures figures = of(new Played().sounding(1, s -> 69, s -> 69.3));
        assertEquals(0, figures.sound().rmsCents(), ROUNDING_CENTS);
        assertEquals(30, figures.hand().meanCents(), ROUNDING_CENTS);
    }

    @Test
    void vibratoOfSixTurnsASecondAndTwentyFiveCentsIsFoundAsThat() {
        PassageFigures figures = of(new Played()
                .sounding(2, s -> 69.04 + 0.25 * Math.sin(2 * Math.PI * 6 * s))
                .note(72, 1));
        assertEquals(1, figures.vibrato().found().size());
        assertEquals(6.0, figures.vibrato().rateHz(), 0.02);
        assertEquals(25, figures.vibrato().widthCents(), 0.3);
        // one visit: the turns of a vibrato are no glides
        assertEquals(1, figures.notes().get(0).visits());
        assertEquals(4, figures.notes().get(0).sound().meanCents(), 0.5);
    }

    @Test
    void wideVibratoAtTheEndsOfTheBandIsOneNoteTheWholeTime() {
        for (double hz : new double[] {4.2, 5, 7.8}) {
            PassageFigures figures = of(new Played().sounding(2, s -> 69 + 0.45 * Math.sin(2 * Math.PI * hz * s)));
            assertEquals(1, figures.visits().size(), "at " + hz);
            assertEquals(hz, figures.vibrato().rateHz(), 0.05);
            assertEquals(45, figures.vibrato().widthCents(), 1);
            assertEquals(0, figures.time().glidingS(), 0.01);
        }
    }

    @Test
    void steadyNotesHaveNoVibratoAndNoWobble() {
        PassageFigures figures = of(new Played().note(69, 3));
        assertEquals(1, figures.vibrato().searched());
        assertTrue(figures.vibrato().found().isEmpty());
        assertEquals(0, figures.wobble().rmsCents(), ROUNDING_CENTS);
    }

    @Test
    void wobbleIsCountedAboutEachNotesOwnMean() {
        // 1 Hz, too slow for a vibrato, 10 cents either way: rms 10 / sqrt 2 = 7.07 over whole turns
        PassageFigures figures = of(new Played()
                .sounding(4.4, s -> 69.2 + 0.1 * Math.sin(2 * Math.PI * s))
                .sounding(4.4, s -> 75.8 + 0.1 * Math.sin(2 * Math.PI * s)));
        assertTrue(figures.vibrato().found().isEmpty());
        assertEquals(7.07, figures.wobble().rmsCents(), 0.1);
    }

    @Test
    void levelIsTheRangeOfNineTenthsOfTheTime() {
        // gain 0.25 = 20 log10(0.25) = -12.04 dB all the time
        PassageFigures figures = of(new Played().note(69, 2));
        assertEquals(-12.04, figures.level().highDb(), 0.01);
        assertEquals(0, figures.level().rangeDb(), 1e-9);
        assertEquals(0, figures.level().atCeilingShare01(), 0);
        assertEquals(
                1,
                PassageFigures.of(
                                new Played().note(69, 2).moments(), TUNING, new LevelCurve(-60, -12.04, 0.03, true, 1))
                        .level()
                        .atCeilingShare01(),
                0);
    }

    @Test
    void nothingPlayedIsNoFigure() {
        PassageFigures figures = of(new Played().away(3, 69).away(1, 69));
        assertTrue(figures.visits().isEmpty());
        assertTrue(Double.isNaN(figures.sound().rmsCents()));
        assertEquals(0, figures.time().passageS(), 0);
        assertTrue(PassageFigures.of(List.of(), TUNING, LEVEL).notes().isEmpty());
    }

    @Test
    void transpositionMovesTheNotesAndNotTheErrors() {
        PassageFigures figures = PassageFigures.of(new Played().note(69.58, 1).moments(), TUNING.shifted(0, 50), LEVEL);
        // trimmed by 50 cents, A4 stands at 69.5: 8 cents off
        assertEquals(8, figures.sound().meanCents(), ROUNDING_CENTS);
    }
}
