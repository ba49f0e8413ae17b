package handspan.show.window;

import handspan.show.chart.Theme;
import handspan.show.scene.Guide;
import handspan.show.scene.Offer;
import handspan.show.scene.Screen;
import handspan.show.scene.Station;
import handspan.show.scene.Wish;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.ActionMap;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;

/**
 * All that is in the window: stations along one edge, the page, words along the foot. Draws what the guide shows each
 * time it is asked to {@link #refresh}, and hands on what the player wants. Used by the event thread alone.
 */
final class EveningPane extends JPanel {
    private static final long serialVersionUID = 1;

    private static final int NARROW_PX = 860;

    /** Longer than keyboards wait before they repeat a key. */
    private static final long KEPT_DOWN_MS = 1000;

    private final transient Supplier<Screen> screens;
    private final transient Consumer<Wish> wishes;
    private final transient Charts charts = new Charts(Theme.DARK);
    private transient @Nullable Looks looks;
    private transient @Nullable RailPane rail;
    private transient @Nullable PagePane page;
    private transient @Nullable FootPane foot;
    private transient List<Offer> keyed = List.of();
    private @Nullable JScrollPane scroll;
    private transient @Nullable Component followed;
    private boolean dark;
    private boolean stageOnly;
    private boolean placing;
    private transient @Nullable Station station;
    private @Nullable KeyStroke lastStroke;
    private long lastMs;

    /** Content that draws what a guide shows, and tells it what is wanted. */
    EveningPane(Guide guide) {
        this(guide::screen, guide::fulfil);
    }

    EveningPane(Supplier<Screen> screens, Consumer<Wish> wishes) {
        super(new BorderLayout());
        this.screens = screens;
        this.wishes = wishes;
        setFocusable(true);
        refresh();
    }

    /** Shows how all stands now. */
    void refresh() {
        Screen screen = screens.get();
        boolean wanted = screen.showing().isDark();
        if (looks == null || wanted != dark || page == null || rail == null || foot == null) {
            dark = wanted;
            build(wanted);
        }
        boolean alone = screen.showing().isStageAlone();
        if (alone != stageOnly && rail != null && foot != null) {
            stageOnly = alone;
            rail.setVisible(!alone);
            foot.setVisible(!alone);
            revalidate();
        }
        if (rail != null && page != null && foot != null) {
            rail.show(screen);
            charts.beat(screen.live());
            boolean fresh = page.show(screen.page());
            foot.show(screen.status());
            focus(page, screen.showing().station(), fresh);
        }
        List<Offer> offers = new ArrayList<>(screen.page().offers());
        offers.addAll(screen.always());
        bind(offers);
    }

    /** Whether no chart has anything worked out at the moment. */
    boolean isIdle() {
        return charts.isIdle();
    }

    /**
     * At another station the keyboard waits where it is of most use: on the list to choose from; where it plays, on
     * nothing that a blank could press. A part that goes takes the focus along, and without it no key would be heard.
     */
    private void focus(PagePane shown, Station at, boolean fresh) {
        Window window = SwingUtilities.getWindowAncestor(this);
        if (window == null || !window.isFocused()) {
            return;
        }
        Component owner = window.getFocusOwner();
        boolean within = owner != null && SwingUtilities.isDescendingFrom(owner, shown);
        placing |= at != station || (fresh && (at == Station.PLAY || !within));
        if (at != station && scroll != null) {
            scroll.getVerticalScrollBar().setValue(0);
        }
        station = at;
        follow(owner, shown);
        JComponent wanted = at == Station.PLAY ? this : shown.first().orElse(this);
        if (owner == wanted) {
            placing = false;
        } else if (placing) {
            wanted.requestFocusInWindow();
        } else if (owner == null || !SwingUtilities.isDescendingFrom(owner, this)) {
            requestFocusInWindow();
        }
    }

