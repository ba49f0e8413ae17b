package handspan.show.chart;

import handspan.live.session.Snapshot;
import java.awt.Graphics2D;

/**
 * A chart that moves. It is told of every snapshot that its window polls, keeps what it shows itself, for ten seconds
 * at most, and draws it when asked. It knows nothing of windows. Owned by one thread, that which draws.
 */
public interface LiveChart {
    /** What it is called, for a heading and for those who are read to. */
    String name();

    /** What is to be seen on it, with units, for whoever points at it. */
    String about();

    /** What it shows at the moment, in words with units. */
    String words();

    /** A number that rises whenever another picture is to be drawn. */
    long version();

    /** How all stands now. */
    void onSnapshot(Snapshot snapshot);

    /**
     * Draws it with its upper left corner at 0, 0.
     *
     * @param g2 may be scaled, as on a fine screen: what stays is then drawn as finely
     * @param widthPx in the units of {@code g2}
     * @param heightPx likewise
     */
    void draw(Graphics2D g2, int widthPx, int heightPx, Theme theme);
}
