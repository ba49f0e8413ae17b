package handspan.show.window;

import handspan.show.scene.Block;
import handspan.show.scene.StageView;
import handspan.show.scene.Tone;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a player reads on stage: large, from far, and from the corner of an eye. */
final class StagePane extends DrawnPane implements BlockPane, Column.Growing {
    private static final long serialVersionUID = 1;
    private static final int LEAST_PX = 260;
    private static final int MOST_LINES = 3;
    private static final double CENTS_EITHER_WAY = 50;

    private final transient Looks looks;
    private transient @Nullable StageView view;

    StagePane(Looks looks) {
        this.looks = looks;
    }

    @Override
    public boolean takes(Block block) {
        return block instanceof Block.Stage;
    }

    @Override
    public void show(Block block) {
        if (block instanceof Block.Stage stage && !stage.view().equals(view)) {
            view = stage.view();
            getAccessibleContext()
                    .setAccessibleName(stage.view().note() + ", " + stage.view().levelWords() + ", "
                            + stage.view().state());
            repaint();
        }
    }

    @Override
    public int leastHeight() {
        return looks.px(LEAST_PX);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        StageView now = view;
        if (now == null) {
            return;
        }
        Graphics2D pen = Looks.smooth(graphics);
        int width = getWidth();
        int height = getHeight();
        pen.setColor(looks.ink(Ink.RAISED));
        pen.fillRoundRect(0, 0, width, height, looks.px(16), looks.px(16));
        int pad = Math.max(looks.px(14), height / 24);
        float small = Math.max(looks.px(Letters.WORDS), Math.min(height / 22f, width / 40f));
        int meter = Math.max(looks.px(56), width / 14);
        int right = width - meter - 2 * pad;
        int top = head(pen, now, pad, right, small);
        int bottom = foot(pen, now, pad, right, height - pad, small);
        middle(pen, now, new Rectangle(pad, top, right - pad, bottom - top), small);
        level(pen, now, new Rectangle(width - pad - meter, pad, meter, height - 2 * pad), small);
        pen.dispose();
    }

    /** Returns where it ends. */
    private int head(Graphics2D pen, StageView now, int left, int right, float small) {
        pen.setFont(looks.atLeastSmall(Font.BOLD, small * 1.6f));
        FontMetrics metrics = pen.getFontMetrics();
        int y = left + metrics.getAscent();
        int dot = metrics.getAscent() * 2 / 3;
        pen.setColor(looks.mark(now.stateTone()));
        pen.fillOval(left, y - dot, dot, dot);
        pen.setColor(looks.ink(Ink.TEXT));
        pen.drawString(now.state(), left + dot * 3 / 2, y);
        int x = left + dot * 3 / 2 + metrics.stringWidth(now.state()) + dot;
        pen.setFont(looks.atLeastSmall(Font.PLAIN, small));
        pen.setColor(looks.ink(Ink.QUIET_TEXT));
        int under = y + metrics.getDescent();
        // beside the state where there is room, else below it
        if (pen.getFontMetrics().stringWidth(now.stateWords()) > right - x) {
            x = left;
            y = under + pen.getFontMetrics().getAscent();
        }
        List<String> lines =
                lines(pen.getFontMetrics(), List.of(now.stateWords().split(" ", -1)), " ", right - x);
        for (int i = 0; i < lines.size(); i++) {
            pen.drawString(lines.get(i), x, y + i * pen.getFontMetrics().getHeight());
            under = Math.max(
                    under,
                    y
                            + i * pen.getFontMetrics().getHeight()
                            + pen.getFontMetrics().getDescent());
        }
        return under;
    }

    /** The note, and below it how far pitch is from it. */
    private void middle(Graphics2D pen, StageView now, Rectangle room, float small) {
        FontMetrics cents = pen.getFontMetrics(looks.atLeastSmall(Font.PLAIN, small * 0.8f));
        int bar = Math.max(looks.px(6), (int) (small / 2));
        int needed = now.pitchHelp() ? 4 * bar + cents.getHeight() : 0;
        int tall = room.height - needed;
        pen.setFont(looks.atLeastSmall(Font.BOLD, Math.min(tall * 0.85f, room.width / 3.5f)));
        FontMetrics metrics = pen.getFontMetrics();
        pen.setColor(looks.ink(now.handPresent() ? Ink.TEXT : Ink.QUIET_TEXT));
        int middle = room.x + room.width / 2;
        int capital = metrics.getAscent() * 3 / 4;
        int y = room.y + (tall + capital) / 2;
        pen.drawString(now.note(), middle - metrics.stringWidth(now.note()) / 2, y);
        pen.setFont(looks.atLeastSmall(Font.PLAIN, small * 1.2f));
        pen.setColor(looks.ink(Ink.QUIET_TEXT));
        FontMetrics beside = pen.getFontMetrics();
        pen.drawString(now.pitchWords(), room.x + room.width - beside.stringWidth(now.pitchWords()), y);
        if (now.pitchHelp()) {
            pen.setFont(cents.getFont());
            cents(pen, now, new Rectangle(room.x, room.y + tall + bar, room.width, bar));
        }
    }

