package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.formdev.flatlaf.util.UIScale;
import handspan.Waits;
import handspan.live.session.ActivityView;
import handspan.profile.ProfileFolder;
import handspan.show.chart.ChartPalette;
import handspan.show.scene.Ask;
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
import handspan.wiring.evening.HoldPurpose;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BooleanSupplier;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every page in every size, scale and look: nothing is cut off, nothing is too small, all has a name and a tip. */
class PagesFitTest {
    private static final Path PICTURES = Path.of("target", "pictures", "window-scaled");

    /** Eleven points at 96 dots an inch (a point is 1/72 inch), px. */
    private static final double ELEVEN_POINTS_PX = 11 * 96 / 72.0;

    /** Text in Java is laid out to whole px. */
    private static final double PX_TOLERANCE = 2;

    /** WCAG 2.1, success criterion 1.4.3: contrast of text. */
    private static final double TEXT_CONTRAST = 4.5;

    /** WCAG 2.1, success criterion 1.4.11: contrast of what is not text. */
    private static final double MARK_CONTRAST = 3;

    private static final int WIDTH_PX = 1280;
    private static final int HEIGHT_PX = 800;

    @TempDir
    static Path folder;

    private static final Map<String, Screen> SCREENS = new LinkedHashMap<>();
    private static final Map<String, Screen> LIGHT = new LinkedHashMap<>();

