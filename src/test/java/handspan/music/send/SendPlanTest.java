package handspan.music.send;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SendPlanTest {
    private static final SendTarget TARGET = SendTarget.parse("udp:127.0.0.1:9000");

    /** The contract with sound patches: addresses, types and their order in the bundle. */
    @Test
    void everyValueHasItsDefaultAddressAndTypes() {
        List<String> lines = SendPlan.byDefault("Ring & Reed #2", List.of(TARGET)).lines().stream()
                .map(line -> line.address() + " " + line.value().types() + (line.on() ? "" : " off"))
                .toList();
        assertEquals(
                List.of(
                        "/Ring_&_Reed__2/pitch f",
                        "/Ring_&_Reed__2/note if",
                        "/Ring_&_Reed__2/degree ii",
                        "/Ring_&_Reed__2/level f",
                        "/Ring_&_Reed__2/hand i",
                        "/Ring_&_Reed__2/place ff",
                        "/Ring_&_Reed__2/state s"),
                lines);
    }

    @Test
    void theStatesHaveTheirWords() {
        assertEquals("playing", PlayState.PLAYING.word());
        assertEquals("away", PlayState.AWAY.word());
        assertEquals("muted", PlayState.MUTED.word());
        assertEquals("lost", PlayState.LOST.word());
    }

    @Test
    void otherTargetsLeaveTheLines() {
        SendPlan plan = SendPlan.byDefault("Moth", List.of(TARGET));
        SendPlan elsewhere = plan.to(List.of());
        assertEquals(plan.lines(), elsewhere.lines());
        assertEquals(List.of(), elsewhere.targets());
        assertEquals(List.of(TARGET), plan.targets());
    }

    @Test
    void aPlanKeepsItsLinesWhateverBecomesOfTheListItWasMadeFrom() {
        List<SendLine> lines = new ArrayList<>(List.of(SendLine.byDefault(SendValue.HAND, "Moth")));
        SendPlan plan = new SendPlan(lines, List.of(TARGET));
        lines.clear();
        assertEquals(1, plan.lines().size());
    }

    @Test
    void aLineOfBadAddressIsRefused() {
        new SendLine(SendValue.LEVEL, "/volume", false);
        assertThrows(IllegalArgumentException.class, () -> new SendLine(SendValue.LEVEL, "volume", false));
    }
}
