package handspan.show.window;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.live.session.Snapshot;
import handspan.room.HandRole;
import handspan.show.chart.Aside;
import handspan.show.chart.HoldNoiseChart;
import handspan.show.chart.LiveChart;
import handspan.show.chart.LiveChartView;
import handspan.show.chart.LiveLadderChart;
import handspan.show.chart.LiveLevelChart;
import handspan.show.chart.LiveRawChart;
import handspan.show.chart.LiveResponseChart;
import handspan.show.chart.LiveSteadyQuickChart;
import handspan.show.chart.SentPitchChart;
import handspan.show.chart.Theme;
import handspan.show.scene.Screen;
import handspan.show.scene.Sight;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The charts of an evening that move. All of them are told of each snapshot, whatever page is looked at, so that one
 * that comes into sight knows its last seconds; only what is seen is drawn. Used by the event thread.
 */
final class Charts {
    private final Map<Object, Shown> all = new HashMap<>();
    private Theme theme;
    private double scale = 1;
    private Optional<Snapshot> latest = Optional.empty();

    Charts(Theme theme) {
        this.theme = theme;
    }

    /** A chart, with what it was last asked to show. */
    private record Shown(Sight sight, LiveChart chart, LiveChartView view, BesideEvents aside) {
        Shown with(Sight other) {
            return new Shown(other, chart, view, aside);
        }
    }

    /** Draws in a theme from now on, so many times as large as charts are on paper. */
    void use(Theme other, double times) {
        theme = other;
        scale = times;
        all.values().forEach(one -> {
            one.view.use(other);
            one.view.enlarge(times);
        });
    }

    /** The chart of a sight. */
    LiveChartView view(Sight sight) {
        Shown before = all.get(sight.key());
        if (before == null) {
            BesideEvents aside = new BesideEvents();
            LiveChart chart = chart(sight, aside);
            before = new Shown(sight, chart, new LiveChartView(chart, theme), aside);
            before.view.enlarge(scale);
            latest.ifPresent(before.view::beat);
            all.put(sight.key(), before);
        } else if (!before.sight.equals(sight)) {
            turn(before.chart, sight);
            all.put(sight.key(), before.with(sight));
        }
        return before.view;
    }

    /** How all stands now. */
    void beat(Screen.Live live) {
        if (live.snapshot().isEmpty() && latest.isPresent()) {
            // an instrument that is closed takes its hands along
            all.clear();
        }
        latest = live.snapshot();
        all.keySet().retainAll(live.sights().stream().map(Sight::key).toList());
        live.sights().forEach(this::view);
        latest.ifPresent(snapshot -> all.values().forEach(one -> one.view.beat(snapshot)));
    }

    /** Whether nothing is being worked out. */
    boolean isIdle() {
        return all.values().stream().allMatch(one -> one.aside.isIdle());
    }

    /** Has a chart show what has changed; what plays comes with the next snapshot. */
    private static void turn(LiveChart chart, Sight sight) {
        if (chart instanceof LiveLadderChart ladder && sight instanceof Sight.Ladder wanted) {
            ladder.use(wanted.tuning());
        } else if (chart instanceof LiveSteadyQuickChart trade && sight instanceof Sight.Feel wanted) {
            trade.use(wanted.tuning());
        } else if (chart instanceof LiveLevelChart level && sight instanceof Sight.Level wanted) {
            level.use(wanted.profile().level());
        } else if (chart instanceof SentPitchChart sent && sight instanceof Sight.Sent wanted) {
            sent.use(wanted.tuning());
        }
    }

    private static LiveChart chart(Sight sight, Aside aside) {
        if (sight instanceof Sight.Slot number) {
            return LiveRawChart.of(number.channel());
        } else if (sight instanceof Sight.Hand hand) {
            return LiveRawChart.of(hand.instrument(), hand.role());
        } else if (sight instanceof Sight.HandInRoom hand) {
            return LiveRawChart.of(hand.room(), hand.role());
        } else if (sight instanceof Sight.HoldNoise noise) {
            return noise(noise.instrument(), noise.role());
        } else if (sight instanceof Sight.Response response) {
            return new LiveResponseChart(response.room(), response.role());
        } else if (sight instanceof Sight.Ladder ladder) {
            return new LiveLadderChart(ladder.profile(), ladder.tuning(), aside);
        } else if (sight instanceof Sight.Feel feel) {
            return new LiveSteadyQuickChart(feel.profile(), feel.tuning(), aside);
        } else if (sight instanceof Sight.Level level) {
            return new LiveLevelChart(level.profile());
        } else if (sight instanceof Sight.Sent sent) {
            return new SentPitchChart(sent.tuning());
        }
        throw new IllegalStateException("no chart for " + sight);
    }

    private static LiveChart noise(Instrument instrument, HandRole role) {
        List<Sensor> sensors = instrument.sensors(Air.USUAL);
        int which = role == HandRole.PITCH ? 0 : 1;
        return new HoldNoiseChart(role, instrument.channels().get(which).channel(), sensors.get(which));
    }
}
