package handspan.music.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OnsetBendTest {
    private static final double EXACT = 1e-9;
    private static final double STEP_KEYS = 0.02;

    /** Every known scale in two temperaments, and three of uneven or crowded steps. */
    private static List<ScaleLadder> ladders() {
        List<ScaleLadder> ladders = new ArrayList<>();
        List<Scale> scales = new ArrayList<>(Scales.all());
        scales.add(new Scale("lopsided", List.of(0.0, 30.0, 1000.0)));
        scales.add(new Scale("crowded", List.of(0.0, 10.0, 20.0, 700.0, 710.0)));
        scales.add(new Scale("lonely", List.of(0.0)));
        for (Scale scale : scales) {
            ladders.add(ScaleLadder.of(scale, EqualDivision.TWELVE, Tonic.of(9), 57, 81));
            ladders.add(ScaleLadder.of(scale, EqualDivision.TWELVE, Tonic.of(0), 59, 71));
        }
        ladders.add(ScaleLadder.of(Scales.named("chromatic"), new EqualDivision(53), Tonic.of(0), 60, 72));
        ladders.add(ScaleLadder.of(Scales.named("chromatic"), new EqualDivision(5), Tonic.of(0), 60, 84));
        return ladders;
    }

    /**
     * Where the hand rests is the note exactly, unless it lies beyond an outermost note by more than half a cell; the
     * shift is the same within 60 cents, and never more than half the gap to a neighbour.
     */
    @Test
    void theRestingPlaceIsTheNote() {
        Random random = new Random(41);
        for (ScaleLadder ladder : ladders()) {
            for (int i = 0; i < 200; i++) {
                double key = 57 + 24 * random.nextDouble();
                OnsetBend bend = OnsetBend.at(key, ladder);
                int note = ladder.nearest(key);
                boolean between = key >= ladder.key(0) && key <= ladder.key(ladder.size() - 1);
                if (between) {
                    assertEquals(ladder.key(note), key + bend.shift(key), EXACT);
                }
                assertEquals(bend.shift(key), bend.shift(key + 0.599), EXACT);
                assertEquals(bend.shift(key), bend.shift(key - 0.599), EXACT);
                if (ladder.size() > 1) {
                    assertTrue(Math.abs(bend.shift(key)) <= gap(ladder, note) / 2 + EXACT);
                }
            }
        }
    }

    private static double gap(ScaleLadder ladder, int note) {
        double below = note == 0 ? 0 : ladder.key(note) - ladder.key(note - 1);
        double above = note == ladder.size() - 1 ? 0 : ladder.key(note + 1) - ladder.key(note);
        return Math.max(below, above);
    }

    @Test
    void theBentMapAlwaysRises() {
        Random random = new Random(43);
        for (ScaleLadder ladder : ladders()) {
            for (int i = 0; i < 25; i++) {
                OnsetBend bend = OnsetBend.at(57 + 24 * random.nextDouble(), ladder);
                double before = Double.NEGATIVE_INFINITY;
                for (double key = 50; key < 90; key += STEP_KEYS) {
                    double bent = key + bend.shift(key);
                    if (!(bent > before)) {
                        fail("at " + key + " with " + bend);
                    }
                    before = bent;
                }
            }
        }
    }

    /** Chromatic, at rest 30 cents above A4: 30 cents down there, nothing left at B4 and at G4. */
    @Test
    void theShiftIsGoneTwoNotesAway() {
        ScaleLadder chromatic = ScaleLadder.of(Scales.named("chromatic"), EqualDivision.TWELVE, Tonic.of(9), 57, 81);
        OnsetBend bend = OnsetBend.at(69.3, chromatic);
        assertEquals(-0.3, bend.shift(69.3), EXACT);
        assertEquals(-0.3, bend.shift(68.75), EXACT);
        assertEquals(0, bend.shift(71), EXACT);
        assertEquals(0, bend.shift(67), EXACT);
        assertTrue(bend.shift(70.5) < 0 && bend.shift(70.5) > -0.3);
    }

    @Test
    void noBendAddsNothing() {
        assertEquals(0, OnsetBend.NONE.shift(69.3), EXACT);
    }
}
