package handspan.show.window;

import handspan.show.chart.LiveChartView;
import handspan.show.scene.Block;
import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import org.jspecify.annotations.Nullable;

/**
 * A ring that fills while a hand is still. Beside it, large, what keeps it from filling; while nothing does, a chart
 * where there is room for one.
 */
final class RingPane extends DrawnPane implements BlockPane, Column.Growing {
    private static final long serialVersionUID = 1;
    private static final int LEAST_PX = 150;
    private static final int MOST_PX = 340;
    private static final int CHART_LEAST_WIDTH_PX = 380;
    private static final int CHART_LEAST_HEIGHT_PX = 200;

    private final transient Looks looks;
    private final transient Charts charts;
    private final WrappedText why;
    private @Nullable LiveChartView chart;
    private transient Block.Ring ring = new Block.Ring(0, "", "");

    RingPane(Looks looks, Charts charts) {
        this.looks = looks;
        this.charts = charts;
        this.why = new WrappedText(looks.font(Font.PLAIN, Letters.WHY));
        add(why);
    }

    @Override
    public boolean takes(Block block) {
        return block instanceof Block.Ring;
    }

    @Override
    public void show(Block block) {
        if (block instanceof Block.Ring next && !next.equals(ring)) {
            ring = next;
            why.show(
                    next.why(),
                    looks.ink(Ink.TEXT),
                    next.why().isEmpty() ? null : looks.mark(handspan.show.scene.Tone.LOOK),
                    "");
            beside(next);
            getAccessibleContext().setAccessibleName(next.why().isEmpty() ? "steady for " + next.inside() : next.why());
            revalidate();
            repaint();
        }
    }

    private void beside(Block.Ring next) {
        LiveChartView wanted = next.beside().map(charts::view).orElse(null);
        LiveChartView before = chart;
        if (before != null && before != wanted && before.getParent() == this) {
            remove(before);
        }
        if (wanted != null) {
            if (wanted.getParent() != this) {
                add(wanted);
            }
            wanted.setVisible(next.why().isEmpty());
        }
        chart = wanted;
    }

    private int diameterPx() {
        int most = Math.min(looks.px(MOST_PX), getWidth() / 2);
        return Math.max(looks.px(40), Math.min(most, getHeight() - looks.px(16)));
    }

    @Override
    public void doLayout() {
        int left = diameterPx() + looks.px(32);
        int width = Math.max(0, getWidth() - left);
        int height = why.heightFor(width);
        why.setBounds(left, Math.max(0, (getHeight() - height) / 2), width, height);
        LiveChartView view = chart;
        if (view != null) {
            boolean fits = width >= looks.px(CHART_LEAST_WIDTH_PX) && getHeight() >= looks.px(CHART_LEAST_HEIGHT_PX);
            view.setBounds(left, 0, fits ? width : 0, fits ? getHeight() : 0);
        }
    }

    @Override
    public int leastHeight() {
        int beside = Math.max(1, getWidth() - diameterPx() - looks.px(32));
        return Math.max(looks.px(LEAST_PX), why.heightFor(beside));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = Looks.smooth(graphics);
        int d = diameterPx();
        int wide = Math.max(looks.px(10), d / 9);
        double x = wide / 2.0 + 4;
        double y = (getHeight() - d) / 2.0 + wide / 2.0;
        double size = d - wide;
        pen.setStroke(new BasicStroke(wide, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        pen.setColor(looks.ink(Ink.LINES));
        pen.draw(new Ellipse2D.Double(x, y, size, size));
        pen.setColor(looks.ink(Ink.FILL));
        pen.draw(new Arc2D.Double(x, y, size, size, 90, -360 * ring.fill01(), Arc2D.OPEN));
        pen.setColor(looks.ink(Ink.TEXT));
        pen.setFont(looks.atLeastSmall(Font.BOLD, d / 5f));
        FontMetrics metrics = pen.getFontMetrics();
        pen.drawString(ring.inside(), (float) (x + size / 2 - metrics.stringWidth(ring.inside()) / 2.0), (float)
                (y + size / 2 + metrics.getAscent() / 2.0 - metrics.getDescent() / 2.0));
        pen.dispose();
    }
}
