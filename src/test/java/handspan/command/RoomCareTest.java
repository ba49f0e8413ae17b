package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rooms over time, by the command line: made in every way, checked, taken again, outlived by a rebuilt instrument. */
class RoomCareTest {
    @TempDir
    Path folder;

    private Cli run(String line) {
        return Cli.line(line, folder);
    }

    private JsonNode done(String line) {
        Cli cli = run(line);
        assertEquals(0, cli.exitCode(), line + "\n" + cli.out() + cli.err());
        return cli.last();
    }

    private JsonNode refused(String line, String part) {
        Cli cli = run(line);
        assertEquals(1, cli.exitCode(), line + "\n" + cli.out() + cli.err());
        assertTrue(cli.last().toString().contains(part), cli.last().toString());
        return cli.last();
    }

    private static void assertWrong(Cli cli, String part) {
        assertEquals(2, cli.exitCode(), cli.out() + cli.err());
        assertTrue(cli.err().contains(part), cli.err());
    }

    /** Distances of the simulated players' places are 100 and 500 mm, 400 over infrared. */
    @ParameterizedTest
    @CsvSource({"hall, 500", "two-flight, 500", "echo, 500", "infrared, 400"})
    void rulerHoldsSetTheZoneAndTheFitIsTold(String sim, int farMm) {
        int quarter = (farMm - 100) / 4;
        JsonNode room = done("calibrate sim:" + sim + " --room r --fast --ruler 100," + (100 + quarter) + ","
                        + (100 + 2 * quarter) + "," + (100 + 3 * quarter) + "," + farMm)
                .get("room");
        JsonNode fit = room.get("pitch").get("fit");
        assertEquals(5, fit.get("holds").asInt());
        assertEquals(5, fit.get("residuals").size());
        assertTrue(fit.get("rmsMm").asDouble() < 3, fit.toString());
        assertEquals(100, room.get("pitch").get("nearMm").asDouble());
        assertEquals(farMm, room.get("pitch").get("farMm").asDouble());
        assertEquals(fit, done("rooms show --room r").get("pitch").get("fit"), "what was told is what is kept");
    }

    @Test
    void notesHeldByEarMakeTheTuning() {
        JsonNode result = done("calibrate sim:hall --room ear --fast --by-ear A3,E4,A4,E5,A5");
        JsonNode tuning = result.get("room").get("tunings").get(0);
        assertEquals("A3", tuning.get("low").asText());
        assertEquals("A5", tuning.get("high").asText());
        double residual = result.get("byEar").get("residualCents").asDouble();
        // five holds of a hand that wanders by 1 mm rms, 6 cents a mm, on a sensor that bends by up to 5 mm
        assertTrue(residual > 0.5 && residual < 20, residual + " cents");
    }

    @Test
    void aFreshRoomFitsAndOtherLightIsTakenAgainWithoutTheHands() {
        done("calibrate sim:hall --room hall --fast");
        assertEquals(
                "fits", done("check sim:hall --room hall --fast").get("verdict").asText());
        Cli one = run("check sim:hall --room hall --one-end --fast");
        assertEquals(0, one.exitCode(), one.out());
        assertTrue(one.out().contains("near end") && !one.out().contains("far end"), one.out());
        refused("check sim:hall --room hall --seed 2 --fast", "light only");
        JsonNode again = done("calibrate sim:hall --room hall --seed 2 --from hall --light-only --fast");
        assertTrue(again.get("saved").asBoolean());
        JsonNode check = run("check sim:hall --room hall --seed 2 --fast").last();
        assertTrue(check.get("levelDb").asDouble() < 3, check.toString());
    }

    @Test
    void aQuickReFitKeepsTheResponseAndTakesTheEndsAgain() {
        done("calibrate sim:hall --room first --fast --ruler 100,200,300,400,500");
        JsonNode fit = done("rooms show --room first").get("pitch").get("fit");
        JsonNode second =
                done("calibrate sim:hall --room second --from first --fast").get("room");
        assertEquals(fit, second.get("pitch").get("fit"));
        assertEquals(100, second.get("pitch").get("nearMm").asDouble(), 4, "the hand wanders by 1 mm rms");
        assertEquals(500, second.get("pitch").get("farMm").asDouble(), 4);
    }

