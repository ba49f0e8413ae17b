package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Datagrams;
import handspan.Datagrams.Datagram;
import handspan.Waits;
import handspan.live.session.ActivityView;
import handspan.live.session.PlayDesk;
import handspan.music.tuning.PitchRange;
import handspan.profile.ProfileFolder;
import handspan.show.chart.Theme;
import handspan.show.scene.Block;
import handspan.show.scene.Guide;
import handspan.show.scene.Pages;
import handspan.show.scene.Showing;
import handspan.show.scene.Station;
import handspan.wiring.Cues;
import handspan.wiring.Rigs;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.EveningView;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Frame;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real window on a real screen, from plugging in to playing, by nothing but keys and a mouse as the system hands
 * them to every program. A receiver hears what is sent.
 */
@Tag("screen")
class EveningWindowTest {
    private static final Path PICTURES = Path.of("target", "pictures", "window-screen");
    private static final String ROOM = "saltmill-hall";
    private static final long PATIENCE_S = 30;

    /** ISO 16:1975: the standard tuning frequency of A4, Hz. */
    private static final double A4_HZ = 440;

    /** A float has 24 bits of it. */
    private static final double HZ_TOLERANCE = 0.001;

    /** A page of one colour has one; letters alone bring shades. */
    private static final int LEAST_COLOURS = 20;

    @TempDir
    Path folder;

    private final MemoryPreferences kept = new MemoryPreferences();
    private Datagrams patch;
    private Fingers fingers;
    private @Nullable Evening evening;
    private @Nullable JFrame frame;
    private @Nullable CompletableFuture<Void> shown;

    @BeforeEach
    void listen() throws IOException, AWTException {
        patch = new Datagrams();
        fingers = new Fingers();
        Files.createDirectories(PICTURES);
    }

    @AfterEach
    void end() throws IOException {
        fingers.close();
        if (evening != null) {
            evening.close();
        }
        if (frame != null) {
            frame.dispose();
        }
        patch.close();
    }

    // ---- the window under test ----

