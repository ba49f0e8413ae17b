package handspan.wiring.evening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.Waits;
import handspan.instrument.survey.Verdict;
import handspan.live.session.Event;
import handspan.live.session.LinkState;
import handspan.profile.ProfileFolder;
import handspan.wiring.Cues;
import handspan.wiring.SessionLog;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Recordings and surveys of an evening: what is made, what is kept, what runs; waits are for what is to be seen. */
class RecordedEveningTest {
    private static final int LINES = 3000;
    private static final long INTERVAL_MICROS = 20_000;

    /** A minute of lines. */
    private static final double LENGTH_S = (LINES - 1) * INTERVAL_MICROS / 1e6;

    /** A place is told by the clock of a busy machine, s. */
    private static final double NEAR_S = 5;

    @TempDir
    Path folder;

    private Evening evening;

    @BeforeEach
    void byTheClock() {
        evening = made(SourceOptions.USUAL);
    }

    @AfterEach
    void end() {
        evening.close();
    }

    private Evening made(SourceOptions options) {
        return new Evening(new ProfileFolder(folder), SessionLog.of("window"), Cues.silent(), options);
    }

    private void asFastAsItCan() {
        evening.close();
        evening = made(SourceOptions.USUAL.fast());
    }

    private void until(BooleanSupplier happened) {
        Waits.until(happened, () -> evening.view().toString());
    }

    private Path take() throws IOException {
        StringBuilder text = new StringBuilder("# handspan-take/1\n# instrument: reed\n");
        for (int i = 0; i < LINES; i++) {
            text.append(i * INTERVAL_MICROS).append('\t').append(200 + i % 17).append(",300\n");
            if (i == 1000) {
                text.append("# captured 18000000 20000000 near\n");
            }
        }
        return Files.write(folder.resolve("minute.take"), text.toString().getBytes(StandardCharsets.ISO_8859_1));
    }

    private double place() {
        return evening.view().taking().place().orElseThrow().placeS();
    }

    private LinkState link() {
        return evening.view().snapshot().orElseThrow().link();
    }

    @Test
    void aRecordingRunsIsPausedTakenElsewhereAndWaitsAtItsEnd() throws IOException {
        evening.connecting().open(Source.parse("take:" + take()));
        until(() -> evening.view()
                .taking()
                .place()
                .filter(place -> place.lengthS().isPresent())
                .isPresent());
        assertEquals(
                LENGTH_S,
                evening.view().taking().place().orElseThrow().lengthS().getAsDouble(),
                1e-6);
        assertEquals(
                List.of("captured near"),
                evening.view().taking().place().orElseThrow().marks().stream()
                        .map(mark -> mark.words())
                        .toList());
        until(() -> link() == LinkState.UP);
        evening.takes().turn();
        until(() -> link() == LinkState.PAUSED);
        assertEquals("paused", evening.view().snapshot().orElseThrow().linkReason());
        double stood = place();
        long lines = evening.view().snapshot().orElseThrow().lines();
        evening.takes().jump(40);
        until(() -> place() > 39);
        assertEquals(40, place(), 1e-6);
        assertEquals(lines, evening.view().snapshot().orElseThrow().lines());
        assertTrue(stood < 40);
        evening.takes().turn();
        until(() -> link() == LinkState.UP);
        evening.takes().skip(-30);
        until(() -> place() < 39);
        assertEquals(10, place(), NEAR_S);
        until(() -> link() == LinkState.UP);
        evening.takes().jump(LENGTH_S - 0.5);
        until(() -> evening.view()
                .snapshot()
                .filter(now ->
                        now.link() == LinkState.PAUSED && now.linkReason().contains("end"))
                .isPresent());
        assertEquals(LENGTH_S, place(), 1e-6);
        assertFalse(evening.view().taking().place().orElseThrow().running());
        evening.takes().turn();
        until(() -> link() == LinkState.UP && place() < NEAR_S);
        assertTrue(evening.view().snapshot().orElseThrow().events().stream()
                .noneMatch(event -> event.what() instanceof Event.Linked linked && linked.state() == LinkState.LOST));
    }

