package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Waits;
import handspan.profile.ProfileFolder;
import handspan.show.scene.Ask;
import handspan.show.scene.Block;
import handspan.show.scene.Guide;
import handspan.show.scene.Pages;
import handspan.show.scene.RehearsedHolds;
import handspan.show.scene.Screen;
import handspan.show.scene.Showing;
import handspan.show.scene.Station;
import handspan.show.scene.Wish;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.EveningView;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Makes the pictures of the window that the README shows, of a simulated instrument in an invented venue, in
 * target/pictures/readme; those of the README by {@code mvn test -Dtest=ReadmePicturesTest
 * -Dhandspan.pictures=src/docs}.
 */
class ReadmePicturesTest {
    private static final String ROOM = "saltmill-hall";
    private static final int WIDTH_PX = 1200;
    private static final int HEIGHT_PX = 780;
    private static final long MOST_BYTES = 120_000;

    @TempDir
    Path folder;

    @Test
    void fourPicturesOfAnEvening() throws Exception {
        try (Datagrams patch = new Datagrams()) {
            fourPictures(patch);
        }
    }

    private void fourPictures(Datagrams patch) throws Exception {
        Files.copy(Path.of("profiles", ROOM + ".json"), folder.resolve(ROOM + ".json"));
        try (Evening evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast())) {
            Guide guide = new Guide(evening, Showing.first(true));
            guide.fulfil(new Wish.Open("sim:hall"));
            until(() -> evening.view()
                    .snapshot()
                    .filter(now -> now.readings() > 600 && now.shape().isPresent())
                    .isPresent());
            write("window-arrive", guide.screen());
            EveningView held = RehearsedHolds.views().stream()
                    .filter(now -> filled(now) > 0.6)
                    .findFirst()
                    .orElseThrow();
            write("window-room", Pages.screen(held, Showing.first(true).at(Station.ROOM)));
            guide.fulfil(new Wish.Load(ROOM));
            until(() -> evening.view().thought().of().isPresent());
            write(
                    "window-notes",
                    Pages.screen(evening.view(), Showing.first(false).at(Station.NOTES)));
            guide.fulfil(new Wish.Say(Ask.TARGETS, "udp:127.0.0.1:" + patch.port()));
            guide.fulfil(new Wish.Go(Station.PLAY));
            guide.fulfil(Wish.Plain.PLAY);
            until(() -> evening.view().sounding().setting().isPresent());
            guide.fulfil(Wish.Plain.LET_SOUND);
            guide.fulfil(Wish.Plain.TURN_STAGE);
            Screen[] plays = {guide.screen()};
            until(() -> {
                plays[0] = guide.screen();
                return sounds(plays[0]);
            });
            write("window-stage", plays[0]);
        }
    }

    private static void until(BooleanSupplier happened) {
        Waits.until(happened);
    }

    private static double filled(EveningView view) {
        return Pages.page(view, Showing.first(true).at(Station.ROOM)).blocks().stream()
                .filter(Block.Ring.class::isInstance)
                .mapToDouble(block -> ((Block.Ring) block).fill01())
                .max()
                .orElse(0);
    }

    private static boolean sounds(Screen screen) {
        return screen.page().blocks().stream()
                .filter(Block.Stage.class::isInstance)
                .map(block -> ((Block.Stage) block).view())
                .anyMatch(view -> view.state().equals("playing") && view.level01() > 0.4 && Math.abs(view.cents()) > 5);
    }

    private static void write(String name, Screen screen) throws Exception {
        EveningPane pane = Fingers.asked(() -> {
            EveningPane made = new EveningPane(() -> screen, wish -> {});
            drawn(made);
            return made;
        });
        // charts that take time come with a later look
        until(() -> Fingers.asked(pane::isIdle));
        BufferedImage image = Fingers.asked(() -> drawn(pane));
        Path file = Path.of(System.getProperty("handspan.pictures", "target/pictures/readme"), name + ".png");
        Files.createDirectories(file.getParent());
        ImageIO.write(image, "png", file.toFile());
        assertTrue(Files.size(file) < MOST_BYTES, () -> file + " is too large");
    }

    private static BufferedImage drawn(EveningPane pane) {
        pane.setSize(WIDTH_PX, HEIGHT_PX);
        pane.refresh();
        for (int i = 0; i < 4; i++) {
            Panes.layOut(pane);
        }
        BufferedImage image = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pane.paint(pen);
        pen.dispose();
        return image;
    }
}
