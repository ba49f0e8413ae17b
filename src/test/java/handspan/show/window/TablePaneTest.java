package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.show.scene.Block;
import handspan.show.scene.Wish;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is selected is a thing, not a place: boards come and go while a hand is on its way to the key. */
class TablePaneTest {
    private final List<Wish> wishes = new ArrayList<>();
    private final TablePane pane = Fingers.asked(() -> new TablePane(Looks.wear(true), wishes::add));

    private void listed(String... names) {
        Fingers.asked(() -> {
            pane.show(new Block.Table(
                    "ports",
                    List.of("name"),
                    Stream.of(names)
                            .map(name -> new Block.Row(List.of(name), Optional.of(new Wish.Open(name)), ""))
                            .toList()));
            return true;
        });
    }

    private void select(int row) {
        Fingers.asked(() -> {
            pane.table().setRowSelectionInterval(row, row);
            return true;
        });
    }

    private void enter() {
        Fingers.asked(() -> {
            pane.table().getActionMap().get("choose").actionPerformed(null);
            return true;
        });
    }

    @Test
    void aPortThatComesAboveDoesNotTakeTheSelection() {
        listed("flute", "viol");
        select(1);
        listed("drum", "flute", "viol");
        enter();

        assertEquals(List.of(new Wish.Open("viol")), wishes);
    }

    @Test
    void whereWhatWasSelectedIsGoneTheRowInItsPlaceIsSelected() {
        listed("drum", "flute", "viol");
        select(2);
        listed("drum", "flute");
        enter();

        assertEquals(List.of(new Wish.Open("flute")), wishes);
    }

    @Test
    void ofRowsWithTheSameNameTheOneInTheSamePlaceStaysSelected() {
        listed("viol", "viol", "viol");
        select(2);
        listed("viol", "viol", "viol", "drum");

        assertEquals(2, Fingers.asked(() -> pane.table().getSelectedRow()));
    }
}