    /** The second of one moment gets another name; what the first holds stays. */
    @Test
    void whatIsRecordedIsKeptInAFileOfItsOwnAndCanBeOpened() throws IOException {
        evening.connecting().open(Source.parse("sim:still"));
        until(() -> evening.view().snapshot().isPresent());
        evening.takes().turnRecording();
        until(() ->
                evening.view().taking().made().filter(made -> made.lines() > 20).isPresent());
        assertTrue(evening.view().taking().made().orElseThrow().running());
        evening.takes().turnRecording();
        until(() -> evening.view().taking().shelf().size() == 1);
        Taking.Made first = evening.view().taking().made().orElseThrow();
        assertFalse(first.running());
        assertEquals(folder.resolve("takes"), first.file().getParent());
        byte[] kept = Files.readAllBytes(first.file());
        // header of five lines at most, then the lines that were counted
        long lines = new String(kept, StandardCharsets.ISO_8859_1)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .count();
        assertEquals(first.lines(), lines);
        evening.takes().turnRecording();
        until(() -> evening.view().taking().made().filter(Taking.Made::running).isPresent());
        // closing the instrument closes the file
        evening.connecting().leave();
        until(() -> evening.view().taking().shelf().size() == 2);
        assertEquals(
                2,
                evening.view().taking().shelf().stream()
                        .map(Taking.Kept::file)
                        .distinct()
                        .count());
        assertEquals(new String(kept, StandardCharsets.ISO_8859_1), Files.readString(first.file()));
        assertTrue(evening.view().taking().shelf().get(0).words().contains("sim:still"));
        evening.connecting().open(Source.parse("take:" + first.file()));
        until(() -> evening.view().taking().place().isPresent());
    }

    @Test
    void aRecordingThatCanNotBeBegunIsSaid() throws IOException {
        asFastAsItCan();
        Files.writeString(folder.resolve("takes"), "in the way");
        evening.connecting().open(Source.parse("sim:still"));
        until(() -> evening.view().snapshot().isPresent());
        evening.takes().turnRecording();
        until(() -> !evening.view().taking().trouble().isEmpty());
        assertTrue(evening.view().taking().trouble().startsWith("no recording was begun: "));
        assertTrue(evening.view().taking().made().isEmpty());
    }

    /** What the verb says of the same simulated instruments; see SurveyVerbTest. */
    @Test
    void theSensorsAreJudgedInTheVerbsWords() {
        asFastAsItCan();
        evening.connecting().open(Source.parse("sim:hall"));
        until(() -> evening.view().snapshot().isPresent());
        evening.judging().begin();
        until(() -> evening.view().surveyed().running());
        until(() -> !evening.view().surveyed().channels().isEmpty());
        Surveyed found = evening.view().surveyed();
        assertFalse(found.running());
        assertEquals(2, found.channels().size());
        assertTrue(found.channels().get(0).verdict() != Verdict.POOR);
        assertTrue(found.channels().get(0).judgement().startsWith("channel "));
        assertTrue(found.channels().get(0).feel().startsWith("over two octaves in 400 mm "));
        until(() -> evening.view().snapshot().orElseThrow().activity()
                instanceof handspan.live.session.ActivityView.Watching);
        evening.judging().end();
        assertFalse(evening.view().surveyed().isSomething());
    }

    @Test
    void aSensorThatIsPoorIsSaidWithWhatToDo() {
        asFastAsItCan();
        evening.connecting().open(Source.parse("sim:flicker"));
        until(() -> evening.view().snapshot().isPresent());
        evening.judging().begin();
        until(() -> !evening.view().surveyed().channels().isEmpty());
        assertTrue(evening.view().surveyed().channels().stream()
                .anyMatch(
                        each -> each.verdict() != Verdict.GOOD && !each.remedy().isEmpty()));
    }

    @Test
    void aSurveyThatIsEndedJudgesNothing() {
        evening.connecting().open(Source.parse("sim:hall"));
        until(() -> evening.view().snapshot().isPresent());
        evening.judging().begin();
        until(() -> evening.view().surveyed().running());
        evening.judging().end();
        until(() -> evening.view().snapshot().orElseThrow().activity()
                instanceof handspan.live.session.ActivityView.Watching);
        assertFalse(evening.view().surveyed().isSomething());
    }

    @Test
    void withoutAnInstrumentNothingIsJudgedAndItIsSaid() {
        evening.judging().begin();
        until(() -> evening.view().surveyed().trouble().contains("no instrument is open"));
    }
}
