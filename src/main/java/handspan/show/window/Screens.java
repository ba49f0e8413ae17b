package handspan.show.window;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.awt.Toolkit;

/** Whether there is a screen. */
public final class Screens {
    private Screens() {}

    /**
     * Whether a screen can really be opened. That the environment names one is not enough: the name may be stale, so
     * this connects to it.
     */
    public static boolean canBeOpened() {
        try {
            if (GraphicsEnvironment.isHeadless()) {
                return false;
            }
            GraphicsEnvironment.getLocalGraphicsEnvironment()
                    .getDefaultScreenDevice()
                    .getDefaultConfiguration();
            return Toolkit.getDefaultToolkit().getScreenSize().width > 0;
        } catch (HeadlessException | AWTError | LinkageError | InternalError e) {
            // AWTError: nobody answers; LinkageError: no window libraries here, or a second try after a failed first
            return false;
        }
    }
}