    @Test
    void aRebuiltInstrumentAsksForANewCalibration() {
        done("calibrate sim:hall --room old --fast");
        assertEquals(1, done("rooms show --room old").get("revision").asInt());
        JsonNode rebuilt =
                done("calibrate sim:hall --room new --rebuilt --fast").get("room");
        assertEquals(2, rebuilt.get("revision").asInt());
        JsonNode check = refused("check sim:hall --room old --fast", "instrument changed");
        assertTrue(check.get("reasons").get(0).asText().contains("revision 1"), check.toString());
        assertWrong(run("calibrate sim:hall --room old --from old --fast"), "must be re-taken");
        Cli play = run("play sim:hall --room old --seconds 2 --fast");
        assertEquals(0, play.exitCode(), "it still plays");
        assertTrue(play.err().contains("response must be re-taken"), play.err());
        // the twin: a room of the present revision
        assertEquals(
                "fits", done("check sim:hall --room new --fast").get("verdict").asText());
        done("calibrate sim:hall --room new --from new --fast");
        assertEquals(
                2,
                done("calibrate sim:hall --room third --fast")
                        .get("room")
                        .get("revision")
                        .asInt(),
                "known by its file from now on");
    }

    @Test
    void lightAloneNeedsSixPlaces() {
        assertWrong(run("calibrate sim:light-only --room l --fast"), "two ends do not tell");
        assertWrong(run("calibrate sim:light-only --room l --fast --ruler 30,50,70,95,120"), "(6..9)");
        JsonNode room = done("calibrate sim:light-only --room l --fast --ruler 30,40,52,66,82,112")
                .get("room");
        assertEquals(
                "monotone curve", room.get("pitch").get("fit").get("method").asText());
        assertTrue(room.get("level").isNull());
    }

    /** The player's near place, 40 mm, lies within the fold at 60 mm. */
    @Test
    void aZoneThatReachesTheFoldOfAnInfraredSensorIsRefused() {
        JsonNode result = refused("calibrate sim:fold --room fold --fast", "fold-over at about 60 mm");
        assertTrue(!result.get("saved").asBoolean());
        done("calibrate sim:infrared --room beyond --fast");
    }

    @Test
    void echoesTellWhatWarmerAirDoesAndOthersDoNot() {
        JsonNode warmer =
                done("calibrate sim:echo --room echo --fast").get("room").get("warmer");
        // 5 C of 20 C are 0.85 % (ISO 9613-1): about 4.2 mm at 500 mm, 25 cents at 6 cents a mm
        assertEquals(-25, warmer.get("farCents").asDouble(), 4);
        assertEquals(-5, warmer.get("nearCents").asDouble(), 2);
        assertTrue(done("calibrate sim:hall --room hall --fast")
                .get("room")
                .path("warmer")
                .isMissingNode());
        double cold =
                farOff(run("check sim:echo --room echo --fast --temperature 10").last());
        double warm =
                farOff(run("check sim:echo --room echo --fast --temperature 30").last());
        // 20 C are 3.5 %: 17 mm at 500 mm
        assertEquals(17, warm - cold, 1.5);
    }

    private static double farOff(JsonNode check) {
        String reason = check.get("reasons").get(1).asText();
        return Double.parseDouble(reason.replaceAll("far end: (-?[0-9.]+) mm off.*", "$1"));
    }

    /** The same evening with the columns of its recording swapped, and the hands named the other way round. */
    @Test
    void handsMayBeSwapped() throws IOException {
        Path take = folder.resolve("evening.take");
        JsonNode straight = done("calibrate sim:hall --room straight --fast --record " + take)
                .get("room");
        Path swapped = folder.resolve("swapped.take");
        Files.writeString(
                swapped, Files.readString(take).replaceAll("(?m)^([0-9]+\t)([0-9]+),([0-9]+)\\s*$", "$1$3,$2"));
        JsonNode other = done("calibrate take:" + swapped
                        + " --room swapped --pitch 2:distance:mm --level 1:photoresistor:counts10")
                .get("room");
        assertEquals("2", other.get("pitch").get("channel").asText());
        assertEquals(
                straight.get("pitch").get("farMm").asDouble(),
                other.get("pitch").get("farMm").asDouble(),
                1e-6);
    }

    @Test
    void oneChannelAloneAndADistanceForEachHand() {
        assertTrue(done("calibrate sim:echo-cm --room one --fast")
                .get("room")
                .get("level")
                .isNull());
        JsonNode two = done("calibrate sim:two-flight --room two --fast").get("room");
        assertEquals("distance", two.get("level").get("kind").asText());
    }
}