    private void cents(Graphics2D pen, StageView now, Rectangle scale) {
        int middle = scale.x + scale.width / 2;
        int bar = scale.height;
        pen.setColor(looks.ink(Ink.LINES));
        pen.fillRoundRect(scale.x, scale.y, scale.width, bar, bar, bar);
        pen.setColor(looks.ink(Ink.LIMIT));
        pen.fillRect(middle - looks.px(2), scale.y - bar, looks.px(4), 3 * bar);
        boolean shows = !now.centsWords().isEmpty();
        if (shows) {
            double aside = Math.max(-1, Math.min(1, now.cents() / CENTS_EITHER_WAY));
            int x = middle + (int) Math.round(scale.width / 2.0 * aside);
            pen.setColor(looks.ink(Ink.NEEDLE));
            pen.fillOval(x - bar * 3 / 2, scale.y - bar, 3 * bar, 3 * bar);
        }
        pen.setColor(looks.ink(Ink.QUIET_TEXT));
        FontMetrics metrics = pen.getFontMetrics();
        int base = scale.y + 2 * bar + metrics.getAscent();
        pen.drawString("-50 cents", scale.x, base);
        pen.drawString("+50 cents", scale.x + scale.width - metrics.stringWidth("+50 cents"), base);
        if (shows) {
            pen.setColor(looks.ink(Ink.TEXT));
            pen.drawString(now.centsWords(), middle - metrics.stringWidth(now.centsWords()) / 2, base);
        }
    }

    private void level(Graphics2D pen, StageView now, Rectangle room, float small) {
        pen.setFont(looks.atLeastSmall(Font.PLAIN, small * 0.8f));
        FontMetrics metrics = pen.getFontMetrics();
        int tall = room.height - 2 * metrics.getHeight();
        int top = room.y + metrics.getHeight();
        int round = looks.px(8);
        pen.setColor(looks.ink(Ink.QUIET_TEXT));
        pen.drawString("level", room.x + (room.width - metrics.stringWidth("level")) / 2, room.y + metrics.getAscent());
        pen.setColor(looks.ink(Ink.LINES));
        pen.fillRoundRect(room.x, top, room.width, tall, round, round);
        int filled = (int) Math.round(tall * now.level01());
        pen.setColor(looks.ink(Ink.FILL));
        pen.fillRoundRect(room.x, top + tall - filled, room.width, filled, round, round);
        pen.setColor(looks.ink(Ink.TEXT));
        pen.drawString(
                now.levelWords(),
                room.x + (room.width - metrics.stringWidth(now.levelWords())) / 2,
                top + tall + metrics.getAscent() + 4);
    }

    /** What else is known, and above it what wants a look. Returns where it begins. */
    private int foot(Graphics2D pen, StageView now, int left, int right, int bottom, float small) {
        pen.setFont(looks.atLeastSmall(Font.PLAIN, small));
        FontMetrics metrics = pen.getFontMetrics();
        pen.setColor(looks.ink(Ink.TEXT));
        List<String> parts = List.of(hand(now), now.link(), now.room(), now.tuning());
        int y = upwards(pen, lines(metrics, parts, "   ", right - left), left, bottom);
        boolean bad = !now.trouble().isEmpty();
        String more = bad ? now.trouble() : now.hint();
        if (more.isEmpty()) {
            return y;
        }
        pen.setFont(looks.atLeastSmall(Font.PLAIN, small * 0.7f));
        int edge = looks.px(14);
        List<String> lines = lines(pen.getFontMetrics(), List.of(more.split(" ", -1)), " ", right - left - edge);
        int above = upwards(pen, lines, left + edge, y - looks.px(6));
        pen.setColor(looks.mark(bad ? Tone.BAD : Tone.LOOK));
        pen.fillRect(left, above, looks.px(5), y - looks.px(6) - above);
        return above;
    }

    /** Where the hand is helps to find a pitch too. */
    private static String hand(StageView now) {
        String place = now.pitchHelp() ? " at " + Math.round(100 * now.place01()) + " %" : "";
        return now.handPresent() ? "hand" + place : "no hand";
    }

    private static int upwards(Graphics2D pen, List<String> lines, int left, int bottom) {
        FontMetrics metrics = pen.getFontMetrics();
        int top = bottom - lines.size() * metrics.getHeight();
        for (int i = 0; i < lines.size(); i++) {
            pen.drawString(lines.get(i), left, top + i * metrics.getHeight() + metrics.getAscent());
        }
        return top;
    }

    /** Parts in as many lines as the width asks for; three at most, then it is cut. */
    private static List<String> lines(FontMetrics metrics, List<String> parts, String joint, int widthPx) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String part : parts) {
            String longer = line.isEmpty() ? part : line + joint + part;
            if (!line.isEmpty() && metrics.stringWidth(longer) > widthPx && lines.size() < MOST_LINES - 1) {
                lines.add(line);
                line = part;
            } else {
                line = longer;
            }
        }
        lines.add(Looks.cut(metrics, line, widthPx));
        return lines;
    }
}
