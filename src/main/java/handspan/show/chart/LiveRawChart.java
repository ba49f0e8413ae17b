package handspan.show.chart;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Room;
import java.awt.Graphics2D;
import org.jfree.chart.JFreeChart;
import org.jspecify.annotations.Nullable;

/**
 * What one sensor said in the last ten seconds, as the board prints it. What was not taken has no honest height and
 * stands as a cross in rows of its own: spikes that were held back, numbers by which a sensor says that it sees
 * nothing, lines that could not be read.
 */
public final class LiveRawChart extends OverStill {
    /** More readings than this are drawn as a line alone. */
    private static final int MANY = 900;

    private final RawTrail trail;
    private final String whose;
    private final String unit;
    private final @Nullable RawEnds ends;
    private final CalmRange range = new CalmRange();
    private TimeRun run = new TimeRun(new double[0], new double[0], new byte[0]);

    private LiveRawChart(RawTrail trail, String whose, String unit, @Nullable RawEnds ends) {
        this.trail = trail;
        this.whose = whose;
        this.unit = unit;
        this.ends = ends;
        if (ends != null) {
            range.show(ends.least(), ends.most());
        }
    }

    /**
     * The readings of a room's hand, with its play zone.
     *
     * @throws IllegalArgumentException when the room has no such hand
     */
    public static LiveRawChart of(Room room, HandRole role) {
        HandSetup hand = role == HandRole.PITCH ? room.pitch() : room.level();
        if (hand == null) {
            throw new IllegalArgumentException("room " + room.name() + " has no level hand");
        }
        Sensor sensor = room.sensor(hand);
        return new LiveRawChart(
                new RawTrail(hand.channel().channel(), sensor, role == HandRole.PITCH),
                role.word() + " hand, ",
                hand.channel().unit().word(),
                RawEnds.of(hand, sensor));
    }

    /**
     * The readings of an instrument's hand before there is a room.
     *
     * @throws IllegalArgumentException when the instrument has no such hand
     */
    public static LiveRawChart of(Instrument instrument, HandRole role) {
        int which = role == HandRole.PITCH ? 0 : 1;
        if (which >= instrument.channels().size()) {
            throw new IllegalArgumentException("instrument " + instrument.name() + " has no level hand");
        }
        ChannelSpec channel = instrument.channels().get(which);
        Sensor sensor = instrument.sensors(Air.USUAL).get(which);
        return new LiveRawChart(
                new RawTrail(channel.channel(), sensor, role == HandRole.PITCH),
                role.word() + " hand, ",
                channel.unit().word(),
                null);
    }

    /** The readings of a number of which no more is known than its label or position. */
    public static LiveRawChart of(String channel) {
        return new LiveRawChart(new RawTrail(channel, null, false), "", "", null);
    }

    @Override
    public String name() {
        return "Readings, " + whose + "channel " + trail.channel();
    }

    @Override
    public String about() {
        return "what the board printed in the last 10 s"
                + (unit.isEmpty() ? "" : ", in " + unit)
                + "; below, what was not taken, each as a cross";
    }

    @Override
    public String words() {
        double latest = trail.latest();
        return (Double.isNaN(latest) ? "no reading" : "now " + Figures.shortest(latest) + unit()) + "; in 10 s "
                + Figures.count(run.count(RawTrail.TAKEN)) + " taken, "
                + Figures.count(run.count(RawTrail.HELD_BACK)) + " held back, "
                + Figures.count(run.count(RawTrail.NO_READING)) + " without, lines rejected: "
                + Figures.count(run.count(RawTrail.REJECTED));
    }

    private String unit() {
        return unit.isEmpty() ? "" : " " + unit;
    }

    @Override
    public long version() {
        return trail.version();
    }

    @Override
    public void onSnapshot(Snapshot snapshot) {
        long before = trail.version();
        trail.onSnapshot(snapshot);
        if (trail.version() == before) {
            return;
        }
        run = trail.run();
        double least = ends == null ? Double.POSITIVE_INFINITY : ends.least();
        double most = ends == null ? Double.NEGATIVE_INFINITY : ends.most();
        for (int i = 0; i < run.size(); i++) {
            if (run.kind(i) == RawTrail.TAKEN) {
                least = Math.min(least, run.value(i));
                most = Math.max(most, run.value(i));
            }
        }
        if (least <= most) {
            range.show(least, most);
        }
    }

    /** What is shown. */
    TimeRun run() {
        return run;
    }

    @Override
    long edition() {
        return range.edition();
    }

    @Override
    JFreeChart still(Theme theme) {
        return new RawSheet(unit, ends, range.low(), range.high(), theme).chart(name());
    }

    @Override
    void moving(Graphics2D g2, StillChart chart, Theme theme) {
        StillChart.Pane values = chart.pane(0);
        StillChart.Pane rows = chart.pane(1);
        double zeroPx = values.y(0);
        double unitPx = values.y(1) - zeroPx;
        LastSeconds.Height height = value -> zeroPx + unitPx * value;
        var clip = g2.getClip();
        g2.clip(values.area());
        g2.setPaint(theme.line());
        g2.setStroke(ChartSheet.THIN);
        g2.draw(LastSeconds.line(run, RawTrail.TAKEN, values, height));
        if (run.count(RawTrail.TAKEN) <= MANY) {
            g2.fill(RawMarks.dots(run, values, height));
        }
        g2.setClip(clip);
        g2.clip(rows.area());
        g2.setPaint(theme.mark());
        g2.draw(RawMarks.crosses(run, rows));
        g2.setClip(clip);
    }
}
