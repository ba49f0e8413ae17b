package handspan.show.window;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Words in as many lines as the width asks for, with a sign and a mark before them where they are meant to be seen. */
final class WrappedText extends DrawnPane implements Fitting {
    private static final long serialVersionUID = 1;
    private static final int USUAL_WIDTH_PX = 600;

    private String text = "";
    private Color ink = Color.GRAY;
    private @Nullable Color mark;
    private String sign = "";
    private boolean oneLine;

    WrappedText(Font font) {
        setFont(font);
    }

    /** Words that stay on one line, as wide as they are. */
    static WrappedText ofOneLine(Font font) {
        WrappedText text = new WrappedText(font);
        text.oneLine = true;
        return text;
    }

    void show(String words, Color colour, @Nullable Color markColour, String markSign) {
        boolean longer = !words.equals(text) || !markSign.equals(sign);
        text = words;
        ink = colour;
        mark = markColour;
        sign = markSign;
        getAccessibleContext().setAccessibleName(words);
        if (longer) {
            revalidate();
        }
        repaint();
    }

    String text() {
        return text;
    }

    /** Has it in other letters from now on. */
    void letters(Font font) {
        if (!font.equals(getFont())) {
            setFont(font);
        }
    }

    private int indentPx() {
        return mark == null ? 0 : getFont().getSize() * 7 / 4;
    }

    private List<String> lines(int widthPx) {
        if (oneLine) {
            return List.of(text);
        }
        FontMetrics metrics = getFontMetrics(getFont());
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int room = widthPx - indentPx();
        for (String word : text.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && metrics.stringWidth(longer) > room) {
                lines.add(line.toString());
                line.setLength(0);
                longer = word;
            }
            line.setLength(0);
            line.append(broken(longer, metrics, room, lines));
        }
        lines.add(line.toString());
        return lines;
    }

    /**
     * Words without a blank that are longer than a line, a path say, go on in the next one; the rest is handed back.
     */
    private static String broken(String words, FontMetrics metrics, int room, List<String> lines) {
        String rest = words;
        while (rest.length() > 1 && room > 0 && metrics.stringWidth(rest) > room) {
            int end = rest.length() - 1;
            while (end > 1 && metrics.stringWidth(rest.substring(0, end)) > room) {
                end--;
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }

    @Override
    public int heightFor(int widthPx) {
        return text.isEmpty()
                ? 0
                : lines(widthPx).size() * getFontMetrics(getFont()).getHeight();
    }

    @Override
    public Dimension getPreferredSize() {
        if (oneLine) {
            FontMetrics metrics = getFontMetrics(getFont());
            return new Dimension(metrics.stringWidth(text) + indentPx() + 4, metrics.getHeight() + 4);
        }
        int width = getWidth() > 0 ? getWidth() : USUAL_WIDTH_PX;
        return new Dimension(width, heightFor(width));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = Looks.smooth(graphics);
        FontMetrics metrics = pen.getFontMetrics(getFont());
        pen.setFont(getFont());
        if (mark != null && !text.isEmpty()) {
            pen.setColor(mark);
            int wide = getFont().getSize() / 3;
            pen.fillRoundRect(0, 2, wide, Math.max(4, getHeight() - 4), 4, 4);
            if (!sign.isEmpty()) {
                pen.setFont(getFont().deriveFont(Font.BOLD));
                pen.setColor(ink);
                pen.drawString(sign, wide + 4, metrics.getAscent());
                pen.setFont(getFont());
            }
        }
        pen.setColor(ink);
        int y = metrics.getAscent();
        for (String line : lines(getWidth())) {
            pen.drawString(line, indentPx(), y);
            y += metrics.getHeight();
        }
        pen.dispose();
    }
}
