package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.profile.ProfileFolder;
import handspan.show.scene.Ask;
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
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages of rooms, notes and level by keys and rows, drawn large and small into pictures that people look at. */
class RoomPagesTest {
    private static final Path PICTURES = Path.of("target", "pictures", "window");

    @TempDir
    Path folder;

    private Evening evening;
    private Guide guide;
    private EveningPane pane;

    @BeforeEach
    void begin() throws IOException {
        for (String room : List.of("saltmill-hall", "fennel-attic")) {
            Files.copy(Path.of("profiles", room + ".json"), folder.resolve(room + ".json"));
        }
        evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast());
        guide = new Guide(evening, Showing.first(true));
        pane = Fingers.asked(() -> new EveningPane(guide));
        guide.begin();
        until(() -> evening.view().keeping().kept().size() == 2);
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

    /** Presses Enter on a row of the page's table. */
    private void enter(String cell) {
        Fingers.asked(() -> {
            pane.refresh();
            JTable table = tables(pane).get(0);
            int row = 0;
            while (!table.getValueAt(row, 0).equals(cell)) {
                row++;
            }
            table.setRowSelectionInterval(row, row);
            table.getActionMap().get("choose").actionPerformed(new ActionEvent(table, 0, "choose"));
            return true;
        });
    }

    private static List<JTable> tables(Container container) {
        List<JTable> found = new ArrayList<>();
        for (Component child : container.getComponents()) {
            if (child instanceof JTable table) {
                found.add(table);
            } else if (child instanceof Container inner) {
                found.addAll(tables(inner));
            }
        }
        return found;
    }

    private void drawn(String name, boolean dark) throws IOException {
        for (int width : new int[] {1280, 900}) {
            int height = width == 1280 ? 800 : 640;
            BufferedImage image = Fingers.asked(() -> {
                pane.setSize(width, height);
                pane.refresh();
                // twice: what wraps knows its width after the first
                Panes.layOut(pane);
                Panes.layOut(pane);
                BufferedImage made = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
                Graphics2D pen = made.createGraphics();
                pane.paint(pen);
                pen.dispose();
                return made;
            });
            Files.createDirectories(PICTURES);
            String file = name + (width == 1280 ? "" : "-small") + (dark ? "-dark" : "-light") + ".png";
            ImageIO.write(image, "png", PICTURES.resolve(file).toFile());
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aKeptRoomFromTheShelfToASoundCheckAndBackToWhatItWas(boolean dark) throws Exception {
        if (!dark) {
            key("F9");
        }
        Files.writeString(folder.resolve("quarry.json"), "{ \"format\": ", StandardCharsets.UTF_8);
        guide.fulfil(new Wish.Open("sim:hall"));
        until(() ->
                evening.view().snapshot().filter(now -> now.shape().isPresent()).isPresent());
        key("alt 7");
        key("F5");
        until(() -> evening.view().keeping().kept().size() == 3);
        drawn("r1-shelf", dark);
        enter("saltmill-hall");
        until(() -> evening.view().keeping().look().isPresent());
        key("ctrl ENTER");
        until(() -> evening.view().keeping().profile().isPresent());
        guide.fulfil(new Wish.Say(Ask.TRIM_CENTS, "10"));
        guide.fulfil(Wish.Plain.SAVE);
        until(() -> !guide.hasUnsaved());
        guide.fulfil(new Wish.Say(Ask.SCALE, "dorian"));
        guide.fulfil(Wish.Plain.SAVE);
        until(() -> !guide.hasUnsaved());
        guide.fulfil(new Wish.Look("saltmill-hall"));
        until(() -> evening.view()
                        .keeping()
                        .look()
                        .orElseThrow()
                        .history()
                        .entries()
                        .size()
                == 2);
        drawn("r2-shelf-room", dark);
        enter("room 'fennel-attic'");
        until(() -> evening.view().keeping().look().orElseThrow().compared().isPresent());
        drawn("r3-shelf-two-rooms", dark);
        key("BACK_SPACE");
        enter("version 1");
        until(() -> evening.view().keeping().look().orElseThrow().compared().isPresent());
        drawn("r4-shelf-version", dark);
        guide.fulfil(new Wish.Say(Ask.A4_HZ, "442"));
        key("ctrl B");
        drawn("r5-asked", dark);
        key("BACK_SPACE");
        guide.fulfil(Wish.Plain.SAVE);
        until(() -> !guide.hasUnsaved());
        key("ctrl B");
        until(() -> evening.view().keeping().news().contains("again")
                && evening.view().keeping().look().orElseThrow().compared().isEmpty());
        key("ctrl K");
        until(() -> evening.view().measuring().check().isPresent());
        drawn("r6-room-checked", dark);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void aRoomByEarItsTuningsAndItsLevel(boolean dark) throws Exception {
        if (!dark) {
            key("F9");
        }
        guide.fulfil(new Wish.Open("sim:hall"));
        until(() ->
                evening.view().snapshot().filter(now -> now.shape().isPresent()).isPresent());
        key("alt 3");
        guide.fulfil(new Wish.Say(Ask.NOTES_BY_EAR, "A3,E4,A4,E5,A5"));
        guide.fulfil(new Wish.Say(Ask.REACHES, "yes"));
        drawn("r7-room-by-ear", dark);
        key("ctrl R");
        until(() -> evening.view().keeping().profile().isPresent());
        until(() -> evening.view().thought().of().isPresent());
        drawn("r8-room-made", dark);
        EveningView held = RehearsedHolds.views().get(RehearsedHolds.views().size() * 3 / 4);
        EveningPane live = pane;
        pane = Fingers.asked(() ->
                new EveningPane(() -> Pages.screen(held, Showing.first(dark).at(Station.ROOM)), wish -> {}));
        drawn("r9-room-holding", dark);
        pane = live;
        key("alt 4");
        key("ctrl I");
        key("ctrl T");
        until(() -> evening.view().thought().tuning().equals("first 2"));
        key("ctrl I");
        drawn("r10-notes", dark);
        key("ctrl I");
        guide.fulfil(new Wish.Say(Ask.TRANSPOSE, "99"));
        drawn("r11-notes-refused", dark);
        guide.fulfil(Wish.Plain.PLAY);
        until(() -> evening.view().sounding().setting().isPresent());
        key("alt 5");
        guide.fulfil(new Wish.Say(Ask.CEILING_DB, "3"));
        drawn("r12-level-refused", dark);
    }

    @Test
    void keysOfTheShelfLoseNothingByChance() {
        key("alt 7");
        enter("fennel-attic");
        until(() -> evening.view().keeping().look().isPresent());
        key("ctrl ENTER");
        until(() -> evening.view().keeping().profile().isPresent());
        guide.fulfil(new Wish.Say(Ask.A4_HZ, "442"));
        key("ctrl ENTER");
        assertTrue(guide.hasUnsaved());
        key("BACK_SPACE");
        assertTrue(guide.hasUnsaved());
        key("ctrl ENTER");
        key("ctrl D");
        until(() -> !guide.hasUnsaved());
        assertFalse(evening.view()
                        .keeping()
                        .profile()
                        .orElseThrow()
                        .tunings()
                        .get(0)
                        .reference()
                        .a4Hz()
                == 442);
    }
}
