package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.show.scene.Block;
import handspan.show.scene.Wish;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** The bar of a recording, driven by the mouse without a frame. */
class TakeBarPaneTest {
    private static final int WIDTH_PX = 900;
    private static final int HEIGHT_PX = 48;
    private static final double LENGTH_S = 750;

    /** A dot of a track of some 600 dots, s. */
    private static final double DOT_S = 2;

    private final List<Wish> wishes = new ArrayList<>();
    private final TakeBarPane pane = asked();

    private TakeBarPane asked() {
        List<TakeBarPane> made = new ArrayList<>();
        onTheEventThread(() -> {
            TakeBarPane bar = new TakeBarPane(Looks.wear(true), wishes::add);
            bar.setSize(WIDTH_PX, HEIGHT_PX);
            made.add(bar);
        });
        return made.get(0);
    }

    private static void onTheEventThread(Runnable done) {
        try {
            SwingUtilities.invokeAndWait(done);
        } catch (InterruptedException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    private void show(double placeS, OptionalDouble lengthS, boolean running) {
        onTheEventThread(() -> {
            pane.show(new Block.TakeBar(placeS, lengthS, running, List.of(new Block.BarMark(300, "captured near"))));
            pane.doLayout();
        });
    }

    private void mouse(int what, int x, boolean pressed) {
        TakeTrack track = pane.track();
        onTheEventThread(() -> track.dispatchEvent(new MouseEvent(
                track, what, 0, pressed ? InputEvent.BUTTON1_DOWN_MASK : 0, x, 20, 1, false, MouseEvent.BUTTON1)));
    }

    private double last() {
        return wishes.get(wishes.size() - 1) instanceof Wish.Jump jump ? jump.seconds() : Double.NaN;
    }

    @Test
    void aClickGoesThereAndADragGoesAlong() {
        show(135, OptionalDouble.of(LENGTH_S), true);
        int width = pane.track().getWidth();
        mouse(MouseEvent.MOUSE_PRESSED, width / 2, true);
        assertEquals(LENGTH_S / 2, last(), DOT_S);
        mouse(MouseEvent.MOUSE_DRAGGED, width / 4, true);
        assertEquals(LENGTH_S / 4, last(), LENGTH_S / 100);
        // held, it shows where it is held, not where the recording still is
        show(136, OptionalDouble.of(LENGTH_S), true);
        assertEquals(last(), pane.track().placeS());
        int count = wishes.size();
        mouse(MouseEvent.MOUSE_DRAGGED, width / 4, true);
        assertEquals(count, wishes.size(), "no wish where the mouse has not moved");
        mouse(MouseEvent.MOUSE_DRAGGED, -50, true);
        assertEquals(0, last());
        mouse(MouseEvent.MOUSE_DRAGGED, width + 50, true);
        assertEquals(LENGTH_S, last());
        mouse(MouseEvent.MOUSE_RELEASED, width, false);
        assertEquals(136, pane.track().placeS());
    }

    @Test
    void beforeItsLengthIsKnownTheMouseDoesNothing() {
        show(3, OptionalDouble.empty(), true);
        mouse(MouseEvent.MOUSE_PRESSED, 100, true);
        assertTrue(wishes.isEmpty());
    }

    @Test
    void itSaysItsPlaceToThoseWhoHearTheScreen() {
        show(135, OptionalDouble.of(LENGTH_S), false);
        var spoken = pane.track().getAccessibleContext();
        assertEquals("place in the recording", spoken.getAccessibleName());
        assertEquals("2:15 of 12:30, minutes:seconds", spoken.getAccessibleDescription());
        assertEquals(135.0, spoken.getAccessibleValue().getCurrentAccessibleValue());
        assertEquals(LENGTH_S, spoken.getAccessibleValue().getMaximumAccessibleValue());
        spoken.getAccessibleValue().setCurrentAccessibleValue(60);
        assertEquals(60, last());
    }

    @Test
    void aTipTellsThePlaceUnderTheMouseAndTheMarkThere() {
        show(0, OptionalDouble.of(LENGTH_S), true);
        TakeTrack track = pane.track();
        int x = 0;
        while (track.secondsAt(x) < 300) {
            x++;
        }
        String near = track.getToolTipText(new MouseEvent(track, MouseEvent.MOUSE_MOVED, 0, 0, x, 20, 0, false));
        assertTrue(near.startsWith("click or drag to go to 5:0"), near);
        assertTrue(near.endsWith(" min:s: captured near"), near);
    }

    @Test
    void whatHasPassedIsSeen() {
        show(100, OptionalDouble.of(LENGTH_S), true);
        int early = filled();
        show(600, OptionalDouble.of(LENGTH_S), true);
        assertNotEquals(early, filled());
        // five sixths of the way, give or take the knob
        assertEquals(600 / 100.0, filled() / (double) early, 1.0);
    }

    /** Dots of the passed part in the middle of the track. */
    private int filled() {
        BufferedImage image =
                new BufferedImage(pane.track().getWidth(), pane.track().getHeight(), BufferedImage.TYPE_INT_RGB);
        onTheEventThread(() -> pane.track().paint(image.createGraphics()));
        int line = Looks.wear(true).theme().line().getRGB();
        int count = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            count += image.getRGB(x, image.getHeight() / 2) == line ? 1 : 0;
        }
        return count;
    }
}