    private void open(SourceOptions options) {
        Evening begun = new Evening(new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), options);
        evening = begun;
        EveningWindow window = new EveningWindow(new Guide(begun, Showing.first(true)), new WindowMemory(kept));
        shown = CompletableFuture.runAsync(() -> {
            try {
                window.showAndWait();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        until(() -> Fingers.asked(EveningWindowTest::found).isPresent());
        frame = Fingers.asked(EveningWindowTest::found).orElseThrow();
        until(() -> Fingers.asked(() -> frame().isFocused() && frame().getFocusOwner() != null));
        until(() -> view().arrival().looked() && view().doing().isEmpty());
        // the ports that were found come into the list with the next look
        int rows = view().arrival().ports().size() + Rigs.simulations().size();
        wait(JTable.class, table -> table.getRowCount() == rows);
    }

    private static Optional<JFrame> found() {
        return Arrays.stream(Frame.getFrames())
                .filter(Frame::isShowing)
                .filter(JFrame.class::isInstance)
                .map(JFrame.class::cast)
                .filter(one -> one.getContentPane() instanceof EveningPane)
                .findFirst();
    }

    private JFrame frame() {
        return Objects.requireNonNull(frame);
    }

    private EveningView view() {
        return Objects.requireNonNull(evening).view();
    }

    private void until(BooleanSupplier happened) {
        Waits.until(happened, () -> evening == null ? "" : evening.view().toString());
    }

    private EveningPane pane() {
        return (EveningPane) frame().getContentPane();
    }

    /** Waits until a key does something, and presses it. */
    private void key(String name) {
        until(() -> isBound(name) && Fingers.asked(() -> frame().getFocusOwner() != null));
        fingers.press(name);
    }

    private boolean isBound(String name) {
        return Fingers.asked(
                () -> pane().getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).get(KeyStroke.getKeyStroke(name)) != null);
    }

    private <T extends Component> T wait(Class<T> kind, Predicate<T> wanted) {
        List<T> found = new ArrayList<>();
        until(() -> {
            found.clear();
            found.addAll(Fingers.asked(() -> Panes.all(pane(), kind).stream()
                    .filter(one -> one.isShowing() && wanted.test(one))
                    .toList()));
            return !found.isEmpty();
        });
        // a page that has just come is laid out by then
        fingers.settle();
        return found.get(0);
    }

    private void button(String words) {
        fingers.click(wait(AbstractButton.class, button -> isNamed(button, words)));
    }

    private static boolean isNamed(AbstractButton button, String words) {
        return button.isEnabled() && words.equals(button.getAccessibleContext().getAccessibleName());
    }

    /** Clicks the row of a list twice that begins so. */
    private void row(String first) {
        JTable list = wait(JTable.class, table -> rowOf(table, first) >= 0);
        Rectangle cell = Fingers.asked(() -> list.getCellRect(rowOf(list, first), 0, true));
        fingers.clickTwice(list, cell);
    }

    private static int rowOf(JTable table, String first) {
        for (int row = 0; row < table.getRowCount(); row++) {
            if (table.getValueAt(row, 0).equals(first)) {
                return row;
            }
        }
        return -1;
    }

    private void writeTarget() {
        fingers.press("ctrl A");
        fingers.type("udp:127.0.0.1:" + portOfPatch());
        fingers.press("ENTER");
        until(() -> view().sounding().wanted().get(0).text().endsWith(":" + portOfPatch()));
    }

    private void untilHeard() {
        until(() -> patch.all().stream().anyMatch(EveningWindowTest::sounds));
        for (Datagram datagram :
                patch.all().stream().filter(EveningWindowTest::sounds).toList()) {
            assertEquals(A4_HZ, ((Number) datagram.argument("/pitch")).doubleValue(), HZ_TOLERANCE);
        }
    }

    private void untilRoom() {
        while (view().keeping().profile().isEmpty()) {
            int captured = captured();
            until(() -> view().keeping().profile().isPresent() || captured() != captured);
        }
    }

    private boolean hasFocus(Component component) {
        return Fingers.asked(() -> frame().getFocusOwner() == component);
    }

    // ---- what is known and heard ----

    private boolean isLearned() {
        return view().snapshot()
                .filter(now -> now.readings() > 100 && now.shape().isPresent())
                .isPresent();
    }

    private boolean isMuted() {
        return view().sounding().setting().orElseThrow().muted();
    }

    private boolean isSaved() {
        return view().keeping().profile().isPresent() && !view().keeping().unsaved();
    }

    private double filled() {
        Showing there = Showing.first(true).at(Station.ROOM);
        return Pages.page(view(), there).blocks().stream()
                .filter(Block.Ring.class::isInstance)
                .mapToDouble(block -> ((Block.Ring) block).fill01())
                .max()
                .orElse(0);
    }

    private static boolean sounds(Datagram datagram) {
        return datagram.gain01() > 0;
    }

    private List<Datagram> since(int heard) {
        List<Datagram> all = patch.all();
        return all.subList(heard, all.size());
    }

    // ---- pictures ----

    /** What the screen shows now, dark and light. */
    private void pictures(String name) throws IOException {
        picture(name, Theme.DARK);
        key("F9");
        picture(name, Theme.LIGHT);
        key("F9");
    }

    private void picture(String name, Theme theme) throws IOException {
        until(() -> Fingers.asked(() -> pane().getBackground()).equals(theme.background()));
        BufferedImage image = fingers.picture(pane());
        ImageIO.write(
                image,
                "png",
                PICTURES.resolve(name + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png")
                        .toFile());
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        long ground = Arrays.stream(pixels)
                .filter(pixel -> pixel == theme.background().getRGB()
                        || pixel == theme.plot().getRGB())
                .count();
        assertTrue(ground > pixels.length / 3, () -> name + " is not " + theme);
        long colours = Arrays.stream(pixels).distinct().count();
        assertTrue(colours > LEAST_COLOURS, () -> name + ": " + colours + " colours");
    }

    // ---- tests ----

    /** By the keyboard alone, with the simulated hands moving by the clock. */
    @Test
    void byKeysAloneFromPluggingInToPlaying()
            throws IOException, InterruptedException, ExecutionException, TimeoutException {
        open(SourceOptions.USUAL);
        long beginNanos = System.nanoTime();

        // connect: the list has the keyboard
        JTable list = wait(JTable.class, table -> table.getRowCount() > 0);
        until(() -> hasFocus(list));
        while (!Fingers.asked(() -> list.getValueAt(list.getSelectedRow(), 0)).equals("sim:hall")) {
            fingers.press("DOWN");
        }
        fingers.press("ENTER");
        until(this::isLearned);

        // prove the patch
        key("alt 2");
        JTextField targets = wait(JTextField.class, field -> true);
        while (!hasFocus(targets)) {
            fingers.press("TAB");
        }
        int before = fingers.keys();
        writeTarget();
        final int typed = fingers.keys() - before;
        key("ctrl T");
        untilHeard();
        key("ctrl ENTER");

        // room: the hands of the simulation follow what is asked for
        key("alt 3");
        key("ctrl R");
        until(() -> filled() > 0.3);
        int asked = fingers.keys();
        pictures("3-room-holding");
        int forPictures = fingers.keys() - asked;
        untilRoom();
        key("ctrl S");
        until(this::isSaved);
        assertTrue(Files.isRegularFile(folder.resolve("tonight.json")));
        int keys = fingers.keys() - forPictures;
        System.out.printf(
                Locale.ROOT,
                "window: connect to save with %d keys (%d of them to write a target), %d clicks, %.1f s by the wall"
                        + " clock (the simulated hands move by the clock)%n",
                keys,
                typed,
                fingers.clicks(),
                (System.nanoTime() - beginNanos) / 1e9);

        // play: muted, heard, silent
        key("alt 6");
        int heard = patch.all().size();
        key("ctrl P");
        until(() -> view().sounding().setting().isPresent());
        until(() -> since(heard).size() > 3);
        assertTrue(isMuted());
        assertTrue(since(heard).stream().noneMatch(EveningWindowTest::sounds), "it sounds while muted");
        key("ctrl ENTER");
        until(() -> since(heard).stream().anyMatch(datagram -> sounds(datagram) && datagram.hasHand()));
        assertInRange(heard);
        key("ESCAPE");
        until(this::isMuted);
        untilSilent();
        key("ctrl E");
        until(() -> view().sounding().setting().isEmpty());
        practise();
        close();
    }

    /** Three notes, the sound let through on the way; the simulated hand reaches for them. */
    private void practise() throws IOException {
        key("ctrl F");
        JTextField notes = wait(
                JTextField.class,
                field -> "Notes".equals(field.getAccessibleContext().getAccessibleName()));
        while (!hasFocus(notes)) {
            fingers.press("TAB");
        }
        fingers.press("ctrl A");
        fingers.type("3");
        fingers.press("ENTER");
        until(() -> view().practice().wish().notes().equals("3"));
        int heard = patch.all().size();
        key("ctrl P");
        until(() -> view().snapshot().orElseThrow().activity() instanceof ActivityView.Practising);
        assertTrue(isMuted());
        pictures("6-practice");
        assertTrue(since(heard).stream().noneMatch(EveningWindowTest::sounds), "it sounds while muted");
        key("ctrl ENTER");
        until(() -> since(heard).stream().anyMatch(EveningWindowTest::sounds));
        until(() -> !view().practice().told().isEmpty());
        pictures("6-practice-over");
        key("ctrl E");
        until(() -> view().sounding().setting().isEmpty());
        untilSilent();
    }

    /** By the mouse, but for a target and the end; every page is taken, dark and light. */
    @Test
    void byTheMouseFromPluggingInToPlaying()
            throws IOException, InterruptedException, ExecutionException, TimeoutException {
        open(SourceOptions.USUAL);
        pictures("1-arrive-choosing");
        long beginNanos = System.nanoTime();
        int asked = fingers.keys();
        row("sim:hall");
        until(this::isLearned);
        asked -= keysOf(() -> pictures("1-arrive-open"));
        button("Patch");
        fingers.click(wait(JTextField.class, field -> true));
        writeTarget();
        button("Try the patch");
        untilHeard();
        asked -= keysOf(() -> pictures("2-patch-trying"));
        button("I hear it");
        button("Room");
        button("Take the holds");
        untilRoom();
        asked -= keysOf(() -> pictures("3-room-made"));
        button("Save");
        until(this::isSaved);
        System.out.printf(
                Locale.ROOT,
                "window: connect to save with %d clicks and %d keys (to write a target), %.1f s by the wall clock (the"
                        + " simulated hands move by the clock; pictures are taken on the way)%n",
                fingers.clicks(),
                fingers.keys() - asked,
                (System.nanoTime() - beginNanos) / 1e9);

        until(() -> view().thought().of().isPresent());
        button("Notes");
        pictures("4-notes");
        button("Level");
        pictures("5-level");
        button("Shelf");
        wait(JTable.class, table -> rowOf(table, "tonight") >= 0);
        pictures("7-shelf");
        button("Play");
        pictures("6-play-before");
        int heard = patch.all().size();
        AbstractButton ready = wait(AbstractButton.class, one -> isNamed(one, "Get ready to play"));
        // as hasty hands do it: the second click comes where sound can be let through a moment later
        fingers.clickTwice(ready, new Rectangle(ready.getSize()));
        until(() -> view().sounding().setting().isPresent());
        until(() -> since(heard).size() > 3);
        assertTrue(isMuted());
        pictures("6-play-muted");
        assertTrue(since(heard).stream().noneMatch(EveningWindowTest::sounds), "it sounds while muted");
        button("Let sound through");
        until(() -> since(heard).stream().anyMatch(datagram -> sounds(datagram) && datagram.hasHand()));
        assertInRange(heard);
        pictures("6-play");
        key("F9");
        button("Stage alone");
        // dark, whatever the rest is
        picture("6-stage", Theme.DARK);
        key("F11");
        key("F9");
        button("Silence");
        until(this::isMuted);
        untilSilent();
        button("End");
        until(() -> view().sounding().setting().isEmpty());
        close();
    }

    /** Something that presses keys. */
    private interface Task {
        void run() throws IOException;
    }

    private int keysOf(Task task) throws IOException {
        int before = fingers.keys();
        task.run();
        return before - fingers.keys();
    }

    /** Whatever is hit while it is muted, but the key that is meant for it: nothing is heard. */
    @Test
    void noOtherKeyLetsSoundThrough() throws IOException, InterruptedException, ExecutionException, TimeoutException {
        Files.copy(Path.of("profiles", ROOM + ".json"), folder.resolve(ROOM + ".json"));
        open(SourceOptions.USUAL);
        row("sim:hall");
        until(this::isLearned);
        key("alt 7");
        row(ROOM);
        button("Load");
        until(() -> view().keeping().profile().isPresent());
        key("alt 2");
        fingers.click(wait(JTextField.class, field -> true));
        writeTarget();
        for (String name : List.of("TAB", "SPACE", "TAB", "SPACE", "shift TAB", "SPACE", "ENTER")) {
            fingers.press(name);
        }
        key("alt 6");
        key("ctrl P");
        until(() -> view().sounding().setting().isPresent());
        until(() -> !patch.all().isEmpty());
        List<String> all = new ArrayList<>(List.of("SPACE", "ENTER", "shift ENTER", "alt ENTER", "BACK_SPACE"));
        for (char letter = 'A'; letter <= 'Z'; letter++) {
            all.add(String.valueOf(letter));
        }
        for (char digit = '0'; digit <= '9'; digit++) {
            all.add(String.valueOf(digit));
        }
        all.addAll(List.of("PAGE_UP", "PAGE_DOWN", "HOME", "END", "UP", "DOWN", "LEFT", "RIGHT", "F11", "F11"));
        for (String name : all) {
            fingers.press(name);
            assertTrue(isMuted(), name);
        }
        // every button that the keyboard comes by, from the first to well after the last
        int buttons =
                Fingers.asked(() -> Panes.all(pane(), AbstractButton.class).size());
        for (int i = 0; i < buttons + 3; i++) {
            fingers.press("TAB");
            fingers.press("SPACE");
            fingers.press("ENTER");
            assertTrue(view().sounding().setting().map(PlayDesk.Setting::muted).orElse(true));
        }
        // a key that leads here and is kept down, as keyboards repeat it
        key("alt 3");
        until(() -> isBound("ctrl ENTER"));
        fingers.pressTwice("ctrl ENTER");
        until(() -> Fingers.asked(() -> Panes.all(pane(), StagePane.class).size()) == 1);
        assertTrue(view().sounding().setting().map(PlayDesk.Setting::muted).orElse(true));
        assertTrue(patch.all().stream().noneMatch(EveningWindowTest::sounds), "it sounded");
        close();
    }

    private int portOfPatch() {
        try {
            return patch.port();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Holds so far; less than none where none are taken. */
    private int captured() {
        return view().snapshot().orElseThrow().activity() instanceof ActivityView.Calibrating calibrating
                ? calibrating.captured()
                : -1;
    }

    /** What is heard lies within the range of the room that was made. */
    private void assertInRange(int heard) {
        PitchRange range =
                view().keeping().profile().orElseThrow().tunings().get(0).range();
        double lowHz = A4_HZ * Math.pow(2, (range.lowKey() - 69 - 0.5) / 12.0);
        double highHz = A4_HZ * Math.pow(2, (range.highKey() - 69 + 0.5) / 12.0);
        for (Datagram datagram :
                since(heard).stream().filter(EveningWindowTest::sounds).toList()) {
            double hz = ((Number) datagram.argument("/pitch")).doubleValue();
            assertTrue(hz > lowHz && hz < highHz, () -> hz + " Hz");
        }
    }

    private void untilSilent() {
        until(() -> {
            List<Datagram> all = patch.all();
            Datagram last = all.get(all.size() - 1);
            return !sounds(last) && !last.hasHand();
        });
    }

    private void close() throws InterruptedException, ExecutionException, TimeoutException {
        CompletableFuture<Void> open = Objects.requireNonNull(shown);
        assertFalse(open.isDone());
        if (view().keeping().unsaved()) {
            // asked in the page, without a box before it
            key("ctrl Q");
            until(() -> isBound("ctrl D"));
            assertFalse(open.isDone());
            fingers.pressLast("ctrl D");
        } else {
            until(() -> isBound("ctrl Q"));
            fingers.pressLast("ctrl Q");
        }
        open.get(PATIENCE_S, TimeUnit.SECONDS);
        assertFalse(frame().isDisplayable());
        assertTrue(new WindowMemory(kept).dark());
        assertEquals(frame().getWidth(), kept.getInt("width", 0));
        assertTrue(SwingUtilities.isDescendingFrom(pane(), frame()));
    }
}
