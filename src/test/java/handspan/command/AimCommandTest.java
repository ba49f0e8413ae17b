package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An aim by the command line: measured, shown, kept, read from a recording. */
class AimCommandTest {
    @TempDir
    Path folder;

    private Cli run(String line) {
        return Cli.line(line, folder);
    }

    private JsonNode aim(String line) {
        Cli cli = run(line);
        assertEquals(0, cli.exitCode(), line + "\n" + cli.out() + cli.err());
        JsonNode last = cli.last();
        return (last.has("room") ? last.get("room") : last).get("aim");
    }

    @Test
    void tenReachesAreAskedForAndToldNothingAboutUntilTheEnd() {
        Cli cli = run("calibrate sim:hall --room r --fast --aim --by-ear A3,E4,A4,E5,A5");
        assertEquals(0, cli.exitCode(), cli.out() + cli.err());
        List<JsonNode> asked = cli.objects().stream()
                .filter(one -> one.path("event").asText().equals("step"))
                .filter(one -> one.path("step").asText().equals("aim"))
                .toList();
        assertEquals(10, asked.size());
        assertEquals("pitch", asked.get(0).get("hand").asText());
        assertTrue(
                List.of("A3", "E4", "A4", "E5")
                        .contains(asked.get(0).get("note").asText()),
                "A5 is where it was");
        assertEquals(1, asked.get(0).get("reach").asInt());
        JsonNode aim = cli.last().get("room").get("aim");
        assertEquals(10, aim.get("reaches").asInt());
        assertTrue(aim.get("measured").asBoolean());
        // the player's is 5 mm, and its hand wanders by 1 mm; of ten reaches within 2.5 standard deviations of 22 %
        assertEquals(5.1, aim.get("mm").asDouble(), 2.5 * 0.22 * 5.1);
        assertEquals(
                aim.get("mm").asDouble() * 0.2236,
                aim.get("standardUncertaintyMm").asDouble(),
                0.3);
        assertEquals(aim, aim("rooms show --room r"));
        Cli said = Cli.run("calibrate", "sim:hall", "--room", "s", "--fast", "--aim", "--profiles", folder.toString());
        assertTrue(said.out().contains("-> reach for the far end and stop there\n   captured 2 of 10\n"), said.out());
        assertTrue(said.out().contains(" mm rms over 10 reaches (standard uncertainty "), said.out());
    }

    @Test
    void anAimIsKeptUntilItIsMeasuredAgain() {
        assertEquals(0, aim("calibrate sim:hall --room r --fast").get("reaches").asInt());
        assertEquals(6, aim("rooms show --room r").get("mm").asDouble(), "assumed");
        double first = aim("calibrate sim:hall --room r --from r --aim --fast")
                .get("mm")
                .asDouble();
        assertTrue(first != 6);
        assertEquals(
                first,
                aim("calibrate sim:hall --room r --from r --fast --seed 3")
                        .get("mm")
                        .asDouble());
        assertEquals(
                first,
                aim("calibrate sim:hall --room r --replace --fast --seed 4")
                        .get("mm")
                        .asDouble());
        JsonNode again = aim("calibrate sim:hall --room r --replace --fast --seed 5 --ruler 100,300,500 --aim");
        assertTrue(again.get("mm").asDouble() != first);
        assertEquals(
                again.get("mm"),
                aim("calibrate sim:hall --room other --from r --fast").get("mm"),
                "it goes along");
    }

    @Test
    void aRecordingOfReachesTellsTheSameAim() {
        Path take = folder.resolve("reaches.take");
        JsonNode live = aim("calibrate sim:hall --room live --aim --fast --record " + take);
        String hands = " --pitch 1:distance:mm --level 2:photoresistor:counts10";
        assertEquals(live, aim("calibrate take:" + take + " --room again" + hands));
        Path without = folder.resolve("without.take");
        run("calibrate sim:hall --room plain --fast --record " + without);
        Cli cli = run("calibrate take:" + without + " --room none --aim" + hands);
        assertTrue(cli.err().contains("marks no reaches"), cli.err());
    }

    @Test
    void reachesNeedAPlaceThatIsHeld() {
        run("calibrate sim:hall --room r --fast");
        Cli cli = run("calibrate sim:hall --room r --from r --light-only --aim --fast");
        assertEquals(2, cli.exitCode());
        assertTrue(cli.err().contains("no place to reach for"), cli.err());
    }
}
