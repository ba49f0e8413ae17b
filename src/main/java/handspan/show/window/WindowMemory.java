package handspan.show.window;

import java.awt.Frame;
import java.awt.Rectangle;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import javax.swing.JFrame;

/** What the window still knows the next time it is opened: where it was, how large, and whether it was dark. */
public final class WindowMemory {
    private static final int USUAL_WIDTH_PX = 1280;
    private static final int USUAL_HEIGHT_PX = 800;
    private static final String X = "x";
    private static final String Y = "y";
    private static final String WIDTH = "width";
    private static final String HEIGHT = "height";
    private static final String DARK = "dark";

    private final Preferences kept;

    /** A memory in a node of preferences. */
    public WindowMemory(Preferences kept) {
        this.kept = kept;
    }

    /** That of whoever runs the program. */
    public static WindowMemory ofUser() {
        return new WindowMemory(Preferences.userRoot().node("handspan/window"));
    }

    /** Whether the window was dark when it was closed; dark where it never was. */
    public boolean dark() {
        return kept.getBoolean(DARK, true);
    }

    /** Where the window was, if that is still on a screen; else in the middle. */
    void place(JFrame frame) {
        Rectangle screen = frame.getGraphicsConfiguration().getBounds();
        frame.setSize(
                Math.min(screen.width, kept.getInt(WIDTH, USUAL_WIDTH_PX)),
                Math.min(screen.height, kept.getInt(HEIGHT, USUAL_HEIGHT_PX)));
        int x = kept.getInt(X, Integer.MIN_VALUE);
        int y = kept.getInt(Y, Integer.MIN_VALUE);
        // a screen that has gone since must not keep the window
        if (screen.contains(x, y)) {
            frame.setLocation(x, y);
        } else {
            frame.setLocationRelativeTo(null);
        }
    }

    /** Keeps how the window is now; its place and size only where it does not fill the screen. */
    void remember(JFrame frame, boolean dark) {
        kept.putBoolean(DARK, dark);
        if (frame.getExtendedState() == Frame.NORMAL) {
            kept.putInt(X, frame.getX());
            kept.putInt(Y, frame.getY());
            kept.putInt(WIDTH, frame.getWidth());
            kept.putInt(HEIGHT, frame.getHeight());
        }
        try {
            kept.flush();
        } catch (BackingStoreException e) {
            // it opens as usual next time
            kept.remove(X);
        }
    }
}
