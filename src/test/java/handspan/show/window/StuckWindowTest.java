package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.TestRooms;
import handspan.Waits;
import handspan.live.path.TargetStatus;
import handspan.live.session.ActivityView;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import handspan.profile.ProfileFolder;
import handspan.show.scene.Guide;
import handspan.show.scene.Showing;
import handspan.show.scene.Station;
import handspan.show.scene.Wish;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sound does not wait for the window. */
class StuckWindowTest {
    private static final long STUCK_NANOS = 5 * Nanos.PER_SECOND;

    /** A frame each 5 ms while it glides. */
    private static final double FRAMES_PER_S = 200;

    /** Frames at the borders of the stretch that is counted. */
    private static final double BORDER_FRAMES = 4;

    @TempDir
    Path folder;

    /**
     * While the event thread waits for a latch, five seconds of the source's own time must bring their thousand frames,
     * every one of them handed to the network.
     */
    @Test
    void anEventThreadThatHangsKeepsNoFrameFromGoingOut() throws Exception {
        new ProfileFolder(folder).save(TestRooms.twoDistances(50));
        try (Evening evening = new Evening(
                        new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast());
                Datagrams patch = new Datagrams()) {
            Guide guide = new Guide(evening, Showing.first(true).at(Station.PLAY));
            List<EveningPane> made = new ArrayList<>();
            SwingUtilities.invokeAndWait(() -> made.add(new EveningPane(guide)));
            EveningPane pane = made.get(0);
            evening.shelf().load("test");
            Waits.until(() -> evening.view().keeping().profile().isPresent());
            evening.room().sendTo(List.of("udp:127.0.0.1:" + patch.port()));
            evening.connecting().open(Source.parse("sim:two-flight"));
            Waits.until(() -> evening.view().snapshot().isPresent());
            guide.fulfil(Wish.Plain.PLAY);
            Waits.until(() -> evening.view().sounding().setting().isPresent());
            guide.fulfil(Wish.Plain.LET_SOUND);
            Waits.until(
                    () -> plays(evening) && sent(evening) > 0,
                    () -> evening.view().toString());
            SwingUtilities.invokeAndWait(pane::refresh);
            CountDownLatch stuck = new CountDownLatch(1);
            CountDownLatch free = new CountDownLatch(1);
            SwingUtilities.invokeLater(() -> {
                stuck.countDown();
                try {
                    free.await();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
            });
            stuck.await();
            // counted before the stretch begins and after it ends: time goes on between two looks
            long sentFrom = sent(evening);
            Snapshot from = evening.view().snapshot().orElseThrow();
            long framesFrom = frames(from);
            Waits.until(() -> evening.view().snapshot().orElseThrow().timeNanos() - from.timeNanos() > STUCK_NANOS);
            Snapshot to = evening.view().snapshot().orElseThrow();
            long sentTo = sent(evening);
            assertEquals(1, free.getCount(), "the event thread was not held");
            free.countDown();
            double seconds = Nanos.toSeconds(to.timeNanos() - from.timeNanos());
            long frames = frames(to) - framesFrom;
            assertTrue(frames >= FRAMES_PER_S * seconds - BORDER_FRAMES, frames + " frames in " + seconds + " s");
            assertTrue(
                    sentTo - sentFrom >= FRAMES_PER_S * seconds - BORDER_FRAMES,
                    (sentTo - sentFrom) + " datagrams in " + seconds + " s");
            SwingUtilities.invokeAndWait(pane::refresh);
        }
    }

    private static boolean plays(Evening evening) {
        return evening.view()
                .snapshot()
                .filter(now -> now.activity() instanceof ActivityView.Playing)
                .isPresent();
    }

    private static long frames(Snapshot snapshot) {
        return ((ActivityView.Playing) snapshot.activity()).sent().next();
    }

    private static long sent(Evening evening) {
        return evening.view().sounding().targets().stream()
                .mapToLong(TargetStatus::sent)
                .sum();
    }
}
