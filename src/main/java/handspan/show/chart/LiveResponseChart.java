package handspan.show.chart;

import handspan.instrument.sensor.Sensor;
import handspan.live.path.HandsNow;
import handspan.live.session.ActivityView;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Room;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import org.jfree.chart.JFreeChart;

/**
 * What a sensor says against where the hand is: the curve by which the room is played, with the holds that it was made
 * from. Where a fit was made, its residuals stand below, within twice its standard uncertainty. While the room is
 * played, a line shows the hand.
 */
public final class LiveResponseChart extends OverStill {
    private final Room room;
    private final HandRole role;
    private final HandSetup hand;
    private final Sensor sensor;
    private final List<Hold> holds;
    private final Across across;
    private final String name;
    private double handMm = Double.NaN;
    private long version;

    /**
     * The response of a room's hand.
     *
     * @throws IllegalArgumentException when the room has no such hand
     */
    public LiveResponseChart(Room room, HandRole role) {
        HandSetup setup = role == HandRole.PITCH ? room.pitch() : room.level();
        if (setup == null) {
            throw new IllegalArgumentException("room " + room.name() + " has no level hand");
        }
        this.room = room;
        this.role = role;
        this.hand = setup;
        this.sensor = room.sensor(setup);
        this.across = Across.of(setup);
        this.name = "Response of the " + role.word() + " hand in " + room.name();
        this.holds = ResponseSheet.holds(room, role);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String about() {
        return "what the sensor says, in " + sensor.physicalUnit()
                + ", against where the hand is; holds as dots; below, where a fit was made, what is left of each in mm";
    }

    @Override
    public String words() {
        return Double.isNaN(handMm)
                ? "no hand"
                : across.words(x(handMm)) + ": sensor "
                        + Figures.text(hand.response().physical(handMm), 2) + " " + sensor.physicalUnit();
    }

    @Override
    public long version() {
        return version;
    }

    @Override
    public void onSnapshot(Snapshot snapshot) {
        double now = Double.NaN;
        ActivityView.Playing playing = snapshot.activity().played().orElse(null);
        if (playing != null) {
            HandsNow hands = playing.hands();
            boolean pitch = role == HandRole.PITCH;
            boolean there = pitch ? hands.pitch() : hands.level();
            now = !there ? Double.NaN : pitch ? hands.pitchMm() : hands.levelMm();
        } else {
            now = hand.zone().mm(WatchedHand.place01(room, hand, snapshot));
        }
        version += Double.compare(now, handMm) == 0 ? 0 : 1;
        handMm = now;
    }

    @Override
    long edition() {
        return 0;
    }

    /** Where a distance is on the axis. */
    private double x(double mm) {
        return across == Across.MM ? mm : hand.zone().place(mm);
    }

    @Override
    JFreeChart still(Theme theme) {
        return new ResponseSheet(hand, role, sensor, holds, theme).chart(name);
    }

    @Override
    void moving(Graphics2D g2, StillChart chart, Theme theme) {
        if (Double.isNaN(handMm)) {
            return;
        }
        StillChart.Pane pane = chart.pane(0);
        double x = pane.heldX(x(handMm));
        double y = pane.heldY(hand.response().physical(handMm));
        if (chart.panes() > 1) {
            var below = chart.pane(1).area();
            g2.setPaint(theme.live());
            g2.setStroke(ChartSheet.STRONG);
            g2.draw(new Line2D.Double(x, below.getMinY(), x, below.getMaxY()));
        }
        hand(g2, pane, x, y, true, theme);
    }
}
