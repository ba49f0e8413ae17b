package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A line for each instrument, whatever stands in it. */
class EnsembleTableTest {
    private static final EnsembleTable.Row PLAYS =
            new EnsembleTable.Row(9, "Wren", "kitchen", "up", "playing", "A4", "+3", "-12.3", "");
    private static final EnsembleTable.Row MISSING =
            new EnsembleTable.Row(10, "Rook", "studio", "", "missing", "", "", "", "port X\nis not there");

    @Test
    void numbersStandRightAndWordsLeft() {
        assertEquals(
                List.of(
                        " #  instrument  room     link  state    note  cents  level dB  what is wrong",
                        " 9  Wren        kitchen  up    playing  A4       +3     -12.3",
                        "10  Rook        studio         missing                         port X is not there"),
                EnsembleTable.lines(List.of(PLAYS, MISSING), 200));
    }

    @Test
    void whatDoesNotFitIsCutAtItsEnd() {
        List<String> lines = EnsembleTable.lines(List.of(PLAYS, MISSING), 70);
        assertEquals("10  Rook        studio         missing                         port ..", lines.get(2));
        assertEquals(70, lines.get(2).length());
    }

    @Test
    void aLongNameLeavesRoomForNoteAndTrouble() {
        EnsembleTable.Row row = new EnsembleTable.Row(
                1, "Willowreach of the second bench", "kitchen", "up", "away", "", "", "", "light");
        assertEquals(
                "1  Willowreach of t..  kitchen  up    away                          light",
                EnsembleTable.lines(List.of(row), 200).get(1));
    }
}