    /** What has the keyboard is to be seen. */
    private void follow(@Nullable Component owner, PagePane shown) {
        if (owner == followed) {
            return;
        }
        followed = owner;
        if (owner instanceof JTable table) {
            table.scrollRectToVisible(table.getCellRect(Math.max(0, table.getSelectedRow()), 0, true));
        } else if (owner instanceof JComponent one
                && one.getParent() instanceof JComponent
                && SwingUtilities.isDescendingFrom(owner, shown)) {
            // a field would scroll in itself
            ((JComponent) one.getParent()).scrollRectToVisible(one.getBounds());
        }
    }

    private void build(boolean inTheDark) {
        // the look has to be there before the first component
        Looks wanted = Looks.wear(inTheDark);
        looks = wanted;
        removeAll();
        station = null;
        rail = new RailPane(wanted, this::fulfil);
        charts.use(wanted.theme(), wanted.chartScale());
        page = new PagePane(wanted, this::fulfil, charts);
        foot = new FootPane(wanted);
        add(rail, BorderLayout.WEST);
        add(scrolled(page), BorderLayout.CENTER);
        add(foot, BorderLayout.SOUTH);
        setBackground(wanted.ink(Ink.GROUND));
        revalidate();
        repaint();
    }

    /** Keys of its own would come before those of the page. */
    private JScrollPane scrolled(PagePane content) {
        JScrollPane made = new JScrollPane(
                content, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        made.setBorder(BorderFactory.createEmptyBorder());
        made.getVerticalScrollBar().setFocusable(false);
        made.getAccessibleContext().setAccessibleName("page");
        SwingUtilities.replaceUIInputMap(made, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, null);
        scroll = made;
        return made;
    }

    /** Where the window is narrow the stations are dots. */
    @Override
    public void doLayout() {
        if (rail != null && looks != null) {
            rail.narrow(getWidth() < looks.px(NARROW_PX));
        }
        super.doLayout();
    }

    /** Turns the page up or down by what is seen of it. */
    private void turn(int direction) {
        if (scroll != null) {
            JScrollBar bar = scroll.getVerticalScrollBar();
            bar.setValue(bar.getValue() + direction * bar.getBlockIncrement(direction));
        }
    }

    private void fulfil(Wish wish) {
        wishes.accept(wish);
        refresh();
    }

    /** Keys do what is offered now, the page's own before those that are always there. */
    private void bind(List<Offer> offers) {
        if (offers.equals(keyed)) {
            return;
        }
        keyed = offers;
        InputMap keys = getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW);
        ActionMap actions = getActionMap();
        keys.clear();
        actions.clear();
        for (Offer offer : offers) {
            KeyStroke stroke = offer.key().isEmpty() ? null : KeyStroke.getKeyStroke(offer.key());
            if (stroke != null && offer.isPossible() && keys.get(stroke) == null) {
                keys.put(stroke, offer);
                actions.put(offer, new Key(stroke, offer.wish(), offer.weight() == Offer.Weight.SOUND));
            }
        }
        bindIfFree("PAGE_UP", () -> turn(-1));
        bindIfFree("PAGE_DOWN", () -> turn(1));
    }

    /** Binds a key that no offer has. */
    private void bindIfFree(String name, Runnable task) {
        InputMap keys = getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW);
        KeyStroke stroke = KeyStroke.getKeyStroke(name);
        if (keys.get(stroke) == null) {
            keys.put(stroke, name);
            getActionMap().put(name, new AbstractAction() {
                private static final long serialVersionUID = 1;

                @Override
                public void actionPerformed(ActionEvent event) {
                    task.run();
                }
            });
        }
    }

    /** What a key does. */
    private final class Key extends AbstractAction {
        private static final long serialVersionUID = 1;

        private final KeyStroke stroke;
        private final transient Wish wish;
        private final boolean sounds;

        Key(KeyStroke stroke, Wish wish, boolean sounds) {
            this.stroke = stroke;
            this.wish = wish;
            this.sounds = sounds;
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            // a key that is kept down after it has led here must not let sound through
            boolean kept = stroke.equals(lastStroke) && event.getWhen() - lastMs < KEPT_DOWN_MS;
            lastStroke = stroke;
            lastMs = event.getWhen();
            if (!(sounds && kept)) {
                fulfil(wish);
            }
        }
    }
}
