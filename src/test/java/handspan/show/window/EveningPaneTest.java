package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.profile.ProfileFolder;
import handspan.show.scene.Ask;
import handspan.show.scene.Block;
import handspan.show.scene.Guide;
import handspan.show.scene.Pages;
import handspan.show.scene.RehearsedHolds;
import handspan.show.scene.Showing;
import handspan.show.scene.Station;
import handspan.show.scene.Wish;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.EveningView;
import handspan.wiring.evening.HoldPurpose;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The window's content without a frame: driven by its keys and rows, drawn into pictures that people look at. */
class EveningPaneTest {
    private static final Path PICTURES = Path.of("target", "pictures", "window");
    private static final int WIDTH_PX = 1280;
    private static final int HEIGHT_PX = 800;

    /** A page of one colour has one; letters alone bring shades. */
    private static final int LEAST_COLOURS = 20;

    @TempDir
    Path folder;

    private Evening evening;
    private Guide guide;
    private EveningPane pane;

    @BeforeEach
    void begin() {
        evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast());
        guide = new Guide(evening, Showing.first(true));
        pane = Fingers.asked(() -> new EveningPane(guide));
        guide.begin();
        until(() -> evening.view().arrival().looked() && evening.view().doing().isEmpty());
    }

    @AfterEach
    void end() {
        evening.close();
    }

    private void until(BooleanSupplier happened) {
        Waits.until(happened, () -> evening.view().toString());
    }

    private void key(String stroke) {
        Fingers.asked(() -> {
            pane.refresh();
            Object name = pane.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke(stroke));
            assertTrue(name != null, () -> "no key " + stroke);
            pane.getActionMap().get(name).actionPerformed(new ActionEvent(pane, 0, stroke));
            return true;
        });
    }

    private boolean has(String stroke) {
        return Fingers.asked(() -> {
            pane.refresh();
            return pane.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke(stroke)) != null;
        });
    }

    private BufferedImage drawn(String name, boolean dark) throws IOException {
        BufferedImage image = Fingers.asked(() -> {
            pane.setSize(WIDTH_PX, HEIGHT_PX);
            pane.refresh();
            // twice: what wraps knows its width after the first
            Panes.layOut(pane);
            Panes.layOut(pane);
            BufferedImage made = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
            Graphics2D pen = made.createGraphics();
            pane.paint(pen);
            pen.dispose();
            return made;
        });
        Files.createDirectories(PICTURES);
        ImageIO.write(
                image,
                "png",
                PICTURES.resolve(name + (dark ? "-dark" : "-light") + ".png").toFile());
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < HEIGHT_PX; y += 2) {
            for (int x = 200; x < WIDTH_PX; x += 2) {
                colours.add(image.getRGB(x, y));
            }
        }
        assertTrue(colours.size() > LEAST_COLOURS, () -> name + ": " + colours.size() + " colours");
        return image;
    }

    private static double filled(EveningView now) {
        Showing there = Showing.first(true).at(Station.ROOM);
        return Pages.page(now, there).blocks().stream()
                .filter(Block.Ring.class::isInstance)
                .mapToDouble(block -> ((Block.Ring) block).fill01())
                .max()
                .orElse(0);
    }

    private String state() {
        return Pages.page(evening.view(), Showing.first(true).at(Station.PLAY)).blocks().stream()
                .filter(Block.Stage.class::isInstance)
                .map(block -> ((Block.Stage) block).view().state())
                .findFirst()
                .orElseThrow();
    }

    /** From the first page to playing by keys and one row of a table; each page is drawn on the way. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void anEveningByKeysFromTheFirstPageToTheStage(boolean dark) throws Exception {
        if (!dark) {
            key("F9");
        }
        drawn("1-arrive-choosing", dark);
        Fingers.asked(() -> {
            pane.refresh();
            JTable table = Panes.all(pane, JTable.class).get(0);
            int row = 0;
            while (!table.getValueAt(row, 0).equals("sim:hall")) {
                row++;
            }
            table.setRowSelectionInterval(row, row);
            table.getActionMap().get("choose").actionPerformed(new ActionEvent(table, 0, "choose"));
            return true;
        });
        until(() -> evening.view()
                .snapshot()
                .filter(now -> now.readings() > 100 && now.shape().isPresent())
                .isPresent());
        drawn("1-arrive-open", dark);
        key("alt 2");
        drawn("2-patch", dark);
        key("alt 3");
        drawn("3-room-before", dark);
        key("ctrl R");
        until(() -> evening.view().keeping().profile().isPresent());
        EveningView held = RehearsedHolds.views().stream()
                .filter(now -> filled(now) > 0.3)
                .findFirst()
                .orElseThrow();
        EveningPane live = pane;
        pane = Fingers.asked(
                () -> new EveningPane(() -> Pages.screen(held, guide.screen().showing()), wish -> {}));
        drawn("3-room-holding", dark);
        pane = live;
        drawn("3-room-made", dark);
        until(() -> evening.view().thought().of().isPresent());
        key("alt 4");
        drawn("4-notes", dark);
        key("alt 5");
        drawn("5-level", dark);
        key("alt 7");
        drawn("7-shelf", dark);
        key("alt 6");
        assertFalse(has("ctrl ENTER"), "sound can be opened before it plays");
        drawn("6-play-before", dark);
        key("ctrl P");
        until(() -> evening.view().sounding().setting().isPresent());
        assertTrue(evening.view().sounding().setting().get().muted());
        drawn("6-play-muted", dark);
        key("ctrl ENTER");
        until(() -> !evening.view().sounding().setting().get().muted());
        until(() -> state().equals("playing"));
        key("UP");
        until(() -> evening.view().sounding().setting().get().transpose() == 1);
        drawn("6-play", dark);
        key("F11");
        drawn("6-stage", dark);
        key("F11");
        Fingers.asked(() -> {
            guide.fulfil(Wish.Plain.CLOSE);
            return true;
        });
        drawn("8-closing", dark);
        assertFalse(has("ctrl ENTER"));
        key("BACK_SPACE");
        assertFalse(evening.view().sounding().setting().get().muted());
        key("ESCAPE");
        until(() -> evening.view().sounding().setting().get().muted());
    }

    @Test
    void everyButtonAndFieldHasANameForThoseWhoHearTheScreenAndATip() {
        guide.fulfil(new Wish.Open("sim:hall"));
        until(() ->
                evening.view().snapshot().filter(now -> now.shape().isPresent()).isPresent());
        guide.fulfil(new Wish.Say(Ask.ROOM_NAME, "barn"));
        guide.fulfil(new Wish.Measure(HoldPurpose.FRESH));
        until(() -> evening.view().keeping().profile().isPresent());
        int count = 0;
        for (Station station : Station.values()) {
            guide.fulfil(new Wish.Go(station));
            Fingers.asked(() -> {
                pane.refresh();
                return true;
            });
            for (AbstractButton button : Panes.all(pane, AbstractButton.class)) {
                if (button.getClass().getName().startsWith("handspan")
                        || !String.valueOf(button.getText()).isEmpty()) {
                    assertFalse(
                            button.getAccessibleContext().getAccessibleName().isEmpty(), station::toString);
                    assertFalse(String.valueOf(button.getToolTipText()).isEmpty(), station::toString);
                    count++;
                }
            }
        }
        assertTrue(count > 7 * 8, count + " buttons");
    }

    /** Letters under 11 points are not to be found on any page; a point is a pixel at 72 dots an inch. */
    @Test
    void noLettersAreSmall() {
        for (Station station : Station.values()) {
            guide.fulfil(new Wish.Go(station));
            Fingers.asked(() -> {
                pane.refresh();
                return true;
            });
            for (JComponent component : Panes.all(pane, JComponent.class)) {
                if (component.getFont() != null && component.isVisible()) {
                    assertTrue(
                            component.getFont().getSize2D() >= 11,
                            () -> String.format(Locale.ROOT, "%s at %s", component.getClass(), station));
                }
            }
        }
        assertEquals(7, Station.values().length);
    }
}
