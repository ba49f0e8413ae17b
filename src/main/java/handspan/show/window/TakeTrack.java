package handspan.show.window;

import handspan.show.scene.Block;
import handspan.show.scene.Moments;
import handspan.show.scene.Wish;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleValue;
import javax.swing.JComponent;

/** The track of a recording: what has passed is filled, a click or a drag takes it elsewhere. */
final class TakeTrack extends JComponent implements javax.accessibility.Accessible {
    private static final long serialVersionUID = 1;

    /** Nearer than this to a mark, its words are told, px. */
    private static final int NEAR_PX = 6;

    private final transient Looks looks;
    private final int knobPx;
    private final int linePx;
    private final int markPx;
    private final transient Consumer<Wish> wishes;
    private transient Block.TakeBar shown = new Block.TakeBar(0, OptionalDouble.empty(), false, List.of());
    private boolean held;
    private double heldS;

    TakeTrack(Looks looks, Consumer<Wish> wishes) {
        this.looks = looks;
        this.wishes = wishes;
        this.knobPx = looks.px(18);
        this.linePx = looks.px(8);
        this.markPx = looks.px(26);
        setPreferredSize(new Dimension(looks.px(300), looks.px(40)));
        setToolTipText("");
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                goTo(event, true);
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                goTo(event, true);
            }

            @Override
            public void mouseReleased(MouseEvent event) {
                held = false;
                repaint();
            }
        };
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        getAccessibleContext().setAccessibleName("place in the recording");
    }

    private void goTo(MouseEvent event, boolean hold) {
        if (shown.lengthS().isEmpty() || (event.getModifiersEx() & MouseEvent.BUTTON1_DOWN_MASK) == 0) {
            return;
        }
        double seconds = secondsAt(event.getX());
        if (held && Math.abs(seconds - heldS) * trackPx() < shown.lengthS().getAsDouble()) {
            // less than a dot further
            return;
        }
        held = hold;
        heldS = seconds;
        repaint();
        wishes.accept(new Wish.Jump(seconds));
    }

    void show(Block.TakeBar next) {
        boolean other = next.marks().size() != shown.marks().size()
                || xOf(next.placeS()) != xOf(shown.placeS())
                || !next.lengthS().equals(shown.lengthS());
        shown = next;
        setCursor(Cursor.getPredefinedCursor(next.lengthS().isPresent() ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        if (other) {
            repaint();
        }
    }

    /** Whether the mouse holds it. */
    boolean isHeld() {
        return held;
    }

    /** Where it stands, or is held, s. */
    double placeS() {
        return held ? heldS : shown.placeS();
    }

    private int trackPx() {
        return Math.max(1, getWidth() - knobPx);
    }

    private int xOf(double seconds) {
        double length = shown.lengthS().orElse(0);
        return knobPx / 2 + (int) Math.round(length <= 0 ? 0 : Math.min(1, seconds / length) * trackPx());
    }

    /** The place under a dot of the track, s. */
    double secondsAt(int x) {
        double part = (x - knobPx / 2.0) / trackPx();
        return Math.max(0, Math.min(1, part)) * shown.lengthS().orElse(0);
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        if (shown.lengthS().isEmpty()) {
            return "how long the recording is, is being found out";
        }
        String near = shown.marks().stream()
                .filter(mark -> Math.abs(xOf(mark.atS()) - event.getX()) <= NEAR_PX)
                .map(mark -> ": " + mark.words())
                .findFirst()
                .orElse("");
        return "click or drag to go to " + Moments.words(secondsAt(event.getX())) + " min:s" + near;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = Looks.smooth(graphics);
        double middle = getHeight() / 2.0;
        pen.setColor(looks.ink(Ink.LINES));
        pen.fill(new RoundRectangle2D.Double(knobPx / 2.0, middle - linePx / 2.0, trackPx(), linePx, linePx, linePx));
        if (shown.lengthS().isPresent()) {
            int x = xOf(placeS());
            pen.setColor(looks.ink(Ink.FILL));
            pen.fill(new RoundRectangle2D.Double(
                    knobPx / 2.0, middle - linePx / 2.0, x - knobPx / 2.0, linePx, linePx, linePx));
            pen.setColor(looks.ink(Ink.TEXT));
            for (Block.BarMark mark : shown.marks()) {
                int at = xOf(mark.atS());
                pen.draw(new Line2D.Double(at, middle - markPx / 2.0, at, middle - linePx));
            }
            pen.fill(new Ellipse2D.Double(x - knobPx / 2.0, middle - knobPx / 2.0, knobPx, knobPx));
        }
        pen.dispose();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Spoken();
        }
        return accessibleContext;
    }

    /** What those hear who hear the screen: a slider of seconds. */
    private final class Spoken extends AccessibleJComponent implements AccessibleValue {
        private static final long serialVersionUID = 1;

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.SLIDER;
        }

        @Override
        public String getAccessibleDescription() {
            return shown.words() + ", minutes:seconds";
        }

        @Override
        public AccessibleValue getAccessibleValue() {
            return this;
        }

        @Override
        public Number getCurrentAccessibleValue() {
            return placeS();
        }

        @Override
        public boolean setCurrentAccessibleValue(Number seconds) {
            wishes.accept(new Wish.Jump(seconds.doubleValue()));
            return true;
        }

        @Override
        public Number getMinimumAccessibleValue() {
            return 0;
        }

        @Override
        public Number getMaximumAccessibleValue() {
            return shown.lengthS().orElse(0);
        }
    }
}
