package handspan.show.window;

import handspan.show.scene.Guide;
import handspan.show.scene.Wish;
import java.awt.Dimension;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.CountDownLatch;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.WindowConstants;

/**
 * The desktop program's frame. It draws what a {@link Guide} shows thirty times a second and never waits for anything
 * itself; sound does not wait for it. Closing fades first.
 */
public final class EveningWindow {
    private static final int FRAME_MS = 33;
    private static final int UNSEEN_MS = 250;
    private static final int LEAST_WIDTH_PX = 900;
    private static final int LEAST_HEIGHT_PX = 600;

    private final Guide guide;
    private final WindowMemory memory;
    private final CountDownLatch closed = new CountDownLatch(1);

    /**
     * A window; nothing is seen before {@link #showAndWait}.
     *
     * @param guide whose screens it shows
     * @param memory of the window before
     */
    public EveningWindow(Guide guide, WindowMemory memory) {
        this.guide = guide;
        this.memory = memory;
    }

    /**
     * Shows the window and waits until it is closed and all is let go.
     *
     * @throws IllegalStateException on the event thread, which must not wait, or where no screen can be opened
     */
    public void showAndWait() throws InterruptedException {
        if (!Screens.canBeOpened()) {
            throw new IllegalStateException("no screen can be opened here");
        }
        if (SwingUtilities.isEventDispatchThread()) {
            throw new IllegalStateException("the event thread cannot wait for a window: call from another");
        }
        try {
            SwingUtilities.invokeAndWait(this::open);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("the window could not be built", e);
        }
        closed.await();
    }

    private void open() {
        Thread.currentThread().setUncaughtExceptionHandler((thread, mistake) -> guide.onMistake(mistake));
        JFrame frame = new JFrame("Handspan");
        frame.setIconImages(Emblem.pictures());
        EveningPane pane = new EveningPane(guide);
        Timer timer = new Timer(FRAME_MS, event -> pane.refresh());
        timer.setCoalesce(true);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                guide.fulfil(Wish.Plain.CLOSE);
            }

            @Override
            public void windowIconified(WindowEvent event) {
                // charts go on, so that they know their last seconds when they are seen again
                timer.setDelay(UNSEEN_MS);
            }

            @Override
            public void windowDeiconified(WindowEvent event) {
                timer.setDelay(FRAME_MS);
            }
        });
        guide.closes(() -> close(frame, timer));
        frame.setContentPane(pane);
        frame.setMinimumSize(new Dimension(LEAST_WIDTH_PX, LEAST_HEIGHT_PX));
        memory.place(frame);
        frame.setVisible(true);
        timer.start();
        guide.begin();
    }

    private void close(JFrame frame, Timer timer) {
        memory.remember(frame, guide.screen().showing().dark());
        frame.setTitle("Handspan: fading ...");
        guide.end(() -> SwingUtilities.invokeLater(() -> {
            timer.stop();
            frame.dispose();
            closed.countDown();
        }));
    }
}
