package handspan.show.window;

import handspan.show.scene.Screen;
import handspan.show.scene.Station;
import handspan.show.scene.Tone;
import handspan.show.scene.Wish;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;

/** The stations along the edge, strung on a line. */
final class RailPane extends JPanel {
    private static final long serialVersionUID = 1;
    private static final int WIDTH_PX = 190;
    private static final int NARROW_PX = 52;
    private static final int LINE_PX = 26;
    private static final int DOT_PX = 26;

    private final transient Looks looks;
    private final transient List<Stop> stops = new ArrayList<>();
    private boolean narrow;

    RailPane(Looks looks, Consumer<Wish> wishes) {
        super(new GridLayout(0, 1));
        this.looks = looks;
        setBackground(looks.ink(Ink.RAISED));
        for (Station station : Station.values()) {
            Stop stop = new Stop(station);
            stop.addActionListener(event -> wishes.accept(new Wish.Go(station)));
            stops.add(stop);
            add(stop);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(looks.px(narrow ? NARROW_PX : WIDTH_PX), looks.px(280));
    }

    /** Dots alone, where the page needs the width. */
    void narrow(boolean on) {
        if (on != narrow) {
            narrow = on;
            revalidate();
        }
    }

    void show(Screen screen) {
        for (int i = 0; i < stops.size(); i++) {
            stops.get(i)
                    .show(
                            screen.marks().get(i),
                            screen.showing().station() == screen.marks().get(i).station());
        }
    }

    /** One station. */
    private final class Stop extends JButton {
        private static final long serialVersionUID = 1;

        private final Station station;
        private transient Screen.Mark mark;
        private boolean here;

        Stop(Station station) {
            this.station = station;
            this.mark = new Screen.Mark(station, Tone.QUIET, "");
            setContentAreaFilled(false);
            setBorderPainted(false);
            setFocusable(false);
            setToolTipText(tip(""));
            getAccessibleContext().setAccessibleName(station.word());
        }

        private String tip(String words) {
            String stands = words.isEmpty() ? "" : " (" + words + ")";
            return station.word() + stands + ": " + station.question() + "  " + keyWords();
        }

        private String keyWords() {
            return "Alt+" + station.key().substring(station.key().length() - 1);
        }

        void show(Screen.Mark next, boolean isHere) {
            if (!next.equals(mark) || isHere != here) {
                mark = next;
                here = isHere;
                getAccessibleContext().setAccessibleDescription(next.words());
                setToolTipText(tip(next.words()));
                repaint();
            }
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D pen = Looks.smooth(graphics);
            int middle = getHeight() / 2;
            int line = looks.px(LINE_PX);
            int dot = looks.px(DOT_PX);
            if (here) {
                int edge = looks.px(6);
                pen.setColor(looks.ink(Ink.GROUND));
                pen.fillRoundRect(edge, 4, getWidth() - edge, getHeight() - 8, 2 * edge, 2 * edge);
            }
            pen.setColor(looks.ink(Ink.LINES));
            pen.setStroke(new BasicStroke(looks.px(3)));
            int first = stops.get(0) == this ? middle : 0;
            int last = stops.get(stops.size() - 1) == this ? middle : getHeight();
            pen.drawLine(line, first, line, last);
            boolean quiet = mark.tone() == Tone.QUIET || mark.tone() == Tone.PLAIN;
            pen.setColor(quiet ? looks.ink(Ink.RAISED) : looks.mark(mark.tone()));
            pen.fillOval(line - dot / 2, middle - dot / 2, dot, dot);
            pen.setColor(here ? looks.ink(Ink.TEXT) : quiet ? looks.ink(Ink.QUIET_TEXT) : looks.mark(mark.tone()));
            pen.setStroke(new BasicStroke(looks.px(here ? 3 : 2)));
            pen.drawOval(line - dot / 2, middle - dot / 2, dot, dot);
            sign(pen, middle, quiet);
            if (!narrow) {
                words(pen, middle);
            }
            pen.dispose();
        }

        private void sign(Graphics2D pen, int middle, boolean quiet) {
            pen.setFont(looks.font(Font.BOLD, Letters.CONTROL));
            String sign = quiet ? station.key().substring(station.key().length() - 1) : Looks.sign(mark.tone());
            FontMetrics metrics = pen.getFontMetrics();
            pen.setColor(quiet ? looks.ink(Ink.QUIET_TEXT) : Color.BLACK);
            pen.drawString(
                    sign,
                    looks.px(LINE_PX) - metrics.stringWidth(sign) / 2,
                    middle + (metrics.getAscent() - metrics.getDescent()) / 2);
        }

        /** How it stands is left out where two lines are too high. */
        private void words(Graphics2D pen, int middle) {
            int x = looks.px(LINE_PX + DOT_PX / 2 + 12);
            FontMetrics below = pen.getFontMetrics(looks.font(Font.PLAIN, Letters.CONTROL));
            pen.setFont(looks.font(here ? Font.BOLD : Font.PLAIN, Letters.STATION));
            FontMetrics above = pen.getFontMetrics();
            boolean two = !mark.words().isEmpty() && above.getHeight() + below.getHeight() <= getHeight();
            pen.setColor(looks.ink(Ink.TEXT));
            int line = two ? middle - looks.px(2) : middle + (above.getAscent() - above.getDescent()) / 2;
            pen.drawString(station.word(), x, line);
            if (two) {
                pen.setFont(below.getFont());
                pen.setColor(looks.ink(Ink.QUIET_TEXT));
                pen.drawString(Looks.cut(below, mark.words(), getWidth() - x - 4), x, middle + below.getAscent() + 1);
            }
        }
    }
}
