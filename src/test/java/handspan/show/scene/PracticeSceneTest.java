package handspan.show.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.music.practice.Asking;
import handspan.music.practice.Attempt;
import handspan.music.practice.PracticeRun;
import handspan.music.practice.Stop;
import handspan.music.practice.WantedNote;
import handspan.profile.PlayerFolder;
import handspan.profile.ProfileFolder;
import handspan.room.Aim;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.EveningView;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Practice by wishes alone, in a kept room of the simulated hall, whose player reaches for what is asked for and whose
 * instrument runs as fast as the machine can.
 */
class PracticeSceneTest {
    private static final String PLAYER = "Mira";

    @TempDir
    Path folder;

    private Evening evening;
    private Guide guide;

    @BeforeEach
    void begin() throws Exception {
        Files.copy(Path.of("profiles", "saltmill-hall.json"), folder.resolve("saltmill-hall.json"));
        evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast());
        guide = new Guide(evening, Showing.first(true));
        guide.fulfil(new Wish.Open("sim:hall"));
        guide.fulfil(new Wish.Load("saltmill-hall"));
        until(() -> evening.view().keeping().profile().isPresent()
                && evening.view().snapshot().filter(now -> now.readings() > 0).isPresent());
        guide.fulfil(new Wish.Go(Station.PLAY));
        guide.fulfil(Wish.RoomAct.TURN_FURTHER);
    }

    @AfterEach
    void end() {
        evening.close();
    }

    private void until(BooleanSupplier happened) {
        Waits.until(happened, () -> evening.view().toString());
    }

    private void practise(String notes, Asking asking, boolean wayShown) {
        guide.fulfil(new Wish.Say(Ask.COURSE_NOTES, notes));
        guide.fulfil(new Wish.Say(Ask.ASKED_BY, asking.word()));
        guide.fulfil(new Wish.Say(Ask.WAY_SHOWN, wayShown ? "shown" : "hidden"));
        guide.fulfil(Wish.Plain.PRACTISE);
    }

    private boolean isTold() {
        return !evening.view().practice().told().isEmpty();
    }

    private List<PracticeRun> runs() throws Exception {
        return new PlayerFolder(new ProfileFolder(folder)).load(PLAYER).runs();
    }

    /** What a player sees while notes are asked for, until all are answered. */
    private List<StageView> stagesUntilTold() {
        List<StageView> stages = new ArrayList<>();
        until(() -> {
            EveningView now = evening.view();
            boolean asks = now.snapshot().get().activity() instanceof ActivityView.Practising practising
                    && practising.wanted().isPresent()
                    && practising.playing().hands().pitch();
            if (asks && now.sounding().setting().isPresent()) {
                stages.addAll(Pages.page(now, Showing.first(true).at(Station.PLAY)).blocks().stream()
                        .filter(Block.Stage.class::isInstance)
                        .map(block -> ((Block.Stage) block).view())
                        .toList());
            }
            return isTold();
        });
        return stages;
    }

    @Test
    void aRunIsToldAndKeptUnderThePlayersName() throws Exception {
        guide.fulfil(new Wish.Say(Ask.PLAYER, PLAYER));
        practise("A3,C4,E4", Asking.NAME, true);
        until(this::isTold);

        assertEquals(1, runs().size());
        PracticeRun run = runs().get(0);
        assertEquals("saltmill-hall", run.room());
        assertEquals(3, run.tally().asked());
        assertTrue(run.help());
        List<String> told = evening.view().practice().told();
        assertTrue(told.contains("run 1 of Mira is kept"), told::toString);
        assertEquals(
                List.of("A3", "C4", "E4"),
                evening.view().practice().notes().stream()
                        .map(note -> note.name())
                        .toList());
    }

    @Test
    void theInstrumentIsMutedUntilSoundIsLetThrough() {
        practise("A3,C4,E4", Asking.NAME, true);
        until(this::isTold);
        assertTrue(evening.view().sounding().setting().orElseThrow().muted());

        guide.fulfil(Wish.Plain.LET_SOUND);
        assertFalse(evening.view().sounding().setting().orElseThrow().muted());
    }

    @Test
    void theWayIsSaidInMillimetresWithItsSide() {
        practise("40", Asking.NAME, true);
        List<StageView> stages = stagesUntilTold();

        List<StageView> helping =
                stages.stream().filter(stage -> !stage.centsWords().isEmpty()).toList();
        assertFalse(helping.isEmpty());
        for (StageView stage : helping) {
            assertTrue(stage.pitchHelp());
            assertTrue(stage.centsWords().matches("\\d+ mm (nearer|further away)|hold still"), stage::centsWords);
            // the hall's pitch rises away from the sensor, and stays beyond an end of the zone: who is to go further
            // away is not too high
            boolean further = stage.centsWords().endsWith("further away");
            boolean nearer = stage.centsWords().endsWith("nearer");
            assertTrue(!further || stage.cents() <= 0, () -> stage.centsWords() + " " + stage.cents() + " cents");
            assertTrue(!nearer || stage.cents() >= 0, () -> stage.centsWords() + " " + stage.cents() + " cents");
        }
    }

    @Test
    void withTheWayHiddenNothingTellsWhereTheHandIs() {
        practise("40", Asking.NAME, false);
        List<StageView> stages = stagesUntilTold();

        assertFalse(stages.isEmpty());
        for (StageView stage : stages) {
            assertFalse(stage.pitchHelp());
            assertEquals("", stage.centsWords());
            assertEquals("", stage.pitchWords());
            assertEquals(0, stage.cents());
        }
    }

    /** Ten unaided reaches tell an aim (design of this project); with help they tell none. */
    @Test
    void unaidedReachesGiveTheRoomAnAimAndHelpedOnesDoNot() {
        Aim before = aim();
        practise("12", Asking.NAME, true);
        until(this::isTold);
        assertEquals(before, aim());
        assertFalse(guide.hasUnsaved());

        practise("12", Asking.NAME, false);
        until(() -> evening.view().keeping().unsaved());
        assertTrue(aim().reaches() >= 10, aim()::words);
    }

    private Aim aim() {
        return evening.view().keeping().profile().orElseThrow().room().aim();
    }

    @Test
    void whereNothingCanBeHeardANoteThatShouldSoundIsShown() {
        practise("20", Asking.SOUND, true);
        List<StageView> stages = stagesUntilTold();

        assertFalse(stages.isEmpty());
        assertTrue(stages.stream().noneMatch(stage -> stage.note().equals("?")));
        // asked by sound there is no help, whatever was chosen
        assertTrue(stages.stream().noneMatch(StageView::pitchHelp));
    }

    @Test
    void aRunThatIsEndedEarlyIsKeptAsFarAsItHasCome() throws Exception {
        guide.fulfil(new Wish.Say(Ask.PLAYER, PLAYER));
        practise("1200", Asking.NAME, true);
        until(() -> evening.view().snapshot().get().activity() instanceof ActivityView.Practising practising
                && practising.attempts().size() > 2);
        guide.fulfil(Wish.Plain.STOP_PLAYING);
        until(() -> evening.view().sounding().setting().isEmpty());

        int asked = runs().get(0).tally().asked();
        assertTrue(asked > 2 && asked < 1200, () -> asked + " notes");
        assertFalse(evening.view().practice().running());
        assertTrue(isTold());
    }

    @Test
    void aNoteThatTheTuningDoesNotHaveIsRefusedInWords() {
        practise("A3,C#4", Asking.NAME, true);
        until(() -> !evening.view().practice().trouble().isEmpty());

        assertTrue(
                evening.view().practice().trouble().startsWith("note C#4 is not in tuning"),
                evening.view().practice()::trouble);
        assertFalse(evening.view().practice().running());
        assertTrue(evening.view().sounding().setting().isEmpty());
    }

    @Test
    void aRecordingIsToldThatItCanNotLookForNotes() throws Exception {
        Path take = folder.resolve("evening.take");
        Files.writeString(take, "# started 2031-05-04T19:30:00Z\n0\t250,700\n20000\t251,700\n40000\t250,700\n");
        guide.fulfil(new Wish.Open("take:" + take));
        until(() -> evening.view()
                        .arrival()
                        .source()
                        .filter(source -> source.text().startsWith("take:"))
                        .isPresent()
                && evening.view().doing().isEmpty());
        practise("3", Asking.NAME, true);
        until(() -> !evening.view().practice().trouble().isEmpty());

        assertTrue(
                evening.view().practice().trouble().startsWith("a recording can't look for notes"),
                evening.view().practice()::trouble);
        assertFalse(evening.view().practice().running());
    }

    // ---- what stands above the stage ----

    private static Event event(long number, Event.What what) {
        return new Event(number, number, what);
    }

    private static Event.NoteAsked asked(int number) {
        return new Event.NoteAsked(wanted(number), 250);
    }

    private static WantedNote wanted(int number) {
        return new WantedNote(number, 3, 69, "A4", 440, 0.5);
    }

    private static Event.NoteAnswered answered(int number) {
        Stop stop = new Stop(12.4, -2.6, 0.3, 1.44, true);
        return new Event.NoteAnswered(new Attempt(wanted(number), Optional.of(stop)), "");
    }

    @Test
    void theFirstNoteIsAskedForInFewWords() {
        assertEquals(
                new Block.Prompt("Go straight there and stop", ""), PracticeScene.prompt(List.of(event(1, asked(1)))));
    }

    @Test
    void whatBecameOfANoteIsSaidAboveTheNext() {
        assertEquals(
                new Block.Prompt("Found A4: 12 cents high", "3 mm too near, 1.4 s"),
                PracticeScene.prompt(List.of(event(1, asked(1)), event(2, answered(1)), event(3, asked(2)))));
    }

    @Test
    void whyARestingHandHasNotAnsweredIsSaidBelow() {
        Event.NoteNotYet notYet = new Event.NoteNotYet(wanted(2), "no move seen");
        assertEquals(
                new Block.Prompt("Found A4: 12 cents high", "not yet: no move seen"),
                PracticeScene.prompt(
                        List.of(event(1, asked(1)), event(2, answered(1)), event(3, asked(2)), event(4, notYet))));
    }

    @Test
    void aNewRunBeginsWithNothingOfTheLast() {
        assertEquals(
                new Block.Prompt("Go straight there and stop", ""),
                PracticeScene.prompt(List.of(event(1, asked(1)), event(2, answered(1)), event(3, asked(1)))));
    }

    @Test
    void aNoteThatWasGivenUpSaysWhy() {
        Event.NoteAnswered late = new Event.NoteAnswered(new Attempt(wanted(1), Optional.empty()), "no rest seen");
        assertEquals(
                new Block.Prompt("Missed A4", "no rest in time (no rest seen)"),
                PracticeScene.prompt(List.of(event(1, asked(1)), event(2, late))));
    }
}
