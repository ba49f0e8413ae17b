package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.show.scene.Block;
import handspan.show.scene.Offer;
import handspan.show.scene.Wish;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import org.junit.jupiter.api.Test;

/**
 * Where one button follows another in the same place, a hasty hand must not get what it did not see. A click is two
 * events, down and up, and the offers may change before, between and after them.
 */
class OffersPaneTest {
    private static final Offer READY = offer("Get ready", Wish.Plain.PLAY, Offer.Weight.NEXT);
    private static final Offer LET_SOUND = offer("Let sound through", Wish.Plain.LET_SOUND, Offer.Weight.SOUND);

    private final List<Wish> wishes = new ArrayList<>();
    private final OffersPane pane = Fingers.asked(() -> new OffersPane(Looks.wear(true), wishes::add));

    private static Offer offer(String words, Wish wish, Offer.Weight weight) {
        return new Offer(words, "", wish, "", "", weight);
    }

    private void offered(Offer offer) {
        Fingers.asked(() -> {
            pane.show(new Block.Offers(List.of(offer)));
            Panes.all(pane, JButton.class).get(0).setSize(200, 40);
            return true;
        });
    }

    private void down(long ms) {
        mouse(MouseEvent.MOUSE_PRESSED, ms);
    }

    private void up(long ms) {
        mouse(MouseEvent.MOUSE_RELEASED, ms);
    }

    private void mouse(int id, long ms) {
        Fingers.asked(() -> {
            JButton button = Panes.all(pane, JButton.class).get(0);
            button.dispatchEvent(new MouseEvent(
                    button, id, ms, InputEvent.BUTTON1_DOWN_MASK, 100, 20, 1, false, MouseEvent.BUTTON1));
            return true;
        });
    }

    @Test
    void aClickDoesWhatIsOffered() {
        offered(READY);
        down(0);
        up(80);
        offered(LET_SOUND);
        down(5_000);
        up(5_080);

        assertEquals(List.of(Wish.Plain.PLAY, Wish.Plain.LET_SOUND), wishes);
    }

    @Test
    void theSecondOfTwoClicksLetsNoSoundThrough() {
        offered(READY);
        down(0);
        up(80);
        offered(LET_SOUND);
        down(160);
        up(240);

        assertEquals(List.of(Wish.Plain.PLAY), wishes);
    }

    @Test
    void aButtonThatTurnsIntoAnotherWhileItIsDownDoesNeither() {
        offered(READY);
        down(0);
        up(80);
        down(160);
        offered(LET_SOUND);
        up(240);

        assertEquals(List.of(Wish.Plain.PLAY), wishes);
    }

    @Test
    void aButtonThatTurnsWhileItIsDownServesTheNextClick() {
        offered(READY);
        down(0);
        offered(LET_SOUND);
        up(80);
        down(5_000);
        up(5_080);

        assertEquals(List.of(Wish.Plain.LET_SOUND), wishes);
    }
}
