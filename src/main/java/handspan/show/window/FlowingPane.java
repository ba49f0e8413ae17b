package handspan.show.window;

import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JPanel;

/** Components side by side, in as many rows as the width asks for. */
class FlowingPane extends JPanel implements Fitting {
    private static final long serialVersionUID = 1;

    private final int gapPx;

    FlowingPane(int gapPx) {
        super(null);
        this.gapPx = gapPx;
        setOpaque(false);
    }

    @Override
    public int heightFor(int widthPx) {
        return arrange(widthPx, false);
    }

    @Override
    public void doLayout() {
        arrange(getWidth(), true);
    }

    private int arrange(int widthPx, boolean place) {
        int x = 0;
        int y = 0;
        int row = 0;
        for (Component child : getComponents()) {
            Dimension size = child.getPreferredSize();
            if (x > 0 && x + size.width > widthPx) {
                x = 0;
                y += row + gapPx / 2;
                row = 0;
            }
            if (place) {
                child.setBounds(x, y, Math.min(size.width, widthPx), size.height);
            }
            x += size.width + gapPx;
            row = Math.max(row, size.height);
        }
        return y + row;
    }

    /** As high as it needs to be at the width that is there. */
    @Override
    public Dimension getPreferredSize() {
        int width = 0;
        for (Component child : getComponents()) {
            width += child.getPreferredSize().width + gapPx;
        }
        int there = getParent() == null || getParent().getWidth() == 0
                ? width
                : getParent().getWidth();
        return new Dimension(Math.min(width, there), heightFor(there));
    }
}
