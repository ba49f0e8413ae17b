package handspan.show.window;

import handspan.Waits;
import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javax.swing.KeyStroke;

/**
 * Presses real keys and clicks with a real mouse, as the system hands them to every program, and counts. Each call
 * returns when the window has dealt with it.
 */
final class Fingers implements AutoCloseable {
    private static final int DOUBLE = 2;

    private final Robot robot;
    /** Counted going down: what a key does may take away the part that would hear it come up. */
    private final AtomicInteger keysHeard = new AtomicInteger();

    private final AtomicInteger buttonsUp = new AtomicInteger();
    private final AWTEventListener listener = event -> {
        if (event.getID() == KeyEvent.KEY_PRESSED) {
            keysHeard.incrementAndGet();
        } else if (event.getID() == MouseEvent.MOUSE_RELEASED) {
            buttonsUp.incrementAndGet();
        }
    };
    private int keysDown;
    private int buttonsDown;
    private int keys;
    private int clicks;

    Fingers() throws AWTException {
        // nothing is waited for between down and up: a key kept down is repeated, and the second of two clicks would be
        // late
        robot = new Robot();
        Toolkit.getDefaultToolkit().addAWTEventListener(listener, AWTEvent.KEY_EVENT_MASK | AWTEvent.MOUSE_EVENT_MASK);
    }

    /** Keys pressed so far; one with Ctrl, Alt or Shift counts once. */
    int keys() {
        return keys;
    }

    /** Clicks so far; a double click counts twice. */
    int clicks() {
        return clicks;
    }

    /** A key by the name that offers have, for example {@code ctrl ENTER}. */
    void press(String name) {
        KeyStroke stroke = KeyStroke.getKeyStroke(name);
        press(stroke.getModifiers(), stroke.getKeyCode());
        keys++;
    }

    /** A key after which there may be no window any more to deal with it. */
    void pressLast(String name) {
        KeyStroke stroke = KeyStroke.getKeyStroke(name);
        strike(stroke.getModifiers(), stroke.getKeyCode());
        keys++;
    }

    /** The same key twice, as fast as can be. */
    void pressTwice(String name) {
        KeyStroke stroke = KeyStroke.getKeyStroke(name);
        strike(stroke.getModifiers(), stroke.getKeyCode());
        press(stroke.getModifiers(), stroke.getKeyCode());
        keys += DOUBLE;
    }

    private void press(int modifiers, int code) {
        strike(modifiers, code);
        Waits.until(() -> keysHeard.get() >= keysDown, () -> keysHeard + " of " + keysDown + " keys arrived");
        settle();
    }

    private void strike(int modifiers, int code) {
        int[][] all = {
            {InputEvent.CTRL_DOWN_MASK, KeyEvent.VK_CONTROL},
            {InputEvent.ALT_DOWN_MASK, KeyEvent.VK_ALT},
            {InputEvent.SHIFT_DOWN_MASK, KeyEvent.VK_SHIFT}
        };
        for (int[] one : all) {
            if ((modifiers & one[0]) != 0) {
                robot.keyPress(one[1]);
                keysDown++;
            }
        }
        robot.keyPress(code);
        robot.keyRelease(code);
        keysDown++;
        for (int[] one : all) {
            if ((modifiers & one[0]) != 0) {
                robot.keyRelease(one[1]);
            }
        }
    }

    /** Small letters, digits and the signs of a target. */
    void type(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (letter == ':') {
                press(InputEvent.SHIFT_DOWN_MASK, KeyEvent.VK_SEMICOLON);
            } else {
                press(0, KeyEvent.getExtendedKeyCodeForChar(letter));
            }
            keys++;
        }
    }

    void click(Component component) {
        click(() -> middle(component, new Rectangle(component.getSize())), 1);
    }

    void clickTwice(Component component, Rectangle part) {
        click(() -> middle(component, part), DOUBLE);
    }

    private static Point middle(Component component, Rectangle part) {
        Point at = component.getLocationOnScreen();
        return new Point(at.x + part.x + part.width / 2, at.y + part.y + part.height / 2);
    }

    private void click(Supplier<Point> where, int times) {
        Point at = asked(where);
        robot.mouseMove(at.x, at.y);
        for (int i = 0; i < times; i++) {
            robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
            robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        }
        buttonsDown += times;
        clicks += times;
        Waits.until(() -> buttonsUp.get() >= buttonsDown, () -> buttonsUp + " of " + buttonsDown + " clicks arrived");
        settle();
    }

    /** What is on the screen there now. */
    BufferedImage picture(Component component) {
        settle();
        Toolkit.getDefaultToolkit().sync();
        Point at = asked(component::getLocationOnScreen);
        return robot.createScreenCapture(new Rectangle(at, component.getSize()));
    }

    /**
     * Returns when all that was asked of the event thread before, painting too, is done. Not when it is idle: a window
     * that draws thirty times a second hardly ever is.
     */
    void settle() {
        asked(() -> true);
        asked(() -> true);
    }

    /** Asks the event thread. */
    static <T> T asked(Supplier<T> made) {
        if (EventQueue.isDispatchThread()) {
            return made.get();
        }
        Object[] result = new Object[1];
        try {
            EventQueue.invokeAndWait(() -> result[0] = made.get());
        } catch (InterruptedException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
        @SuppressWarnings("unchecked")
        T asked = (T) result[0];
        return asked;
    }

    @Override
    public void close() {
        Toolkit.getDefaultToolkit().removeAWTEventListener(listener);
    }
}
