package handspan.show.window;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;

/**
 * Lays components out one below the other at full width. Those that may grow share the height that is left; where there
 * is none, they keep their least height, some yield, and what does not fit then is cut off at the foot.
 */
final class Column implements LayoutManager {
    /** A component that takes the height that is left. */
    interface Growing {
        /** Height under which it is of no use, px. */
        int leastHeight();

        /** Whether it takes more than that. */
        default boolean grows() {
            return true;
        }

        /** Whether it is left out where there is no room for all. */
        default boolean yields() {
            return false;
        }
    }

    private static final int USUAL_WIDTH_PX = 900;

    private final int gapPx;

    Column(int gapPx) {
        this.gapPx = gapPx;
    }

    @Override
    public void layoutContainer(Container parent) {
        Insets insets = parent.getInsets();
        int width = Math.max(0, parent.getWidth() - insets.left - insets.right);
        int room = parent.getHeight() - insets.top - insets.bottom;
        int needed = height(parent, width, false);
        boolean all = needed <= room;
        if (!all) {
            needed = height(parent, width, true);
        }
        int growing = growing(parent);
        int spare = Math.max(0, room - needed);
        int y = insets.top;
        for (Component child : parent.getComponents()) {
            if (!all && yields(child)) {
                child.setBounds(insets.left, y, 0, 0);
                continue;
            }
            int height = height(child, width) + (isGrowing(child) ? spare / growing : 0);
            child.setBounds(insets.left, y, width, height);
            y += height + gapPx;
        }
    }

    private static int growing(Container parent) {
        int count = 0;
        for (Component child : parent.getComponents()) {
            count += isGrowing(child) ? 1 : 0;
        }
        return Math.max(1, count);
    }

    private static boolean isGrowing(Component child) {
        return child instanceof Growing growing && growing.grows();
    }

    private static boolean yields(Component child) {
        return child instanceof Growing growing && growing.yields();
    }

    /** Of all, or of those alone that never yield. */
    private int height(Container parent, int width, boolean least) {
        int height = -gapPx;
        for (Component child : parent.getComponents()) {
            height += least && yields(child) ? 0 : height(child, width) + gapPx;
        }
        return Math.max(0, height);
    }

    private static int height(Component child, int width) {
        if (child instanceof Growing growing) {
            return growing.leastHeight();
        }
        return child instanceof Fitting fitting ? fitting.heightFor(width) : child.getPreferredSize().height;
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        Insets insets = parent.getInsets();
        int width = parent.getWidth() > 0 ? parent.getWidth() - insets.left - insets.right : USUAL_WIDTH_PX;
        return new Dimension(
                width + insets.left + insets.right, height(parent, width, true) + insets.top + insets.bottom);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    @Override
    public void addLayoutComponent(String name, Component component) {}

    @Override
    public void removeLayoutComponent(Component component) {}
}
