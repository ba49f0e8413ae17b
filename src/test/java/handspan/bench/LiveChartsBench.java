package handspan.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.session.Command;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.show.chart.Aside;
import handspan.show.chart.HoldNoiseChart;
import handspan.show.chart.LiveChart;
import handspan.show.chart.LiveLadderChart;
import handspan.show.chart.LiveLevelChart;
import handspan.show.chart.LiveRawChart;
import handspan.show.chart.LiveResponseChart;
import handspan.show.chart.LiveSteadyQuickChart;
import handspan.show.chart.Rehearsal;
import handspan.show.chart.SentPitchChart;
import handspan.show.chart.Theme;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What live charts cost at thirty pictures a second, while an instrument plays. */
@Tag("bench")
class LiveChartsBench {
    private static final int WIDTH_PX = 900;
    private static final int HEIGHT_PX = 420;
    private static final double PICTURES_PER_S = 30;
    private static final int PICTURES = 600;
    private static final double BETWEEN_S = 0.04;
    private static final double MOST01 = 0.25;

    private final Random chance = new Random(5);

    @Test
    void eachChartAtThirtyPicturesASecond() {
        BenchTable table = new BenchTable(
                "8-live-charts",
                "(8) live charts of 900 x 420, snapshot taken and picture drawn into memory, 200 frames and 50 readings"
                        + " a second",
                "",
                "ms a picture",
                "of one core at 30/s",
                "twice as fine");
        double all01 = 0;
        for (int which = 0; which < charts(new Rehearsal(Tuning.usual()).room()).size(); which++) {
            Measured once = measure(which, 1);
            Measured twice = measure(which, 2);
            all01 += once.share01();
            table.row(
                    once.name(),
                    BenchTable.figure(once.ms(), 2),
                    BenchTable.figure(100 * once.share01(), 1) + " %",
                    BenchTable.figure(100 * twice.share01(), 1) + " %");
        }
        table.figure("all together under a quarter of a core", BenchTable.figure(100 * all01, 1) + " %", all01 < MOST01)
                .note("software drawing; a screen's own drawing may cost less, handing pictures to it is not in here")
                .publish();
    }

    private record Measured(String name, double ms) {
        double share01() {
            return ms * 1e-3 * PICTURES_PER_S;
        }
    }

    private static List<LiveChart> charts(RoomProfile room) {
        Tuning tuning = room.tunings().get(0);
        return List.of(
                new SentPitchChart(tuning),
                new LiveLadderChart(room, tuning, Aside.atOnce()),
                new LiveLevelChart(room),
                LiveRawChart.of(room.room(), HandRole.PITCH),
                new LiveResponseChart(room.room(), HandRole.PITCH),
                new HoldNoiseChart(
                        HandRole.PITCH, "1", room.room().sensor(room.room().pitch())),
                new LiveSteadyQuickChart(room, tuning, Aside.atOnce()));
    }

    private Measured measure(int which, double scale) {
        Rehearsal rehearsal = new Rehearsal(Tuning.usual());
        LiveChart chart = charts(rehearsal.room()).get(which);
        if (chart instanceof HoldNoiseChart) {
            rehearsal.calibrate().play(3, t -> Double.NaN, t -> Double.NaN, chart);
            rehearsal.play(8, t -> Math.rint(150 + 2 * chance.nextGaussian()), t -> Double.NaN, chart);
        }
        rehearsal.tell(new Command.Stop());
        rehearsal.play(false);
        BufferedImage image =
                new BufferedImage((int) (scale * WIDTH_PX), (int) (scale * HEIGHT_PX), BufferedImage.TYPE_INT_RGB);
        run(rehearsal, chart, image, scale);
        double ms = run(rehearsal, chart, image, scale);
        assertTrue(ms > 0, chart::name);
        return new Measured(chart.name(), ms);
    }

    /** Processor time a picture, ms; the playing itself is not in it. */
    private double run(Rehearsal rehearsal, LiveChart chart, BufferedImage image, double scale) {
        var threads = ManagementFactory.getThreadMXBean();
        long spentNanos = 0;
        for (int i = 0; i < PICTURES; i++) {
            rehearsal.play(
                    BETWEEN_S,
                    t -> 300 + 150 * Math.sin(1.3 * t) + 2 * chance.nextGaussian(),
                    t -> 200 + 80 * Math.sin(0.7 * t) + 2 * chance.nextGaussian());
            long before = threads.getCurrentThreadCpuTime();
            rehearsal.look(chart);
            Graphics2D g2 = image.createGraphics();
            g2.scale(scale, scale);
            chart.draw(g2, WIDTH_PX, HEIGHT_PX, Theme.DARK);
            g2.dispose();
            spentNanos += threads.getCurrentThreadCpuTime() - before;
        }
        return spentNanos * 1e-6 / PICTURES;
    }
}
