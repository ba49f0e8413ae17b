package handspan.show.window;

import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.show.scene.Block;
import handspan.show.scene.Page;
import handspan.show.scene.Pages;
import handspan.show.scene.Screen;
import handspan.show.scene.Showing;
import handspan.show.scene.Sight;
import handspan.show.scene.Station;
import handspan.wiring.Cues;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.SessionLog;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.Targets;
import handspan.wiring.evening.Evening;
import java.awt.Frame;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/**
 * Plays a room, a message with each reading, and has a window open meanwhile whose event thread fares ill in a chosen
 * way: started in a process of its own by a benchmark. Without a screen the window's content is drawn into memory.
 */
public final class WindowProbe {
    private static final int FRAME_MS = 33;
    private static final int STUCK_EVERY_MS = 2200;
    private static final long STUCK_NANOS = 2_000_000_000L;
    private static final int WIDTH_PX = 1280;
    private static final int HEIGHT_PX = 800;

    /** What becomes of the window. */
    public enum Fate {
        /** There is none. */
        NONE,
        /** It is open and shows two charts that move. */
        OPEN,
        /** Its event thread waits for two seconds, again and again. */
        BLOCKED,
        /** Its event thread reckons for two seconds, again and again. */
        SPINNING,
        /** It is minimised; hidden where nobody manages windows. */
        MINIMISED
    }

    private WindowProbe() {}

    /** Runs until it is ended: source, folder of the rooms, room, target, {@link Fate}. */
    public static void main(String[] words) throws Exception {
        ProfileFolder folder = new ProfileFolder(Path.of(words[1]));
        RoomProfile profile = folder.load(words[2]);
        Targets targets = Targets.open(profile.send().to(List.of(handspan.music.send.SendTarget.parse(words[3]))));
        Rig rig = Rigs.open(
                Source.parse(words[0]),
                SourceOptions.USUAL,
                profile.room().instrument().shape(),
                targets.all(),
                null);
        Runtime.getRuntime().addShutdownHook(new Thread(rig::close));
        rig.submit(new Command.Play(
                profile,
                profile.tunings().get(0),
                PathSettings.USUAL.muted(false).gliding(false)));
        Fate fate = Fate.valueOf(words[4]);
        if (fate != Fate.NONE) {
            SwingUtilities.invokeAndWait(() -> open(folder, profile, rig, fate));
        }
        Thread.currentThread().join();
    }

    private static void open(ProfileFolder folder, RoomProfile profile, Rig rig, Fate fate) {
        Evening evening = new Evening(folder, SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL);
        Sight sent = new Sight.Sent(profile.tunings().get(0));
        Sight ladder = new Sight.Ladder(profile, profile.tunings().get(0));
        Page page = new Page(Station.PLAY, List.of(new Block.Live(sent), new Block.Live(ladder)));
        Showing showing = Showing.first(true).at(Station.PLAY);
        EveningPane pane = new EveningPane(
                () -> {
                    Screen plain = Pages.screen(evening.view(), showing);
                    Screen.Live live = new Screen.Live(Optional.of(rig.snapshot()), List.of(sent, ladder));
                    return new Screen(showing, plain.marks(), page, plain.always(), plain.status(), live);
                },
                wish -> {});
        Timer timer = new Timer(FRAME_MS, event -> pane.refresh());
        if (GraphicsEnvironment.isHeadless()) {
            pane.setSize(WIDTH_PX, HEIGHT_PX);
            pane.validate();
            BufferedImage image = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
            if (fate != Fate.MINIMISED) {
                timer.addActionListener(event -> pane.paint(image.createGraphics()));
            }
        } else {
            JFrame frame = new JFrame("probe");
            frame.setContentPane(pane);
            frame.setSize(WIDTH_PX, HEIGHT_PX);
            frame.setVisible(true);
            if (fate == Fate.MINIMISED) {
                frame.setExtendedState(Frame.ICONIFIED);
                frame.setVisible(false);
            }
        }
        timer.start();
        if (fate == Fate.BLOCKED || fate == Fate.SPINNING) {
            new Timer(STUCK_EVERY_MS, event -> stick(fate == Fate.SPINNING)).start();
        }
    }

    private static void stick(boolean spinning) {
        long until = System.nanoTime() + STUCK_NANOS;
        while (System.nanoTime() < until) {
            if (!spinning) {
                LockSupport.parkNanos(until - System.nanoTime());
            }
        }
    }
}
