package handspan.show.chart;

import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.NoteChance;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.JFreeChart;

/**
 * A chart with a title and a file name: what the rest of the program hands about.
 *
 * @param title in a few words, for a tab or a list
 * @param fileName of its PNG
 * @param chart to be drawn
 */
public record Picture(String title, String fileName, JFreeChart chart) {
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

    /** Raw readings of one channel. */
    public static Picture rawReadings(RawTrace trace, Theme theme) {
        return new Picture("Raw readings", "raw-readings.png", RawReadingsChart.of(trace, theme));
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
