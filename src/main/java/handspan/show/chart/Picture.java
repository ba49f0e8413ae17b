package handspan.show.chart;

import handspan.music.practice.PracticeRun;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.NoteChance;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.ui.RectangleInsets;

/**
 * A chart with a title and a file name: what the rest of the program hands about.
 *
 * @param title in a few words, for a tab or a list
 * @param fileName of its PNG
 * @param chart to be drawn
 */
public record Picture(String title, String fileName, JFreeChart chart) {
    private static final RectangleInsets ON_PAPER = new RectangleInsets(4, 0, 4, 12);

    /** A played passage: meant, sent, level. */
    public static Picture passage(PassageTrace trace, Tuning tuning, Theme theme) {
        return new Picture("Passage", "passage.png", PassageChart.of(trace, tuning, theme));
    }

    /** Where the notes lie, and how likely each is missed. */
    public static Picture pitchLadder(RoomProfile profile, Tuning tuning, List<NoteChance> chances, Theme theme) {
        return new Picture("Pitch ladder", "pitch-ladder.png", PitchLadderChart.of(profile, tuning, chances, theme));
    }

    /** How loud the level hand plays. */
    public static Picture level(RoomProfile profile, Theme theme) {
        return new Picture("Level", "level.png", LevelCurveChart.of(profile, theme));
    }

    /** What steadiness costs. */
    public static Picture steadyQuick(RoomProfile profile, Tuning tuning, FeelBudget feel, Theme theme) {
        return new Picture("Steady or quick", "steady-quick.png", SteadyQuickChart.of(profile, tuning, feel, theme));
    }

    /** How a player's practice goes on. */
    public static Picture progress(String player, List<PracticeRun> runs, Theme theme) {
        return new Picture("Progress", "progress.png", ProgressChart.of(player, runs, theme));
    }

    /** Raw readings of one channel. */
    public static Picture rawReadings(RawTrace trace, Theme theme) {
        return new Picture("Raw readings", "raw-readings.png", RawReadingsChart.of(trace, theme));
    }

    /** What the sensor of the pitch hand says against where the hand is, with the holds. */
    public static Picture response(Room room, Theme theme) {
        return new Picture("Response", "response.png", HoldsChart.response(room, theme));
    }

    /** How noisy the holds of the pitch hand are. */
    public static Picture holdNoise(Room room, Theme theme) {
        return new Picture("Noise of the holds", "hold-noise.png", HoldsChart.noise(room, theme));
    }

    /**
     * The same, made fit for a low place among other things: its axes at the sides say their units alone, and it begins
     * at its edge.
     */
    public Picture low() {
        ChartSheet.low(chart.getXYPlot());
        chart.setPadding(ON_PAPER);
        return this;
    }

    /**
     * Writes it into a folder at its usual size.
     *
     * @return the file
     */
    public Path write(Path folder) throws IOException {
        Path file = folder.resolve(fileName);
        ChartFile.write(chart, file, ChartFile.USUAL_WIDTH_PX, ChartFile.USUAL_HEIGHT_PX);
        return file;
    }
}