    @BeforeAll
    static void goThroughAnEvening() throws Exception {
        try (Evening evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast())) {
            Guide guide = new Guide(evening, Showing.first(true));
            guide.begin();
            until(() ->
                    evening.view().arrival().looked() && evening.view().doing().isEmpty());
            keep(calm(evening), "1-arrive-choosing", Station.ARRIVE);
            keep(calm(evening), "7-shelf-empty", Station.SHELF);
            keep(calm(evening), "3-room-none", Station.ROOM);
            guide.fulfil(new Wish.Open("sim:hall"));
            until(() -> evening.view()
                    .snapshot()
                    .filter(now -> now.readings() > 100 && now.shape().isPresent())
                    .isPresent());
            keep(calm(evening), "1-arrive-open", Station.ARRIVE);
            keep(calm(evening), "2-patch", Station.PATCH);
            guide.fulfil(new Wish.Say(Ask.ROOM_NAME, "saltmill-hall"));
            guide.fulfil(new Wish.Measure(HoldPurpose.FRESH));
            until(() -> evening.view().keeping().profile().isPresent());
            EveningView held = RehearsedHolds.views().get(RehearsedHolds.views().size() / 3);
            keep(held, "3-room-holding", Station.ROOM);
            until(() -> evening.view().thought().of().isPresent());
            keep(calm(evening), "3-room-made", Station.ROOM);
            keep(calm(evening), "4-notes", Station.NOTES);
            keep(calm(evening), "5-level", Station.LEVEL);
            keep(calm(evening), "6-play-before", Station.PLAY);
            guide.fulfil(new Wish.Go(Station.PLAY));
            guide.fulfil(Wish.Plain.CLOSE);
            calm(evening);
            keep(guide, "8-closing");
            guide.fulfil(Wish.Plain.STAY);
            guide.fulfil(Wish.Plain.SAVE);
            until(() -> !evening.view().keeping().unsaved());
            keep(calm(evening), "7-shelf", Station.SHELF);
            guide.fulfil(Wish.Plain.PLAY);
            until(() -> evening.view().sounding().setting().isPresent());
            keep(calm(evening), "6-play-muted", Station.PLAY);
            guide.fulfil(Wish.Plain.TURN_STAGE);
            calm(evening);
            keep(guide, "6-stage");
            guide.fulfil(Wish.Plain.STOP_PLAYING);
            until(() -> evening.view().sounding().setting().isEmpty());
            goThroughPractice(evening, guide);
        }
    }

    private static void goThroughPractice(Evening evening, Guide guide) {
        guide.fulfil(new Wish.Go(Station.PLAY));
        guide.fulfil(Wish.RoomAct.TURN_FURTHER);
        calm(evening);
        keep(guide, "6-practice-before");
        guide.fulfil(new Wish.Say(Ask.PLAYER, "Mira"));
        guide.fulfil(new Wish.Say(Ask.COURSE_NOTES, "60"));
        guide.fulfil(Wish.Plain.PRACTISE);
        List<EveningView> asking = new ArrayList<>();
        until(() -> {
            EveningView now = evening.view();
            boolean asks = now.snapshot().get().activity() instanceof ActivityView.Practising practising
                    && practising.wanted().isPresent()
                    && practising.playing().hands().pitch()
                    && practising.attempts().size() > 3;
            if (asks && now.doing().isEmpty() && now.sounding().setting().isPresent()) {
                asking.add(now);
            }
            return !asking.isEmpty();
        });
        keep(asking.get(0), "6-practice-asking", Station.PLAY);
        until(() -> !evening.view().practice().told().isEmpty());
        keep(calm(evening), "6-practice-over", Station.PLAY);
        guide.fulfil(Wish.Plain.TURN_STAGE);
        calm(evening);
        keep(guide, "6-practice-stage");
    }

    /** A view while nothing is being done: words that end with dots are cut ones then. */
    private static EveningView calm(Evening evening) {
        List<EveningView> seen = new ArrayList<>();
        until(() -> {
            EveningView now = evening.view();
            seen.add(now);
            return now.doing().isEmpty();
        });
        return seen.get(seen.size() - 1);
    }

    @AfterAll
    static void forget() {
        SCREENS.clear();
        LIGHT.clear();
    }

    @AfterEach
    void asItWas() {
        Fingers.asked(() -> UIScale.setZoomFactor(1));
    }

    private static void until(BooleanSupplier happened) {
        Waits.until(happened);
    }

    /** As the guide shows it, dark and light. */
    private static void keep(Guide guide, String name) {
        SCREENS.put(name, guide.screen());
        guide.fulfil(Wish.Plain.TURN_DARK);
        LIGHT.put(name, guide.screen());
        guide.fulfil(Wish.Plain.TURN_DARK);
    }

    private static void keep(EveningView view, String name, Station station) {
        SCREENS.put(name, Pages.screen(view, Showing.first(true).at(station)));
        LIGHT.put(name, Pages.screen(view, Showing.first(false).at(station)));
    }

    private static EveningPane pane(Screen screen, int widthPx, int heightPx) {
        EveningPane pane = new EveningPane(() -> screen, wish -> {});
        pane.setSize(widthPx, heightPx);
        // what wraps knows its width after the first, and what is scrolled its height after the second
        for (int i = 0; i < 4; i++) {
            Panes.layOut(pane);
        }
        return pane;
    }

    private static BufferedImage drawn(EveningPane pane) {
        BufferedImage image = new BufferedImage(pane.getWidth(), pane.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pane.paint(pen);
        pen.dispose();
        return image;
    }

    /** All letters of a component, as it draws itself. */
    private static List<LetterNet.Written> letters(JComponent component) {
        List<LetterNet.Written> written = new ArrayList<>();
        int width = Math.max(1, component.getWidth());
        int height = Math.max(1, component.getHeight());
        Graphics2D pen = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB).createGraphics();
        component.paint(new LetterNet(pen, written));
        pen.dispose();
        return written;
    }

    // ---- size ----

    @ParameterizedTest
    @CsvSource({
        "1280, 800, 100", "1280, 800, 125", "1280, 800, 150", "1280, 800, 200", "900, 640, 100", "900, 640, 125",
        "900, 640, 150", "900, 640, 200", "1024, 600, 100", "1024, 600, 125", "1024, 600, 150", "1024, 600, 200"
    })
    void nothingIsCutOff(int widthPx, int heightPx, int percent) throws IOException {
        Files.createDirectories(PICTURES);
        for (Map.Entry<String, Screen> one : SCREENS.entrySet()) {
            String name = String.format(Locale.ROOT, "%s %d x %d at %d %%", one.getKey(), widthPx, heightPx, percent);
            BufferedImage image = Fingers.asked(() -> {
                WindowScale.use(percent);
                EveningPane pane = pane(one.getValue(), widthPx, heightPx);
                fits(pane, name, percent);
                return drawn(pane);
            });
            String file = String.format(Locale.ROOT, "%s-%dx%d-%d.png", one.getKey(), widthPx, heightPx, percent);
            ImageIO.write(image, "png", PICTURES.resolve(file).toFile());
        }
        assertTrue(SCREENS.size() > 12);
    }

    private static void fits(EveningPane pane, String name, int percent) {
        PagePane page = Panes.all(pane, PagePane.class).get(0);
        Container port = page.getParent();
        assertEquals(port.getWidth(), page.getWidth(), name);
        boolean scrolled = page.getHeight() > port.getHeight();
        JScrollPane scroll = (JScrollPane) port.getParent();
        assertEquals(scrolled, scroll.getVerticalScrollBar().isVisible(), name + ": scroll bar");
        for (Component child : page.getComponents()) {
            int right = child.getX() + child.getWidth() + page.getInsets().right;
            int foot = child.getY() + child.getHeight() + page.getInsets().bottom;
            assertTrue(right <= page.getWidth(), () -> name + ": " + child.getClass() + " ends at " + right);
            assertTrue(
                    foot <= page.getHeight(),
                    () -> name + ": " + child.getClass() + " ends at " + foot + " of " + page.getHeight());
        }
        for (JComponent component : Panes.all(pane, JComponent.class)) {
            if (isSeen(component, pane) && (isDrawn(component) || component instanceof JLabel)) {
                for (LetterNet.Written written : letters(component)) {
                    within(written, component, name, percent);
                }
            }
            if (component instanceof JTextComponent || component instanceof JComboBox) {
                int least = component.getFontMetrics(component.getFont()).getHeight();
                assertTrue(!isSeen(component, pane) || component.getHeight() >= least, name + ": low field");
            }
        }
    }

    /** Tables scroll in themselves, and a chart has letters of its own. */
    private static boolean isSeen(JComponent component, EveningPane pane) {
        for (Component one = component; one != pane; one = one.getParent()) {
            if (!one.isVisible() || one instanceof JTable || one instanceof LiveChartPane || one.getWidth() == 0) {
                return false;
            }
            if (one.getParent() instanceof JComboBox || one.getParent() instanceof javax.swing.table.JTableHeader) {
                return false;
            }
        }
        return true;
    }

    private static boolean isDrawn(JComponent component) {
        return component instanceof WrappedText
                || component instanceof StepsPane
                || component instanceof StagePane
                || (component instanceof AbstractButton && !(component.getParent() instanceof JComboBox));
    }

    private static void within(LetterNet.Written written, JComponent component, String name, int percent) {
        Rectangle2D box = written.box();
        String words =
                name + ": '" + written.text() + "' of " + component.getClass().getSimpleName() + " at " + box + " in "
                        + component.getWidth() + " x " + component.getHeight();
        assertTrue(box.getX() >= -PX_TOLERANCE && box.getMaxX() <= component.getWidth() + PX_TOLERANCE, words);
        assertTrue(box.getY() >= -PX_TOLERANCE && box.getMaxY() <= component.getHeight() + PX_TOLERANCE, words);
        assertTrue(written.sizePx() >= ELEVEN_POINTS_PX * percent / 100 - 0.01, words + ": " + written.sizePx());
        boolean cut = written.text().endsWith("...")
                && !written.text().startsWith("Working out")
                && !written.text().startsWith("Learning");
        assertFalse(cut && !(component.getParent() instanceof RailPane), words);
    }

    /** What has the keyboard, and what the page keys turn to, is seen. */
    @Test
    void aPageThatDoesNotFitTurnsByItsKeys() {
        Fingers.asked(() -> {
            WindowScale.use(200);
            EveningPane pane = pane(Objects.requireNonNull(SCREENS.get("4-notes")), 900, 640);
            PagePane page = Panes.all(pane, PagePane.class).get(0);
            assertTrue(page.getHeight() > page.getParent().getHeight());
            pane.getActionMap().get("PAGE_DOWN").actionPerformed(new java.awt.event.ActionEvent(pane, 0, ""));
            Panes.layOut(pane);
            assertTrue(page.getY() < 0, page.getBounds()::toString);
            pane.getActionMap().get("PAGE_UP").actionPerformed(new java.awt.event.ActionEvent(pane, 0, ""));
            Panes.layOut(pane);
            assertEquals(new Point(0, 0), page.getLocation());
            JTextField last = Panes.all(page, JTextField.class)
                    .get(Panes.all(page, JTextField.class).size() - 1);
            ((JComponent) last.getParent()).scrollRectToVisible(last.getBounds());
            Panes.layOut(pane);
            int y = SwingUtilities.convertPoint(last, 0, 0, page.getParent()).y;
            assertTrue(y >= 0 && y + last.getHeight() <= page.getParent().getHeight());
            return true;
        });
    }

    // ---- letters, names, tips ----

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void noLettersAreUnderElevenPointsAndAllHasANameAndATip(boolean dark) {
        int letters = 0;
        int named = 0;
        for (Map.Entry<String, Screen> one : (dark ? SCREENS : LIGHT).entrySet()) {
            EveningPane pane = Fingers.asked(() -> pane(one.getValue(), WIDTH_PX, HEIGHT_PX));
            List<LetterNet.Written> written = Fingers.asked(() -> letters(pane));
            for (LetterNet.Written some : written) {
                assertTrue(some.sizePx() >= ELEVEN_POINTS_PX, () -> one.getKey() + ": " + some);
            }
            letters += written.size();
            for (JComponent component : Panes.all(pane, JComponent.class)) {
                boolean hasLetters = component instanceof AbstractButton
                        || component instanceof JLabel
                        || component instanceof JTextField
                        || component instanceof JComboBox
                        || component instanceof JTable
                        || component instanceof WrappedText;
                assertTrue(
                        !hasLetters || component.getFont().getSize2D() >= ELEVEN_POINTS_PX,
                        () -> one.getKey() + ": " + component.getFont() + " of " + component.getClass());
                if (isOurs(component)) {
                    String name = component.getAccessibleContext().getAccessibleName();
                    assertTrue(name != null && !name.isBlank(), () -> one.getKey() + ": no name for " + component);
                    boolean tips = component instanceof DrawnPane || component instanceof JTable;
                    assertTrue(
                            tips
                                    || (component.getToolTipText() != null
                                            && !component.getToolTipText().isBlank()),
                            () -> one.getKey() + ": no tip for " + name);
                    named++;
                }
            }
        }
        assertTrue(letters > 30 * SCREENS.size(), letters + " pieces of text");
        assertTrue(named > 15 * SCREENS.size(), named + " names");
    }

    /** Whether it is one of ours rather than a part of the toolkit's: an arrow of a list, a bar. */
    private static boolean isOurs(JComponent component) {
        boolean part = component.getParent() instanceof JComboBox
                || component.getParent() instanceof javax.swing.JScrollBar
                || SwingUtilities.getAncestorOfClass(LiveChartPane.class, component) != null;
        boolean empty = component instanceof WrappedText text && text.text().isEmpty();
        return !part
                && !empty
                && component.isVisible()
                && (component instanceof AbstractButton
                        || component instanceof JTextField
                        || component instanceof JComboBox
                        || component instanceof JTable
                        || component instanceof DrawnPane);
    }

    // ---- looks ----

    /** Okabe and Ito's palette is in ChartPalette, with its source. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void coloursThatSaySomethingAreOfThePaletteAndTextIsRead(boolean dark) {
        Set<Color> palette = Set.of(
                ChartPalette.ORANGE,
                ChartPalette.SKY_BLUE,
                ChartPalette.BLUISH_GREEN,
                ChartPalette.YELLOW,
                ChartPalette.BLUE,
                ChartPalette.VERMILLION,
                ChartPalette.REDDISH_PURPLE);
        LookFile file = LookFile.of(dark);
        for (Ink ink : List.of(Ink.FILL, Ink.NEEDLE, Ink.LIMIT, Ink.GOOD, Ink.LOOK, Ink.BAD)) {
            assertTrue(palette.contains(file.ink(ink)), ink::toString);
        }
        for (Ink ground : List.of(Ink.GROUND, Ink.RAISED)) {
            assertContrast(file, Ink.TEXT, ground, TEXT_CONTRAST);
            assertContrast(file, Ink.QUIET_TEXT, ground, TEXT_CONTRAST);
            assertContrast(file, Ink.FILL, ground, MARK_CONTRAST);
            assertContrast(file, Ink.NEEDLE, ground, MARK_CONTRAST);
            assertContrast(file, Ink.GOOD, ground, MARK_CONTRAST);
            assertContrast(file, Ink.BAD, ground, MARK_CONTRAST);
        }
        assertContrast(file, Ink.ON_FILL, Ink.FILL, TEXT_CONTRAST);
        assertContrast(file, Ink.ON_LOOK, Ink.LOOK, TEXT_CONTRAST);
        Looks looks = Fingers.asked(() -> Looks.wear(dark));
        assertTrue(looks.theme().smallFont().getSize() * looks.chartScale() >= ELEVEN_POINTS_PX);
        assertEquals(looks.theme().background(), file.ink(Ink.GROUND), "charts have the ground of their page");
    }

    private static void assertContrast(LookFile file, Ink ink, Ink ground, double least) {
        double a = luminance(file.ink(ink));
        double b = luminance(file.ink(ground));
        double contrast = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        assertTrue(contrast >= least, () -> ink + " on " + ground + ": " + contrast);
    }

    /** WCAG 2.1, definition of relative luminance. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @Test
    void theWindowRemembersAndRefusesAScaleThatIsNone() {
        MemoryPreferences kept = new MemoryPreferences();
        assertTrue(new WindowMemory(kept).dark());
        kept.putBoolean("dark", false);
        assertFalse(new WindowMemory(kept).dark());
        Exception refused = assertThrows(IllegalArgumentException.class, () -> WindowScale.use(250));
        assertTrue(String.valueOf(refused.getMessage()).contains("250 % (100..200)"), refused::toString);
    }
}
