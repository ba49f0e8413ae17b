package handspan.show.chart;

import handspan.live.session.Snapshot;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/**
 * Shows a live chart. It has no timer of its own: a window calls {@link #beat} some thirty times a second, and it is
 * painted anew only where it can be seen and its chart has changed. Event thread only.
 */
public final class LiveChartView extends JComponent {
    private static final long serialVersionUID = 1;
    private static final Dimension LEAST = new Dimension(560, 320);
    private static final Dimension USUAL = new Dimension(900, 420);

    private final transient LiveChart chart;
    private Theme theme;
    private double scale = 1;
    private long painted = -1;

    /** A view of a chart. */
    public LiveChartView(LiveChart chart, Theme theme) {
        this.chart = chart;
        this.theme = theme;
        setOpaque(true);
        setMinimumSize(LEAST);
        setPreferredSize(USUAL);
        setName(chart.name());
        setToolTipText(chart.about());
    }

    /**
     * Hands a snapshot on to the chart, seen or not, so that a chart that comes into sight knows its last seconds.
     *
     * @return whether it will be painted anew
     */
    public boolean beat(Snapshot snapshot) {
        chart.onSnapshot(snapshot);
        if (!isShowing() || chart.version() == painted) {
            return false;
        }
        painted = chart.version();
        repaint();
        return true;
    }

    /** Draws in another theme from now on. */
    public void use(Theme other) {
        theme = other;
        repaint();
    }

    /** Draws all of it so many times as large from now on, letters too. */
    public void enlarge(double times) {
        scale = times;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g2 = (Graphics2D) graphics.create();
        // what rounding leaves over at the edges
        g2.setPaint(theme.background());
        g2.fillRect(0, 0, getWidth(), getHeight());
        g2.scale(scale, scale);
        chart.draw(g2, (int) Math.round(getWidth() / scale), (int) Math.round(getHeight() / scale), theme);
        g2.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Told();
        }
        return accessibleContext;
    }

    /** What a screen reader says: the chart's name, and what it shows when it is asked. */
    private final class Told extends AccessibleJComponent {
        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }

        @Override
        public String getAccessibleName() {
            return chart.name();
        }

        @Override
        public String getAccessibleDescription() {
            return chart.words();
        }
    }
}
