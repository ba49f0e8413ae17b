package handspan.show.chart;

import handspan.hand.smooth.Quickness;
import handspan.live.session.ActivityView;
import handspan.live.session.Snapshot;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.FeelBudget;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jspecify.annotations.Nullable;

/**
 * What steadiness costs in a room, with the point that is chosen and those that a control from "steadier" to "quicker"
 * could choose. It follows the tuning that plays, or the one it is told of.
 */
public final class LiveSteadyQuickChart extends OverStill {
    private static final double STOP_PX = 7;
    private static final double CHOSEN_PX = 13;
    private static final double NAME_WIDTH_PX = 80;
    private static final double NAME_HEIGHT_PX = 15;
    private static final double WORDS_BELOW_TOP_PX = 16;

    /** Words stand right of the labels that are near the axis. */
    private static final double WORDS_FROM01 = 0.34;

    private final RoomProfile room;
    private final Aside aside;
    private Tuning tuning;
    private @Nullable Stops stops;
    private long edition;

    /**
     * Where a tuning stands, and where a control could.
     *
     * @param tuning that is meant
     * @param chosen its own place
     * @param each what the control's whole steps would give, the steadiest first
     */
    record Stops(Tuning tuning, FeelBudget chosen, List<FeelBudget> each) {
        /** Copies the list. */
        Stops {
            each = List.copyOf(each);
        }

        /** Tries all of them out on simulated hands, which takes its time. */
        static Stops of(Room room, Tuning tuning) {
            int most = (int) Quickness.MOST_STEPS;
            List<FeelBudget> each = IntStream.rangeClosed(-most, most)
                    .mapToObj(steps -> FeelBudget.of(room, tuning.with(new Quickness(steps))))
                    .toList();
            return new Stops(tuning, FeelBudget.of(room, tuning), each);
        }
    }

    /**
     * The trade of a room under a tuning.
     *
     * @param aside where it is worked out
     */
    public LiveSteadyQuickChart(RoomProfile room, Tuning tuning, Aside aside) {
        this.room = room;
        this.tuning = tuning;
        this.aside = aside;
        workOut();
    }

    private void workOut() {
        Tuning meant = tuning;
        aside.workOut(() -> Stops.of(room.room(), meant), known -> {
            stops = known;
            edition++;
        });
    }

    /** Shows where another tuning, or the same one with another quickness, stands, as soon as that is worked out. */
    public void use(Tuning other) {
        if (!other.equals(tuning)) {
            tuning = other;
            workOut();
        }
    }

    @Override
    public String name() {
        return "How steady against how quick in " + room.room().name();
    }

    @Override
    public String about() {
        return "how much a still hand wobbles, in cents rms, against how long it is smoothed, in ms; the large dot is"
                + " chosen, the squares are whole steps steadier or quicker";
    }

    @Override
    public String words() {
        Stops known = stops;
        return known == null ? "working it out ..." : words(known.chosen);
    }

    private static String words(FeelBudget chosen) {
        return Figures.text(chosen.jitterCents(), 1) + " cents rms, "
                + Figures.text(chosen.settings().stillLagMs(), 0) + " ms";
    }

    @Override
    String headWords() {
        return stops == null ? words() : "";
    }

    @Override
    public long version() {
        return edition;
    }

    @Override
    public void onSnapshot(Snapshot snapshot) {
        ActivityView.Playing playing = snapshot.activity().played().orElse(null);
        if (playing != null) {
            use(playing.tuning());
        }
    }

    /** What is shown; null before it is worked out. */
    @Nullable
    Stops stops() {
        return stops;
    }

    @Override
    long edition() {
        return edition;
    }

    @Override
    JFreeChart still(Theme theme) {
        Stops known = stops;
        return known == null
                ? SteadyQuickChart.empty(room, theme)
                : SteadyQuickChart.of(room, known.tuning, known.chosen, theme);
    }

    @Override
    void moving(Graphics2D g2, StillChart chart, Theme theme) {
        Stops known = stops;
        if (known == null) {
            return;
        }
        FeelBudget chosen = known.chosen;
        StillChart.Pane pane = chart.pane(0);
        g2.setStroke(ChartSheet.STRONG);
        g2.setFont(theme.smallFont());
        Point2D named = new Point2D.Double(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);
        for (int i = known.each.size() - 1; i >= 0; i--) {
            double steps = i - Quickness.MOST_STEPS;
            Point2D at = stop(g2, pane, known.each.get(i), theme);
            // the quickest stand close to one another, and the middle one needs no name
            if (steps != 0
                    && (at.getX() - named.getX() >= NAME_WIDTH_PX || at.getY() - named.getY() >= NAME_HEIGHT_PX)) {
                name(g2, pane, known.each.get(i), steps, theme);
                named = at;
            }
        }
        double x = pane.heldX(chosen.settings().stillLagMs());
        double y = pane.heldY(chosen.jitterCents());
        Ellipse2D dot = new Ellipse2D.Double(x - CHOSEN_PX / 2, y - CHOSEN_PX / 2, CHOSEN_PX, CHOSEN_PX);
        double wordsX =
                Math.max(x, pane.area().getMinX() + WORDS_FROM01 * pane.area().getWidth());
        double wordsY = pane.area().getMinY();
        g2.setStroke(ChartSheet.THIN);
        g2.setPaint(theme.mark());
        g2.draw(new Line2D.Double(x, y, wordsX + CHOSEN_PX, wordsY + WORDS_BELOW_TOP_PX));
        g2.fill(dot);
        g2.setPaint(theme.text());
        g2.setStroke(ChartSheet.STRONG);
        g2.draw(dot);
        beside(g2, pane, wordsX, wordsY, false, words(chosen), theme, theme.mark());
    }

    /** A place where the control could stand; returns where that is. */
    private static Point2D stop(Graphics2D g2, StillChart.Pane pane, FeelBudget stop, Theme theme) {
        double x = pane.heldX(stop.settings().stillLagMs());
        double y = pane.heldY(stop.jitterCents());
        Rectangle2D square = new Rectangle2D.Double(x - STOP_PX / 2, y - STOP_PX / 2, STOP_PX, STOP_PX);
        g2.setPaint(theme.plot());
        g2.fill(square);
        g2.setPaint(theme.line());
        g2.draw(square);
        return new Point2D.Double(x, y);
    }

    private static void name(Graphics2D g2, StillChart.Pane pane, FeelBudget stop, double steps, Theme theme) {
        double x = pane.heldX(stop.settings().stillLagMs());
        double y = pane.heldY(stop.jitterCents());
        String words = Marks.figure(Math.abs(steps)) + (steps > 0 ? " quicker" : " steadier");
        double width = g2.getFontMetrics().stringWidth(words);
        boolean fits = x + STOP_PX + width < pane.area().getMaxX();
        g2.setPaint(theme.quietText());
        g2.drawString(words, (float) (fits ? x + STOP_PX : x - STOP_PX - width), (float) (y - STOP_PX));
    }
}
