package handspan.show.window;

import handspan.show.scene.Block;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;

/** Steps in a row: those that are done filled, the one that is next framed. */
final class StepsPane extends DrawnPane implements BlockPane {
    private static final long serialVersionUID = 1;
    private static final int HEIGHT_PX = 44;

    private final transient Looks looks;
    private transient Block.Steps steps = new Block.Steps(java.util.List.of(), 0);

    StepsPane(Looks looks) {
        this.looks = looks;
    }

    @Override
    public boolean takes(Block block) {
        return block instanceof Block.Steps;
    }

    @Override
    public void show(Block block) {
        if (block instanceof Block.Steps next && !next.equals(steps)) {
            steps = next;
            getAccessibleContext()
                    .setAccessibleName(next.done() + " of " + next.names().size() + " steps are done");
            repaint();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(looks.px(400), looks.px(HEIGHT_PX));
    }

    /** Where there is no room for all names, that of the next step alone. */
    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = Looks.smooth(graphics);
        pen.setFont(looks.font(Font.PLAIN, Letters.CONTROL));
        FontMetrics metrics = pen.getFontMetrics();
        int count = Math.max(1, steps.names().size());
        int width = Math.min(looks.px(150), getWidth() / count);
        int bar = looks.px(10);
        int gap = looks.px(8);
        boolean all = steps.names().stream().allMatch(name -> metrics.stringWidth(name) <= width - gap);
        for (int i = 0; i < steps.names().size(); i++) {
            int x = i * width;
            boolean next = i == steps.done();
            pen.setColor(looks.ink(i < steps.done() ? Ink.FILL : Ink.LINES));
            pen.fillRoundRect(x, 2, width - gap, bar, bar / 2, bar / 2);
            if (next) {
                pen.setColor(looks.ink(Ink.TEXT));
                pen.drawRoundRect(x, 2, width - gap - 1, bar - 1, bar / 2, bar / 2);
            }
            if (all || next) {
                String name = steps.names().get(i);
                pen.setColor(looks.ink(next ? Ink.TEXT : Ink.QUIET_TEXT));
                int left = Math.max(0, Math.min(x, getWidth() - metrics.stringWidth(name)));
                pen.drawString(name, left, bar + looks.px(6) + metrics.getAscent());
            }
        }
        pen.dispose();
    }
}
