package handspan.show.window;

import handspan.show.scene.Block;
import handspan.show.scene.Page;
import handspan.show.scene.Station;
import handspan.show.scene.Wish;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.Scrollable;
import org.jspecify.annotations.Nullable;

/** A station's page. As long as its blocks stay of the same kinds, its parts stay and show what is new. */
final class PagePane extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1;
    private static final int UNIT_PX = 40;
    private static final int GAP_PX = 12;
    private static final int EDGE_PX = 24;

    private final transient Looks looks;
    private final transient Consumer<Wish> wishes;
    private final transient Charts charts;
    private transient List<BlockPane> panes = List.of();
    private transient @Nullable Station station;

    PagePane(Looks looks, Consumer<Wish> wishes, Charts charts) {
        super(new Column(looks.px(GAP_PX)));
        this.looks = looks;
        this.wishes = wishes;
        this.charts = charts;
        setBackground(looks.ink(Ink.GROUND));
        int edge = looks.px(EDGE_PX);
        setBorder(BorderFactory.createEmptyBorder(edge, edge, edge, edge));
    }

    /**
     * Shows a page.
     *
     * @return whether its parts are new
     */
    boolean show(Page page) {
        boolean fresh = page.station() != station || !takes(page.blocks());
        if (fresh) {
            station = page.station();
            build(page.blocks());
        }
        for (int i = 0; i < panes.size(); i++) {
            panes.get(i).show(page.blocks().get(i));
        }
        if (fresh) {
            revalidate();
            repaint();
        }
        return fresh;
    }

    private boolean takes(List<Block> blocks) {
        if (blocks.size() != panes.size()) {
            return false;
        }
        for (int i = 0; i < blocks.size(); i++) {
            if (!panes.get(i).takes(blocks.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** Parts that can show their block are used again, so that neither focus nor selection is lost. */
    private void build(List<Block> blocks) {
        List<BlockPane> before = new ArrayList<>(panes);
        List<BlockPane> next = new ArrayList<>();
        for (Block block : blocks) {
            BlockPane pane =
                    before.stream().filter(old -> old.takes(block)).findFirst().orElseGet(() -> made(block));
            before.remove(pane);
            next.add(pane);
        }
        panes = next;
        before.forEach(pane -> remove((Component) pane));
        for (int i = 0; i < next.size(); i++) {
            Component component = (Component) next.get(i);
            // taken out and put in again, it would lose the focus
            if (component.getParent() == this) {
                setComponentZOrder(component, i);
            } else {
                add(component, i);
            }
        }
    }

    /** Where the keyboard waits on this page as long as nobody has said otherwise: its first list to choose from. */
    Optional<JComponent> first() {
        return panes.stream()
                .filter(TablePane.class::isInstance)
                .map(pane -> ((TablePane) pane).table())
                .filter(JTable::isFocusable)
                .<JComponent>map(table -> table)
                .findFirst();
    }

    private BlockPane made(Block block) {
        if (block instanceof Block.Prompt
                || block instanceof Block.Words
                || block instanceof Block.Heading
                || block instanceof Block.Keys) {
            return WordsPane.of(looks, block);
        } else if (block instanceof Block.Ring) {
            return new RingPane(looks, charts);
        } else if (block instanceof Block.Table) {
            return new TablePane(looks, wishes);
        } else if (block instanceof Block.Fields) {
            return new FieldsPane(looks, wishes);
        } else if (block instanceof Block.Offers) {
            return new OffersPane(looks, wishes);
        } else if (block instanceof Block.Steps) {
            return new StepsPane(looks);
        } else if (block instanceof Block.Live) {
            return new LiveChartPane(looks, charts);
        } else if (block instanceof Block.TakeBar) {
            return new TakeBarPane(looks, wishes);
        } else if (block instanceof Block.Stage) {
            return new StagePane(looks);
        }
        throw new IllegalStateException("no part for " + block);
    }

    // ---- as wide as what it is seen through, and no lower; what does not fit is scrolled to ----

    /** Another width is another height. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean wider = width != getWidth();
        super.setBounds(x, y, width, height);
        if (wider) {
            revalidate();
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return looks.px(UNIT_PX);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(looks.px(UNIT_PX), visible.height - looks.px(UNIT_PX));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getPreferredSize().height <= getParent().getHeight();
    }
}
