package handspan.show.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.live.session.ActivityView;
import handspan.live.session.PlayDesk;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.SourceOptions;
import handspan.wiring.evening.Evening;
import handspan.wiring.evening.HoldPurpose;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rooms, their tunings and their holds by wishes alone, on a simulated instrument as fast as the machine can. */
class RoomWishesTest {
    /** Enough of them to say that it sounds. */
    private static final int SOUNDING_FRAMES = 20;

    @TempDir
    Path folder;

    private Evening evening;
    private Guide guide;

    @BeforeEach
    void begin() {
        evening = new Evening(
                new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), SourceOptions.USUAL.fast());
        guide = new Guide(evening, Showing.first(true));
    }

    @AfterEach
    void end() {
        evening.close();
    }

    private void until(BooleanSupplier happened) {
        Waits.until(happened, () -> evening.view().toString());
    }

    private Page page(Station station) {
        guide.fulfil(new Wish.Go(station));
        return guide.screen().page();
    }

    private Page further(Station station) {
        page(station);
        guide.fulfil(Wish.RoomAct.TURN_FURTHER);
        return guide.screen().page();
    }

    private static String words(Page page) {
        return page.blocks().stream()
                .map(block -> block instanceof Block.Words said
                        ? said.text()
                        : block instanceof Block.Prompt prompt ? prompt.words() + " / " + prompt.under() : "")
                .collect(Collectors.joining("\n"));
    }

    private static Block.Table table(Page page, String name) {
        return page.blocks().stream()
                .filter(block ->
                        block instanceof Block.Table table && table.name().equals(name))
                .map(Block.Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static String field(Page page, Ask ask) {
        return page.blocks().stream()
                .filter(Block.Fields.class::isInstance)
                .flatMap(block -> ((Block.Fields) block).fields().stream())
                .filter(field -> field.ask() == ask)
                .map(Block.Field::value)
                .findFirst()
                .orElseThrow();
    }

    private static Offer offer(Page page, String words) {
        return page.offers().stream()
                .filter(offer -> offer.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private RoomProfile profile() {
        return evening.view().keeping().profile().orElseThrow();
    }

    private List<String> tunings() {
        return profile().tunings().stream().map(Tuning::name).toList();
    }

    private void openHall() {
        guide.fulfil(new Wish.Open("sim:hall"));
        until(() -> evening.view().arrival().instrument().isPresent()
                && evening.view()
                        .snapshot()
                        .filter(now -> now.shape().isPresent())
                        .isPresent());
        guide.fulfil(new Wish.Say(Ask.ROOM_NAME, "barn"));
    }

    private void makeRoom() {
        openHall();
        guide.fulfil(new Wish.Measure(HoldPurpose.FRESH));
        until(() -> evening.view().keeping().profile().isPresent());
    }

    private void save() {
        guide.fulfil(Wish.Plain.SAVE);
        until(() -> !guide.hasUnsaved());
    }

    /** A kept room of the examples that come along, taken in hand. */
    private void copyOfHall(String name) throws Exception {
        copy("saltmill-hall", name);
        guide.fulfil(new Wish.Load(name));
        until(() -> evening.view().keeping().profile().isPresent());
    }

    private void copy(String example, String name) throws Exception {
        Files.copy(Path.of("profiles", example + ".json"), folder.resolve(name + ".json"));
    }

    private PlayDesk.Setting setting() {
        return evening.view().sounding().setting().orElseThrow();
    }

    private ActivityView.Playing playing() {
        return (ActivityView.Playing) evening.view().snapshot().orElseThrow().activity();
    }

    // ---- tunings ----

    @Test
    void aTuningIsAddedRenamedMadeTheFirstAndRemoved() throws Exception {
        copyOfHall("barn");
        List<String> before = tunings();
        String first = before.get(0);
        guide.fulfil(Wish.RoomAct.ADD_TUNING);
        assertEquals(before.size() + 1, tunings().size());
        guide.fulfil(new Wish.Say(Ask.TUNING_NAME, "carol"));
        assertEquals("carol", field(page(Station.NOTES), Ask.TUNING));
        assertTrue(tunings().contains("carol"));
        guide.fulfil(new Wish.Say(Ask.SCALE, "dorian"));
        assertEquals("dorian", profile().tuning("carol").scale().name());
        assertEquals(first, tunings().get(0));
        guide.fulfil(Wish.RoomAct.FIRST_TUNING);
        assertEquals("carol", tunings().get(0));
        assertFalse(offer(further(Station.NOTES), "Make it the first").isPossible());
        guide.fulfil(Wish.RoomAct.REMOVE_TUNING);
        assertEquals(before, tunings());
        assertEquals(first, field(page(Station.NOTES), Ask.TUNING));
    }

    @Test
    void everyFieldOfATuningCanBeSaid() throws Exception {
        copyOfHall("barn");
        guide.fulfil(new Wish.Say(Ask.TEMPERAMENT, "just"));
        guide.fulfil(new Wish.Say(Ask.TRANSPOSE, "-5"));
        guide.fulfil(new Wish.Say(Ask.TRIM_CENTS, "12.5"));
        guide.fulfil(new Wish.Say(Ask.SNAP, "pull"));
        guide.fulfil(new Wish.Say(Ask.STRENGTH_PERCENT, "80"));
        guide.fulfil(new Wish.Say(Ask.STEPS, "1/1,9/8,386.3,3/2"));
        Tuning tuning = profile().tunings().get(0);
        assertEquals("just", tuning.temperament().word());
        assertEquals(-5, tuning.transpose());
        assertEquals(12.5, tuning.trimCents());
        assertEquals(0.8, tuning.snapping().strength01(), 1e-12);
        assertEquals(4, tuning.scale().steps().size());
        assertEquals("1/1,9/8,386.3,3/2", field(further(Station.NOTES), Ask.STEPS));
    }

    /** What can't be so stays where it was written, with what is allowed below it, until something else is said. */
    @Test
    void aRefusedValueStaysInItsFieldWithTheReasonBesideIt() throws Exception {
        copyOfHall("barn");
        RoomProfile before = profile();
        guide.fulfil(new Wish.Say(Ask.TRANSPOSE, "99"));
        assertEquals(before, profile());
        Page page = further(Station.NOTES);
        assertEquals("99", field(page, Ask.TRANSPOSE));
        List<Block> blocks = page.blocks();
        for (int i = 0; i < blocks.size(); i++) {
            if (blocks.get(i) instanceof Block.Fields fields
                    && fields.fields().stream().anyMatch(each -> each.ask() == Ask.TRANSPOSE)) {
                assertTrue(
                        blocks.get(i + 1) instanceof Block.Words beside
                                && beside.text().contains("-48..48"),
                        blocks.get(i + 1)::toString);
            }
        }
        guide.fulfil(new Wish.Say(Ask.TRANSPOSE, "0.5"));
        assertTrue(words(further(Station.NOTES)).contains("whole number"));
        guide.fulfil(new Wish.Say(Ask.TRANSPOSE, "2"));
        assertEquals("2", field(further(Station.NOTES), Ask.TRANSPOSE));
        assertFalse(words(further(Station.NOTES)).contains("whole number"));
        guide.fulfil(Wish.RoomAct.ADD_TUNING);
        guide.fulfil(new Wish.Say(Ask.TUNING_NAME, before.tunings().get(0).name()));
        assertTrue(words(further(Station.NOTES)).contains("two tunings of one name"));
    }

    @Test
    void whatPlaysFollowsTheTuningThatIsEditedAndKeepsWhatWasAddedToIt() {
        makeRoom();
        guide.fulfil(Wish.Plain.PLAY);
        until(() -> evening.view().sounding().setting().isPresent());
        until(() -> evening.view().snapshot().orElseThrow().activity() instanceof ActivityView.Playing);
        guide.fulfil(new Wish.Shift(3));
        guide.fulfil(new Wish.Say(Ask.SCALE, "dorian"));
        until(() -> playing().tuning().scale().name().equals("dorian"));
        assertEquals(3, playing().tuning().transpose());
        assertEquals(3, setting().transpose());
        guide.fulfil(new Wish.Say(Ask.TUNING_NAME, "reel"));
        until(() -> playing().tuning().name().equals("reel"));
        guide.fulfil(Wish.RoomAct.ADD_TUNING);
        assertEquals("reel", setting().tuning(), "what is edited does not play by that");
        guide.fulfil(new Wish.PlayTuning("reel 2"));
        until(() -> playing().tuning().name().equals("reel 2"));
        guide.fulfil(Wish.RoomAct.REMOVE_TUNING);
        until(() -> playing().tuning().name().equals("reel"));
        assertTrue(setting().muted(), "nothing of this opens the sound");
    }

    /** Amplitude of -90 dB is 10^(-90/20) (IEC 60027-3); all that a view shows of what was sent comes under it. */
    @Test
    void aLowerCeilingHoldsForWhatPlays() {
        makeRoom();
        guide.fulfil(Wish.Plain.PLAY);
        until(() -> evening.view().sounding().setting().isPresent());
        guide.fulfil(Wish.Plain.LET_SOUND);
        guide.fulfil(new Wish.Say(Ask.FLOOR_DB, "-100"));
        guide.fulfil(new Wish.Say(Ask.CEILING_DB, "-90"));
        until(() -> {
            if (!(evening.view().snapshot().orElseThrow().activity() instanceof ActivityView.Playing now)) {
                return false;
            }
            List<SoundFrame> sent = new ArrayList<>();
            for (long number = now.sent().first(); number < now.sent().next(); number++) {
                sent.add(now.sent().at(number));
            }
            long sounding = sent.stream().filter(frame -> frame.gain01() > 0).count();
            return sounding > SOUNDING_FRAMES
                    && sent.stream().allMatch(frame -> frame.gain01() <= Math.pow(10, -90 / 20.0) * (1 + 1e-9));
        });
    }

    // ---- the shelf ----

    @Test
    void aRoomIsLookedAtComparedWithWhatItWasAndTakenBack() throws Exception {
        copyOfHall("barn");
        Tuning before = profile().tunings().get(0);
        guide.fulfil(new Wish.Say(Ask.A4_HZ, "442"));
        save();
        guide.fulfil(new Wish.Look("barn"));
        until(() -> evening.view().keeping().look().isPresent());
        Block.Table versions = table(page(Station.SHELF), "compare with");
        assertEquals("version 1", versions.rows().get(0).cells().get(0));
        guide.fulfil(versions.rows().get(0).wish().orElseThrow());
        until(() -> evening.view().keeping().look().orElseThrow().compared().isPresent());
        Page page = page(Station.SHELF);
        assertTrue(words(page).contains("From version 1 to room 'barn'"), words(page));
        assertTrue(table(page, "differences").rows().stream()
                .anyMatch(row -> row.cells().get(0).contains("tuning")));
        guide.fulfil(offer(page, "Take version 1 back").wish());
        until(() -> profile().tunings().get(0).equals(before));
        assertFalse(guide.hasUnsaved());
        until(() -> words(page(Station.SHELF)).contains("is version 1 again"));
        assertEquals(
                before.reference(),
                new ProfileFolder(folder).load("barn").tunings().get(0).reference());
    }

    @Test
    void twoRoomsAreComparedAndOneStepBackLeadsToTheRoomAndThenToAll() throws Exception {
        copyOfHall("barn");
        copy("fennel-attic", "attic");
        guide.fulfil(Wish.Plain.LIST_ROOMS);
        until(() -> evening.view().keeping().rooms().contains("attic"));
        Block.Table rooms = table(page(Station.SHELF), "rooms");
        assertEquals(
                List.of("attic", "barn"),
                rooms.rows().stream().map(row -> row.cells().get(0)).toList());
        assertEquals("in hand", rooms.rows().get(1).cells().get(3));
        guide.fulfil(rooms.rows().get(0).wish().orElseThrow());
        until(() -> evening.view().keeping().look().isPresent());
        guide.fulfil(new Wish.CompareWith("barn"));
        until(() -> evening.view().keeping().look().orElseThrow().compared().isPresent());
        assertTrue(table(page(Station.SHELF), "differences").rows().size() > 2);
        guide.fulfil(Wish.RoomAct.STEP_BACK);
        assertTrue(words(page(Station.SHELF)).contains("Room 'attic'"));
        guide.fulfil(Wish.RoomAct.STEP_BACK);
        assertEquals(2, table(page(Station.SHELF), "rooms").rows().size());
    }

    @Test
    void whatIsInHandIsComparedAsItIsNowSavedOrNot() throws Exception {
        copyOfHall("barn");
        guide.fulfil(new Wish.Look("barn"));
        until(() -> evening.view().keeping().look().isPresent());
        assertTrue(words(page(Station.SHELF)).contains("nothing yet to compare"));
        guide.fulfil(new Wish.Say(Ask.TRIM_CENTS, "7"));
        Block.Row inHand = table(page(Station.SHELF), "compare with").rows().get(0);
        assertEquals("the room in hand", inHand.cells().get(0));
        guide.fulfil(inHand.wish().orElseThrow());
        until(() -> evening.view().keeping().look().orElseThrow().compared().isPresent());
        assertTrue(table(page(Station.SHELF), "differences").rows().stream()
                .anyMatch(row -> row.cells().get(1).contains("trimmed by 7.0")));
        assertTrue(guide.hasUnsaved());
    }

    @Test
    void aDamagedRoomIsListedWithItsTroubleAndWhatHelpsThere() throws Exception {
        copyOfHall("barn");
        guide.fulfil(new Wish.Say(Ask.A4_HZ, "442"));
        save();
        Files.writeString(folder.resolve("barn.json"), "{ \"format\": ", StandardCharsets.UTF_8);
        guide.fulfil(Wish.Plain.LIST_ROOMS);
        until(() -> evening.view().keeping().kept().stream()
                .anyMatch(room -> room.profile().isEmpty()));
        Page page = page(Station.SHELF);
        assertEquals("can't be read", table(page, "rooms").rows().get(0).cells().get(3));
        assertTrue(words(page).contains("take version 1 back"), words(page));
        assertFalse(words(page).contains("handspan rooms"), "no command line in the window");
        guide.fulfil(new Wish.Look("barn"));
        until(() -> evening.view().keeping().look().isPresent());
        assertFalse(offer(page(Station.SHELF), "Load it again").isPossible());
        guide.fulfil(new Wish.Restore("barn", 1));
        until(() -> words(page(Station.SHELF)).contains("could not be read is kept as"));
        assertEquals(
                440,
                new ProfileFolder(folder)
                        .load("barn")
                        .tunings()
                        .get(0)
                        .reference()
                        .a4Hz());
    }

    // ---- what would be lost ----

    @Test
    void loadingOverAnUnsavedRoomIsAskedAndGoesOnOnceItIsSaved() throws Exception {
        copyOfHall("attic");
        copyOfHall("barn");
        until(() -> evening.view().keeping().name().equals("barn"));
        guide.fulfil(new Wish.Say(Ask.A4_HZ, "442"));
        guide.fulfil(new Wish.Load("attic"));
        assertTrue(words(guide.screen().page()).contains("is not saved"));
        assertEquals("barn", evening.view().keeping().name());
        guide.fulfil(Wish.Plain.STAY);
        assertFalse(words(guide.screen().page()).contains("what plays goes on"));
        guide.fulfil(new Wish.Load("attic"));
        guide.fulfil(Wish.Plain.SAVE);
        until(() -> {
            guide.screen();
            return evening.view().keeping().name().equals("attic");
        });
        assertEquals(
                442,
                new ProfileFolder(folder)
                        .load("barn")
                        .tunings()
                        .get(0)
                        .reference()
                        .a4Hz());
    }

    @Test
    void restoringAndFreshHoldsOverAnUnsavedRoomAreAskedToo() throws Exception {
        copyOfHall("barn");
        guide.fulfil(new Wish.Say(Ask.A4_HZ, "442"));
        save();
        guide.fulfil(new Wish.Say(Ask.A4_HZ, "438"));
        guide.fulfil(new Wish.Restore("barn", 1));
        assertTrue(offer(guide.screen().page(), "Let go of it and take version 1 back")
                .isPossible());
        assertEquals(
                442,
                new ProfileFolder(folder)
                        .load("barn")
                        .tunings()
                        .get(0)
                        .reference()
                        .a4Hz());
        guide.fulfil(Wish.Plain.STAY);
        openHall();
        guide.fulfil(new Wish.Measure(HoldPurpose.FRESH));
        assertTrue(offer(guide.screen().page(), "Let go of it and take the holds of a new room")
                .isPossible());
        assertTrue(evening.view().measuring().task().isEmpty());
        guide.fulfil(new Wish.DoAnyway());
        until(() -> profile().room().holds().size() > 0
                && profile().tunings().get(0).reference().a4Hz() == 442);
    }

    // ---- holds ----

    @Test
    void aCheckSaysVerdictFiguresAndSecondsAndLooksAtLinkSensorsAndTargets() {
        makeRoom();
        save();
        guide.fulfil(new Wish.Measure(HoldPurpose.CHECK));
        assertEquals(Station.ROOM, guide.screen().showing().station());
        until(() -> evening.view().measuring().check().isPresent());
        Page page = page(Station.ROOM);
        assertTrue(words(page).contains("Fits / pitch up to "), words(page));
        assertTrue(words(page).matches("(?s).*taken in [0-9]+ s.*"), words(page));
        for (String line :
                List.of("Link: ", "Sensor of the pitch hand: ", "Sensor of the level hand: ", "Target udp:")) {
            assertTrue(words(page).contains("\n" + line), line);
        }
    }

    @Test
    void notesByEarAndReachesMakeARoomAndSayHowGoodTheyAre() {
        openHall();
        guide.fulfil(new Wish.Say(Ask.NOTES_BY_EAR, "A3, E4, A4, E5, A5"));
        guide.fulfil(new Wish.Say(Ask.REACHES, "yes"));
        guide.fulfil(new Wish.Measure(HoldPurpose.FRESH));
        until(() -> evening.view().keeping().profile().isPresent());
        String said = words(page(Station.ROOM));
        assertTrue(said.contains("By ear: residual "), said);
        until(() -> words(page(Station.ROOM)).contains("over 10 reaches"));
        assertEquals(57, profile().tunings().get(0).lowKey());
        assertEquals(81, profile().tunings().get(0).highKey());
        assertTrue(profile().room().aim().isMeasured());
    }

    @Test
    void anAimIsMeasuredInAKeptRoomWhichKeepsItsTunings() {
        makeRoom();
        guide.fulfil(new Wish.Say(Ask.SCALE, "dorian"));
        assertFalse(profile().room().aim().isMeasured());
        guide.fulfil(new Wish.Measure(HoldPurpose.AIM));
        until(() -> profile().room().aim().isMeasured());
        assertEquals("dorian", profile().tunings().get(0).scale().name());
        until(() -> words(page(Station.ROOM)).contains("over 10 reaches"));
    }

    @Test
    void aRulerAndNotesAtOnceAreRefusedInWords() {
        openHall();
        guide.fulfil(new Wish.Say(Ask.NOTES_BY_EAR, "A3,E4,A4"));
        guide.fulfil(new Wish.Say(Ask.RULER_MM, "100,200,300"));
        guide.fulfil(new Wish.Measure(HoldPurpose.FRESH));
        assertTrue(words(page(Station.ROOM)).contains("two ways"));
        guide.fulfil(new Wish.Say(Ask.RULER_MM, ""));
        guide.fulfil(new Wish.Say(Ask.NOTES_BY_EAR, "A3,H4"));
        guide.fulfil(new Wish.Measure(HoldPurpose.FRESH));
        assertTrue(words(page(Station.ROOM)).contains("H4"));
    }
}
