package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.live.session.LinkState;
import handspan.profile.ProfileFolder;
import handspan.show.scene.Guide;
import handspan.show.scene.Showing;
import handspan.show.scene.Station;
import handspan.show.scene.Wish;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.Taking;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Recording, replay and survey by keys, by the clock; each page is drawn for people to look at. */
class TakePagesTest {
    private static final Path PICTURES = Path.of("target", "pictures", "window");
    private static final int WIDTH_PX = 1280;
    private static final int HEIGHT_PX = 800;

    @TempDir
    Path folder;

    private Evening evening;
    private Guide guide;
    private EveningPane pane;

    @BeforeEach
    void begin() {
        evening = new Evening(new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL);
        guide = new Guide(evening, Showing.first(true));
        pane = shown(guide);
        guide.begin();
    }

    @AfterEach
    void end() {
        evening.close();
    }

    private void until(BooleanSupplier happened) {
        Waits.until(happened, () -> evening.view().toString());
    }

    private static EveningPane shown(Guide guide) {
        List<EveningPane> made = new ArrayList<>();
        onTheEventThread(() -> made.add(new EveningPane(guide)));
        return made.get(0);
    }

    private static void onTheEventThread(Runnable done) {
        try {
            SwingUtilities.invokeAndWait(done);
        } catch (InterruptedException | InvocationTargetException e) {
            throw new IllegalStateException(e);
        }
    }

    private void key(String stroke) {
        onTheEventThread(() -> {
            pane.refresh();
            Object name = pane.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke(stroke));
            assertTrue(name != null, () -> "no key " + stroke);
            pane.getActionMap().get(name).actionPerformed(new ActionEvent(pane, 0, stroke));
        });
    }

    private void wish(Wish wish) {
        onTheEventThread(() -> guide.fulfil(wish));
    }

    /** In both themes. */
    private void drawn(String name) throws IOException {
        Files.createDirectories(PICTURES);
        for (String theme : new String[] {"-dark", "-light"}) {
            BufferedImage made = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
            onTheEventThread(() -> {
                pane.setSize(WIDTH_PX, HEIGHT_PX);
                pane.refresh();
                // twice: what wraps knows its width after the first
                Panes.layOut(pane);
                Panes.layOut(pane);
                Graphics2D pen = made.createGraphics();
                pane.paint(pen);
                pen.dispose();
            });
            ImageIO.write(made, "png", PICTURES.resolve(name + theme + ".png").toFile());
            key("F9");
        }
    }

    private double place() {
        return evening.view().taking().place().orElseThrow().placeS();
    }

    private boolean is(LinkState state) {
        return evening.view().snapshot().filter(now -> now.link() == state).isPresent();
    }

    @Test
    void aBoardIsRecordedAndItsRecordingPlayedByKeys() throws IOException {
        wish(new Wish.Open("sim:hall"));
        until(() -> evening.view().arrival().instrument().isPresent() && is(LinkState.UP));
        key("ctrl T");
        until(() -> evening.view()
                .taking()
                .made()
                .filter(made -> made.lines() > 150)
                .isPresent());
        drawn("9-recording");
        key("ctrl T");
        until(() ->
                evening.view().taking().made().filter(made -> !made.running()).isPresent());
        Taking.Made made = evening.view().taking().made().orElseThrow();
        key("ctrl W");
        until(() -> evening.view().snapshot().isEmpty()
                && evening.view().taking().shelf().size() == 1);
        drawn("9-kept");
        wish(new Wish.Open("take:" + made.file()));
        until(() -> evening.view()
                        .taking()
                        .place()
                        .filter(place -> place.lengthS().isPresent())
                        .isPresent()
                && evening.view().arrival().instrument().isPresent());
        key("ctrl G");
        until(() -> is(LinkState.PAUSED));
        key("ctrl HOME");
        until(() -> place() <= 0);
        wish(new Wish.Jump(2));
        until(() -> place() >= 2);
        assertEquals(2, place(), 1e-6);
        drawn("9-replay");
        wish(new Wish.Go(Station.PLAY));
        drawn("9-replay-play");
        key("ctrl LEFT");
        until(() -> place() <= 0);
        key("ctrl G");
        until(() -> is(LinkState.UP));
        // the room of this instrument that comes along, muted
        Files.copy(Path.of("profiles", "saltmill-hall.json"), folder.resolve("saltmill-hall.json"));
        wish(new Wish.Load("saltmill-hall"));
        until(() -> evening.view().keeping().profile().isPresent());
        key("ctrl P");
        until(() -> evening.view().sounding().setting().isPresent()
                && evening.view().sounding().setting().get().muted());
        drawn("9-replay-playing");
    }

    @Test
    void whileTheSensorsAreJudgedAPromptCanBeReadFromFarAway() throws IOException {
        wish(new Wish.Open("sim:hall"));
        until(() -> evening.view().arrival().instrument().isPresent()
                && evening.view().snapshot().isPresent());
        key("ctrl J");
        until(() -> evening.view().surveyed().seconds() > 4);
        drawn("9-survey-running");
        key("BACK_SPACE");
        until(() -> !evening.view().surveyed().isSomething());
    }

    @Test
    void theSensorsAreJudgedByOneKey() throws IOException {
        evening.close();
        evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast());
        guide = new Guide(evening, Showing.first(true));
        pane = shown(guide);
        wish(new Wish.Open("sim:flicker"));
        until(() -> evening.view().arrival().instrument().isPresent()
                && evening.view().snapshot().isPresent());
        key("ctrl J");
        until(() -> !evening.view().surveyed().channels().isEmpty());
        drawn("9-survey");
        key("BACK_SPACE");
        until(() -> !evening.view().surveyed().isSomething());
    }
}
