package handspan.show.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.TestRooms;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.music.level.LevelCurve;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.StepKind;
import handspan.room.budget.FeelBudget;
import handspan.room.budget.RoomCheck;
import handspan.room.budget.StepsBudget;
import handspan.room.calibrate.CalibrationPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the rest of the program says to players on a command line reads as the window's own. */
class WindowWordsTest {
    private static final Pattern COMMAND_LINE = Pattern.compile("--[a-z]|handspan [a-z]");

    private static final Room ROOM = TestRooms.twoDistances(50).room();

    private static Hold held(StepKind kind, double mm) {
        return new Hold(
                kind,
                HandRole.PITCH,
                mm,
                0.1,
                0.4,
                100,
                OptionalDouble.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                1,
                Optional.empty());
    }

    private static List<String> checked(double nearMm, double farMm) {
        RoomCheck check = RoomCheck.of(
                ROOM, LevelCurve.USUAL, 6, List.of(held(StepKind.NEAR, nearMm), held(StepKind.FAR, farMm)), false);
        List<String> words = new ArrayList<>(check.reasons());
        words.add(check.remedy());
        return words;
    }

    private static String refused(Runnable asked) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, asked::run).getMessage());
    }

    /** Each is said by the part that says it, not written down again here. */
    @Test
    void noWordOfTheCommandLineIsLeft() {
        List<String> said = new ArrayList<>();
        said.addAll(checked(110, 490));
        said.addAll(checked(130, 500));
        Instrument usual = ROOM.instrument();
        Instrument light = new Instrument(
                "lamp", 1, 115_200, TestRooms.SHAPE, ChannelSpec.parse("1:photoresistor:counts10"), null, 5);
        said.add(refused(() -> CalibrationPlan.of(light, OptionalDouble.empty(), OptionalDouble.empty())));
        said.add(refused(() -> CalibrationPlan.byRuler(usual, List.of(100.0))));
        said.add(refused(() -> CalibrationPlan.byEar(usual, List.of(57))));
        Room noisy = TestRooms.twoDistances(50, Tuning.usual(), 9).room();
        Tuning steps = Tuning.usual().withSnap(Snap.STEPS);
        said.add(StepsBudget.refusal(noisy, steps).orElseThrow());
        said.add(FeelBudget.of(noisy, Tuning.usual()).words());
        assertTrue(
                said.stream()
                                .filter(words -> COMMAND_LINE.matcher(words).find())
                                .count()
                        >= 6,
                said::toString);
        for (String words : said) {
            String now = WindowWords.of(words);
            assertFalse(COMMAND_LINE.matcher(now).find(), now);
        }
    }

    @Test
    void whatHelpsIsNamedAsTheWindowNamesIt() {
        assertEquals(
                "not JSON, or bring back the newest good version (the file is set aside): look at it on the shelf and"
                        + " take version 3 back",
                WindowWords.of("not JSON, or bring back the newest good version (the file is set aside): handspan rooms"
                        + " restore --room \"old barn\" --version 3 --profiles /home/x/profiles"));
        assertEquals(
                "take 'Ends and light again'", WindowWords.of(checked(130, 500).get(2)));
    }

    @Test
    void allThatAPageSaysGoesThroughThem() {
        Block.Table table = (Block.Table) WindowWords.of((Block) new Block.Table(
                "ports",
                List.of("port", "to do"),
                List.of(new Block.Row(List.of("a", "run 'handspan ports'"), Optional.empty(), "try --baud auto"))));
        assertEquals("look for ports again", table.rows().get(0).cells().get(1));
        assertEquals("try the link speed auto", table.rows().get(0).tip());
        assertEquals(new Block.Ring(0, "", "let the board print more often"), WindowWords.of((Block)
                new Block.Ring(0, "", "give a longer --hold, or let the board print more often")));
    }
}
