package handspan.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Waits;
import handspan.profile.ProfileFolder;
import handspan.show.scene.Ask;
import handspan.show.scene.Guide;
import handspan.show.scene.Showing;
import handspan.show.scene.Station;
import handspan.show.scene.Wish;
import handspan.show.window.PaintedWindow;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What each page of the window costs its event thread at thirty pictures a second, while an instrument plays. */
@Tag("bench")
class WindowCostBench {
    private static final int PICTURES = 120;
    private static final double PICTURES_PER_S = 30;
    private static final long BETWEEN_NANOS = 33_000_000;
    private static final double MOST01 = 0.25;

    @TempDir
    Path folder;

    /** A page with the chart that is chosen on it. */
    private record Look(Station station, String chart) {}

    /** Processor time of the event thread, ms a picture. */
    private record Cost(double refreshMs, double movingMs, double allMs) {
        static double share01(double ms) {
            return ms * 1e-3 * PICTURES_PER_S;
        }
    }

    @Test
    void eachPageAtThirtyPicturesASecond() throws Exception {
        Files.copy(Path.of("profiles", "saltmill-hall.json"), folder.resolve("saltmill-hall.json"));
        BenchTable table = new BenchTable(
                "10-window-cost",
                "(10) event thread of the window, 1280 x 800, at 30 pictures a second while sim:hall plays: a look at"
                        + " how all stands, and with it charts and stage drawn, or all of the window (into memory)",
                "page",
                "look alone",
                "what moves drawn",
                "all drawn");
        double most01 = 0;
        double mostAll01 = 0;
        try (Evening evening = new Evening(
                        new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL);
                Datagrams patch = new Datagrams()) {
            Guide guide = new Guide(evening, Showing.first(true));
            List<PaintedWindow> made = new ArrayList<>();
            SwingUtilities.invokeAndWait(() -> made.add(new PaintedWindow(guide)));
            Driven driven = new Driven(guide, made.get(0));
            driven.wish(new Wish.Load("saltmill-hall"));
            driven.wish(new Wish.Open("sim:hall"));
            Waits.until(() ->
                    evening.view().snapshot().filter(now -> now.readings() > 50).isPresent()
                            && evening.view().keeping().profile().isPresent());
            driven.wish(new Wish.Say(Ask.TARGETS, "udp:127.0.0.1:" + patch.port()));
            driven.wish(Wish.Plain.PLAY);
            Waits.until(() -> evening.view().sounding().setting().isPresent());
            driven.wish(Wish.Plain.LET_SOUND);
            for (Look look : List.of(
                    new Look(Station.ARRIVE, "pitch hand"),
                    new Look(Station.PATCH, ""),
                    new Look(Station.ROOM, "response, pitch hand"),
                    new Look(Station.NOTES, "where the notes lie"),
                    new Look(Station.NOTES, "steady against quick"),
                    new Look(Station.LEVEL, ""),
                    new Look(Station.PLAY, ""),
                    new Look(Station.SHELF, ""))) {
                Cost cost = driven.measured(look);
                most01 = Math.max(most01, Cost.share01(cost.refreshMs + cost.movingMs));
                mostAll01 = Math.max(mostAll01, Cost.share01(cost.refreshMs + cost.allMs));
                table.row(
                        look.station.word() + (look.chart.isEmpty() ? "" : ", " + look.chart),
                        share(cost.refreshMs),
                        share(cost.refreshMs + cost.movingMs),
                        share(cost.refreshMs + cost.allMs));
            }
        }
        table.figure(
                        "the dearest page under a quarter of a core",
                        BenchTable.figure(100 * most01, 1) + " % (all of the window drawn anew each time: "
                                + BenchTable.figure(100 * mostAll01, 1) + " %)",
                        most01 < MOST01)
                .note("software drawing; a window draws anew what has changed alone")
                .publish();
    }

    private static String share(double ms) {
        return BenchTable.figure(100 * Cost.share01(ms), 1) + " %";
    }

    /** A window that is driven. */
    private record Driven(Guide guide, PaintedWindow window) {
        void wish(Wish wish) throws Exception {
            SwingUtilities.invokeAndWait(() -> {
                guide.fulfil(wish);
                window.refresh();
            });
        }

        Cost measured(Look look) throws Exception {
            wish(new Wish.Go(look.station));
            if (!look.chart.isEmpty()) {
                wish(new Wish.Say(Ask.CHART, look.chart));
            }
            SwingUtilities.invokeAndWait(window::layOut);
            run();
            return run();
        }

        private Cost run() throws Exception {
            List<Cost> costs = new ArrayList<>();
            for (int i = 0; i < PICTURES; i++) {
                SwingUtilities.invokeAndWait(() -> {
                    double refresh = spent(window::refresh);
                    double moving = spent(window::paintMoving);
                    double all = spent(window::paintAll);
                    costs.add(new Cost(refresh, moving, all));
                });
                LockSupport.parkNanos(BETWEEN_NANOS);
            }
            assertTrue(window.isIdle(), "a chart is still being worked out");
            return new Cost(
                    costs.stream().mapToDouble(Cost::refreshMs).average().orElseThrow(),
                    costs.stream().mapToDouble(Cost::movingMs).average().orElseThrow(),
                    costs.stream().mapToDouble(Cost::allMs).average().orElseThrow());
        }

        private static double spent(Runnable work) {
            var threads = ManagementFactory.getThreadMXBean();
            long before = threads.getCurrentThreadCpuTime();
            work.run();
            return (threads.getCurrentThreadCpuTime() - before) * 1e-6;
        }
    }
}
