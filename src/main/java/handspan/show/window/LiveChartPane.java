package handspan.show.window;

import handspan.show.chart.LiveChartView;
import handspan.show.scene.Block;
import handspan.show.scene.Sight;
import java.awt.BorderLayout;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The place of a chart that moves on a page. The charts themselves go on from page to page. */
final class LiveChartPane extends JPanel implements BlockPane, Column.Growing {
    private static final long serialVersionUID = 1;
    private static final int LEAST_PX = 170;
    private static final int ASIDE_PX = 160;

    private final transient Looks looks;
    private final transient Charts charts;
    private @Nullable LiveChartView shown;
    /** Whether the page is about something else. */
    private boolean aside;

    LiveChartPane(Looks looks, Charts charts) {
        super(new BorderLayout());
        this.looks = looks;
        this.charts = charts;
        setOpaque(false);
    }

    @Override
    public boolean takes(Block block) {
        return block instanceof Block.Live;
    }

    @Override
    public void show(Block block) {
        if (block instanceof Block.Live live) {
            aside = live.sight() instanceof Sight.Sent;
            LiveChartView view = charts.view(live.sight());
            if (view != shown || view.getParent() != this) {
                shown = view;
                view.setVisible(true);
                removeAll();
                add(view);
                revalidate();
                repaint();
            }
        }
    }

    @Override
    public int leastHeight() {
        return (int) Math.round((aside ? ASIDE_PX : LEAST_PX) * looks.chartScale());
    }

    @Override
    public boolean yields() {
        return aside;
    }
}
