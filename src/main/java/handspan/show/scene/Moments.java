package handspan.show.scene;

import java.util.Locale;

/** Times of a recording in words. */
public final class Moments {
    private static final int MINUTE_S = 60;
    private static final int HOUR_S = 3600;

    private Moments() {}

    /** Minutes and seconds, {@code 2:15}; with hours where there are any, {@code 1:02:15}. */
    public static String words(double seconds) {
        long whole = (long) Math.floor(Math.max(0, seconds));
        long s = whole % MINUTE_S;
        return whole < HOUR_S
                ? String.format(Locale.ROOT, "%d:%02d", whole / MINUTE_S, s)
                : String.format(Locale.ROOT, "%d:%02d:%02d", whole / HOUR_S, whole % HOUR_S / MINUTE_S, s);
    }
}
