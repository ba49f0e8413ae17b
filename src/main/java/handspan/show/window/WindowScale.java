package handspan.show.window;

import com.formdev.flatlaf.util.UIScale;

/** How large the window's letters and all else are, beyond what the system asks for. */
public final class WindowScale {
    /** As large as the system has it, %. */
    public static final int LEAST_PERCENT = 100;

    /** Twice that, %. */
    public static final int MOST_PERCENT = 200;

    private WindowScale() {}

    /**
     * Has windows that are made from now on so large.
     *
     * @param percent 100..200
     * @throws IllegalArgumentException for another
     */
    public static void use(int percent) {
        if (percent < LEAST_PERCENT || percent > MOST_PERCENT) {
            throw new IllegalArgumentException(
                    "scale " + percent + " % (100..200): for smaller letters make the window larger");
        }
        UIScale.setZoomFactor(percent / 100f);
    }
}
