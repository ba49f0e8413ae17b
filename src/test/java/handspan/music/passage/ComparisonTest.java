package handspan.music.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.music.level.LevelCurve;
import handspan.music.tuning.Tuning;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Two passages of invented hands: what differs is told, what does not is not. */
class ComparisonTest {
    private static final Tuning TUNING = Tuning.usual();
    private static final int NOTES = 20;
    private static final int SEEDS = 200;

    /** Notes of a second, each missed by chance and wobbling slowly about where it ended. */
    private static PassageFigures passage(Random random, double meanCents, double missCents, double wobbleCents) {
        Played played = new Played();
        for (int i = 0; i < NOTES; i++) {
            double key = 60 + random.nextInt(15) + (meanCents + missCents * random.nextGaussian()) / 100;
            double phase = 2 * Math.PI * random.nextDouble();
            double width = wobbleCents * (1 + 0.2 * random.nextGaussian()) * Math.sqrt(2) / 100;
            played.sounding(0.9, s -> key + width * Math.sin(2 * Math.PI * 1.3 * s + phase))
                    .away(0.3, key);
        }
        return PassageFigures.of(played.moments(), TUNING, LevelCurve.USUAL);
    }

    private static ComparedFigure figure(Comparison comparison, ComparedFigure.What what) {
        return comparison.figures().stream()
                .filter(it -> it.what() == what)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void equalPassagesShowNoDifferenceBeyondChanceInNineOfTen() {
        Random random = new Random(21);
        int told = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Comparison comparison = Comparison.ofTwo(passage(random, 3, 10, 6), passage(random, 3, 10, 6));
            told += comparison.isAnyTold() ? 1 : 0;
        }
        assertTrue(told <= SEEDS / 10, told + " of " + SEEDS);
    }

    @Test
    void anInstrumentOfTwiceTheNoiseIsTold() {
        Random random = new Random(22);
        int told = 0;
        for (int seed = 0; seed < SEEDS / 4; seed++) {
            Comparison comparison = Comparison.ofTwo(passage(random, 3, 10, 6), passage(random, 3, 10, 12));
            ComparedFigure wobble = figure(comparison, ComparedFigure.What.WOBBLE);
            assertTrue(wobble.first() < wobble.second());
            told += wobble.isTold() ? 1 : 0;
        }
        assertTrue(told >= 0.95 * SEEDS / 4, told + " of " + SEEDS / 4);
    }

    @Test
    void aPassageThatIsSharperByThirtyCentsIsTold() {
        Random random = new Random(23);
        Comparison comparison = Comparison.ofTwo(passage(random, 20, 10, 6), passage(random, -10, 10, 6));
        ComparedFigure mean = figure(comparison, ComparedFigure.What.MEAN_OFF);
        assertTrue(mean.isTold());
        assertEquals(30, mean.difference().orElseThrow().value(), 10);
        assertFalse(figure(comparison, ComparedFigure.What.WOBBLE).isTold());
    }

    /** 2 cents between two rooms are nothing among notes that are missed by 10, but each single note has them. */
    @Test
    void theSameHandInTwoRoomsIsComparedNoteByNote() {
        Played here = new Played();
        Played there = new Played();
        Random random = new Random(24);
        for (int i = 0; i < NOTES; i++) {
            double key = 60 + random.nextInt(15) + 0.1 * random.nextGaussian();
            double little = 0.002 * random.nextGaussian();
            here.note(key, 0.9).away(0.3, key);
            there.note(key + 0.02 + little, 0.9).away(0.3, key);
        }
        PassageFigures first = PassageFigures.of(here.moments(), TUNING, LevelCurve.USUAL);
        PassageFigures second = PassageFigures.of(there.moments(), TUNING, LevelCurve.USUAL);
        assertFalse(figure(Comparison.ofTwo(first, second), ComparedFigure.What.MEAN_OFF)
                .isTold());
        ComparedFigure paired = figure(Comparison.ofSame(first, second), ComparedFigure.What.MEAN_OFF);
        assertTrue(paired.isTold());
        assertEquals(-2, paired.difference().orElseThrow().value(), 0.3);
        assertFalse(Comparison.ofSame(first, first).isAnyTold());
    }

    @Test
    void twoNotesTellNothing() {
        PassageFigures figures = PassageFigures.of(
                new Played().note(69, 1).glide(69, 72, 0.2).note(72, 1).moments(), TUNING, LevelCurve.USUAL);
        Comparison comparison = Comparison.ofTwo(figures, figures);
        assertTrue(comparison.figures().stream().allMatch(it -> it.difference().isEmpty()));
        assertFalse(comparison.isAnyTold());
    }
}
