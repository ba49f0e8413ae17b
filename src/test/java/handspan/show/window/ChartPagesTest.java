package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.profile.ProfileFolder;
import handspan.show.chart.LiveChartView;
import handspan.show.scene.Ask;
import handspan.show.scene.Guide;
import handspan.show.scene.Pages;
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
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The charts on the window's pages, without a frame; each is drawn in two sizes for people to look at. */
class ChartPagesTest {
    private static final Path PICTURES = Path.of("target", "pictures", "window", "charts");
    private static final int[][] SIZES_PX = {{1280, 800}, {1024, 700}};

    @TempDir
    Path folder;

    private Evening evening;
    private Guide guide;
    private EveningPane pane;

    /** An evening that stands still, so that it can be drawn in peace; null while it goes on. */
    private volatile @Nullable EveningView still;

    private Screen screen() {
        EveningView held = still;
        return held == null ? guide.screen() : Pages.screen(held, guide.screen().showing());
    }

    @BeforeEach
    void begin() {
        evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast());
        guide = new Guide(evening, Showing.first(true));
        pane = Fingers.asked(() -> new EveningPane(this::screen, wish -> {}));
        guide.fulfil(new Wish.Open("sim:hall"));
        until(() ->
                evening.view().snapshot().filter(now -> now.readings() > 100).isPresent());
    }

    @AfterEach
    void end() {
        evening.close();
    }

    /** As a window's timer does: charts see all that happens meanwhile. */
    private void until(BooleanSupplier happened) {
        Waits.until(
                () -> Fingers.asked(() -> {
                    pane.refresh();
                    return happened.getAsBoolean();
                }),
                () -> evening.view().toString());
    }

    private void wish(Wish wish) {
        Fingers.asked(() -> {
            guide.fulfil(wish);
            pane.refresh();
            return true;
        });
    }

    private LiveChartView chart() {
        List<LiveChartView> charts = all(pane);
        assertEquals(1, charts.size(), charts::toString);
        return charts.get(0);
    }

    private String words() {
        return Fingers.asked(() -> chart().getAccessibleContext().getAccessibleDescription());
    }

    private static String words(List<LiveChartView> charts) {
        return charts.isEmpty() ? "" : charts.get(0).getAccessibleContext().getAccessibleDescription();
    }

    private static List<LiveChartView> all(Container container) {
        List<LiveChartView> found = new ArrayList<>();
        for (Component child : container.getComponents()) {
            if (child instanceof LiveChartView view && view.isVisible()) {
                found.add(view);
            } else if (child instanceof Container inner) {
                found.addAll(all(inner));
            }
        }
        return found;
    }

    private void takeRoom(String ruler) {
        wish(new Wish.Go(Station.ROOM));
        wish(new Wish.Say(Ask.RULER_MM, ruler));
        wish(new Wish.Measure(HoldPurpose.FRESH));
        until(() -> evening.view().keeping().profile().isPresent());
        until(() -> evening.view().doing().isEmpty() && pane.isIdle());
    }

    private void draw(String name) throws IOException {
        Files.createDirectories(PICTURES);
        for (boolean dark : new boolean[] {true, false}) {
            if (dark != guide.screen().showing().dark()) {
                wish(Wish.Plain.TURN_DARK);
            }
            for (int[] size : SIZES_PX) {
                BufferedImage image = Fingers.asked(() -> {
                    pane.setSize(size[0], size[1]);
                    pane.refresh();
                    Panes.layOut(pane);
                    Panes.layOut(pane);
                    BufferedImage made = new BufferedImage(size[0], size[1], BufferedImage.TYPE_INT_RGB);
                    Graphics2D pen = made.createGraphics();
                    pane.paint(pen);
                    pen.dispose();
                    return made;
                });
                String file = name + (dark ? "-dark-" : "-light-") + size[0] + ".png";
                ImageIO.write(image, "png", PICTURES.resolve(file).toFile());
            }
        }
    }

    private static double figure(String words, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(words);
        assertTrue(found.find(), words);
        return Double.parseDouble(found.group(1).replace(",", ""));
    }

    @Test
    void readingsGoOnWhileAnotherPageIsLookedAt() throws IOException {
        wish(new Wish.Go(Station.SHELF));
        assertTrue(Fingers.asked(() -> all(pane)).isEmpty());
        long before = evening.view().snapshot().orElseThrow().readings();
        until(() -> evening.view().snapshot().orElseThrow().readings() > before + 600);
        wish(new Wish.Go(Station.ARRIVE));
        // ten seconds of fifty a second
        assertTrue(figure(words(), "10 s ([\\d,]+) taken") > 350, this::words);
        draw("arrive-pitch");
        wish(new Wish.Say(Ask.CHART, "level hand"));
        assertEquals(
                "Readings, level hand, channel 2",
                chart().getAccessibleContext().getAccessibleName());
        draw("arrive-level");
    }

    @Test
    void aRoomIsSeenAsItIsTaken() throws IOException {
        wish(new Wish.Go(Station.ROOM));
        wish(new Wish.Say(Ask.RULER_MM, "100,200,300,400,500"));
        wish(new Wish.Measure(HoldPurpose.FRESH));
        until(() -> {
            EveningView now = evening.view();
            boolean shown = words(all(pane)).startsWith("ruler");
            still = shown ? now : null;
            return shown || now.keeping().profile().isPresent();
        });
        draw("room-holding");
        still = null;
        until(() -> evening.view().keeping().profile().isPresent());
        draw("room-response");
        assertTrue(chart().getAccessibleContext().getAccessibleName().startsWith("Response of the pitch hand"));
        wish(new Wish.Say(Ask.CHART, "noise of the last hold, pitch hand"));
        assertTrue(words().startsWith("ruler: "), this::words);
        draw("room-noise");
        wish(new Wish.Say(Ask.CHART, "noise of the last hold, level hand"));
        draw("room-noise-level");
        wish(new Wish.Say(Ask.CHART, "response, level hand"));
        draw("room-response-level");
    }

    @Test
    void quickerMovesTheChosenPointBeforeAndWhileItPlays() throws IOException {
        takeRoom("");
        wish(new Wish.Go(Station.NOTES));
        draw("notes-ladder");
        wish(new Wish.Say(Ask.CHART, "steady against quick"));
        until(() -> words().endsWith("ms"));
        double ms = figure(words(), ", (\\d+) ms");
        wish(new Wish.Quicken(1));
        until(() -> pane.isIdle() && evening.view().doing().isEmpty());
        assertTrue(figure(words(), ", (\\d+) ms") < ms, this::words);
        assertEquals(
                1,
                evening.view()
                        .keeping()
                        .profile()
                        .orElseThrow()
                        .tunings()
                        .get(0)
                        .quickness()
                        .steps());
        draw("notes-feel");
        wish(new Wish.Say(Ask.QUICKNESS, "0"));
        until(() -> pane.isIdle() && figure(words(), ", (\\d+) ms") == ms);
        wish(Wish.Plain.PLAY);
        until(() -> evening.view().sounding().setting().isPresent());
        wish(new Wish.Quicken(-2));
        until(() -> pane.isIdle() && figure(words(), ", (\\d+) ms") > ms);
        assertEquals(
                0,
                evening.view()
                        .keeping()
                        .profile()
                        .orElseThrow()
                        .tunings()
                        .get(0)
                        .quickness()
                        .steps());
    }

    @Test
    void theHandIsSeenOnNotesLevelAndTime() throws IOException {
        takeRoom("");
        wish(new Wish.Go(Station.PLAY));
        assertTrue(Fingers.asked(() -> all(pane)).isEmpty());
        wish(Wish.Plain.PLAY);
        until(() -> evening.view().sounding().setting().isPresent());
        wish(Wish.Plain.LET_SOUND);
        until(() -> words().startsWith("playing: "));
        long before = evening.view().snapshot().orElseThrow().readings();
        until(() ->
                evening.view().snapshot().orElseThrow().readings() > before + 500 && words().startsWith("playing: "));
        draw("play");
        wish(new Wish.Go(Station.NOTES));
        until(() -> words().contains(" cents at "));
        draw("notes-ladder-hand");
        wish(new Wish.Go(Station.LEVEL));
        until(() -> words().contains("sent "));
        draw("level-hand");
        wish(new Wish.Go(Station.PLAY));
        String there = words();
        assertNotEquals("not playing", there);
        wish(Wish.Plain.TURN_STAGE);
        assertTrue(Fingers.asked(() -> all(pane)).isEmpty(), "the stage alone has no chart");
    }

    /** Units as they are written: mm, Hz, dB, cents, ms, s, %. */
    @Test
    void everyChartHasANameAndATipWithUnits() {
        takeRoom("");
        List<String> seen = new ArrayList<>();
        for (Station station : List.of(Station.ARRIVE, Station.ROOM, Station.NOTES, Station.LEVEL)) {
            wish(new Wish.Go(station));
            for (String choice : List.of(
                    "pitch hand",
                    "level hand",
                    "response, pitch hand",
                    "noise of the last hold, pitch hand",
                    "where the notes lie",
                    "steady against quick")) {
                wish(new Wish.Say(Ask.CHART, choice));
                LiveChartView view = chart();
                assertFalse(view.getAccessibleContext().getAccessibleName().isEmpty(), station::toString);
                String tip = String.valueOf(view.getToolTipText());
                assertTrue(tip.matches(".*\\b(mm|Hz|dB|cents|ms|s)\\b.*"), tip);
                seen.add(view.getAccessibleContext().getAccessibleName());
            }
        }
        assertEquals(7, seen.stream().distinct().count(), seen::toString);
    }
}
