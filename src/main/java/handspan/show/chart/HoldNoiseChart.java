package handspan.show.chart;

import handspan.instrument.sensor.Sensor;
import handspan.live.session.Event;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.room.HandRole;
import handspan.room.Hold;
import java.awt.Graphics2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jspecify.annotations.Nullable;

/**
 * The noise of the latest hold of one hand: each reading about the value that was captured, within one standard
 * deviation of the noise to either side, and how they are spread against the bell of that noise.
 */
public final class HoldNoiseChart extends OverStill {
    private final HandRole role;
    private final Sensor sensor;
    private final RawTrail trail;
    private @Nullable HoldRun shown;
    private long eventNumber;
    private long edition;

    /**
     * A chart of no hold yet.
     *
     * @param channel of the hand, label or position
     * @param sensor of that channel
     */
    public HoldNoiseChart(HandRole role, String channel, Sensor sensor) {
        this.role = role;
        this.sensor = sensor;
        this.trail = new RawTrail(channel, sensor, false);
    }

    @Override
    public String name() {
        return "Noise of a hold, " + role.word() + " hand";
    }

    @Override
    public String about() {
        return "each reading of the hold less its value, in " + sensor.physicalUnit()
                + ", over its time in s; at the right how they are spread";
    }

    @Override
    public String words() {
        HoldRun run = shown;
        if (run == null) {
            return "no hold yet";
        }
        Hold hold = run.hold();
        String unit = " " + sensor.physicalUnit();
        return hold.kind().word() + ": " + Figures.text(hold.physical(), decimals(hold)) + " \u00b1 "
                + Figures.text(2 * hold.standardUncertainty(), decimals(hold)) + unit + ", noise "
                + Figures.text(hold.noise(), decimals(hold)) + unit + " rms"
                + run.steadiness()
                        .map(still -> ", slow part " + Figures.text(still.slow(), decimals(hold)) + unit)
                        .orElse("")
                + (hold.step() > 0 ? ", step " + Figures.shortest(hold.step()) + unit : "") + ", "
                + Figures.count(hold.count()) + " readings";
    }

    /** As many as show a tenth of the noise. */
    private static int decimals(Hold hold) {
        return hold.noise() > 0 ? Math.max(0, Math.min(5, (int) Math.ceil(1 - Math.log10(hold.noise())))) : 2;
    }

    @Override
    public long version() {
        return edition;
    }

    @Override
    public void onSnapshot(Snapshot snapshot) {
        trail.onSnapshot(snapshot);
        List<Event> events = snapshot.events();
        if (!events.isEmpty() && events.get(events.size() - 1).number() < eventNumber) {
            // another session counts anew
            eventNumber = 0;
        }
        for (Event event : events) {
            if (event.number() > eventNumber) {
                eventNumber = event.number();
                if (event.what() instanceof Event.Captured captured
                        && captured.step().hand() == role) {
                    captured.hold().ifPresent(hold -> show(captured, hold, snapshot.timeNanos()));
                }
            }
        }
    }

    private void show(Event.Captured captured, Hold hold, long nowNanos) {
        TimeRun run = trail.run();
        double fromS = Nanos.toSeconds(captured.fromNanos() - nowNanos);
        double toS = Nanos.toSeconds(captured.toNanos() - nowNanos);
        shown = new HoldRun(hold, captured.steadiness(), run.within(RawTrail.TAKEN, fromS, toS, sensor::physical));
        edition++;
    }

    /** What is shown; null before the first hold. */
    @Nullable
    HoldRun shown() {
        return shown;
    }

    @Override
    String headWords() {
        HoldRun run = shown;
        return run == null ? words() : run.readings().size() == 0 ? "its readings went by unseen" : "";
    }

    @Override
    long edition() {
        return edition;
    }

    @Override
    JFreeChart still(Theme theme) {
        HoldRun run = shown;
        return new NoiseSheet(run, sensor.physicalUnit(), theme)
                .chart(name(), run == null ? List.of() : List.of(words()));
    }

    @Override
    void moving(Graphics2D g2, StillChart chart, Theme theme) {
        HoldRun run = shown;
        if (run != null && run.readings().size() > 0 && run.hold().noise() > 0) {
            new NoiseSpread(run, chart.pane(0), NoiseSheet.halfWidth(run)).draw(g2, theme);
        }
    }
}
