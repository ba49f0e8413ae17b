package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.survey.ChannelReport;
import handspan.live.session.LinkException;
import handspan.number.units.Figures;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.budget.Adviser;
import handspan.room.budget.Passage;
import handspan.show.chart.Picture;
import handspan.show.report.NoteStrip;
import handspan.show.report.Paper;
import handspan.show.report.StripPdf;
import handspan.show.scene.Showing;
import handspan.show.scene.Station;
import handspan.show.window.Screens;
import handspan.show.window.WindowMemory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The whole job on a simulated instrument. */
@Command(
        name = "demo",
        description =
                "the whole job on a simulated instrument in an invented hall: survey, calibration, a passage sent over"
                        + " real UDP to a receiver on this machine, charts, summary")
final class DemoVerb extends Verb {
    private static final String STRIP = "strip.pdf";

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "target/demo",
            description = "folder for what it makes (${DEFAULT-VALUE})")
    Path out = Path.of("target/demo");

    @Option(names = "--no-window", description = "do not open the desktop program at the end")
    boolean noWindow;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "of the simulation (${DEFAULT-VALUE})")
    long seed;

    @Override
    int run(Talk talk) throws LinkException, IOException, ProfileException {
        Files.createDirectories(out);
        talk.say("Handspan demo: an invented instrument, the Willowreach, in an invented venue, Saltmill Hall.");
        talk.say("Instrument, player and room are simulated (seed " + seed + "); all the rest is the real thing.");

        talk.say("");
        talk.say("1. Survey: are the sensors healthy here? The player holds both hands still.");
        DemoStage stage = new DemoStage(seed, out);
        List<ChannelReport> survey = stage.survey();
        survey.forEach(report -> talk.say("   channel " + report.name() + ", "
                + report.spec().kind().word() + ": " + report.verdict().word() + " - " + report.reason()));

        talk.say("2. Calibration: rest, near, far, then light open, half-way, covered; each captured by itself.");
        RoomProfile profile = stage.calibrate();
        RoomSummary.lines(profile).stream().skip(1).limit(5).forEach(line -> talk.say("   " + line));
        Adviser adviser = Adviser.of(profile.room(), profile.room().aim());
        talk.say("   advice: " + adviser.sentence(profile.tunings().get(0)));

        talk.say("3. A passage, played by the clock, sent to a receiver on this machine.");
        DemoPassage.Played played = new DemoPassage(stage, profile).play();
        DemoPassage.Stillness stillness = new DemoPassage(stage, profile).holdStill();

        List<Picture> charts = DemoCharts.of(stage, profile, played);
        for (Picture chart : charts) {
            chart.write(out);
        }
        StripPdf.write(NoteStrip.ofPitch(profile, profile.tunings().get(0)), Paper.A4, out.resolve(STRIP));
        return conclude(talk, stage, profile, survey, played, stillness, charts);
    }

    private int conclude(
            Talk talk,
            DemoStage stage,
            RoomProfile profile,
            List<ChannelReport> survey,
            DemoPassage.Played played,
            DemoPassage.Stillness stillness,
            List<Picture> charts) {
        Passage passage = played.measured();
        boolean allThere = played.packetsReceived() == played.framesSent() && played.malformed() == 0;
        talk.say("");
        talk.say("Summary");
        talk.say("   held notes lie " + Figures.text(passage.stillErrorCents(), 1)
                + " cents rms off the true hand (promised: a standard uncertainty of "
                + Figures.text(RoomSummary.worstNoteCents(profile), 1)
                + " at the worst note, the sensor's bend between two ends included)");
        talk.say("   heard against the scale they lie "
                + Figures.text(played.inTune().sound().rmsCents(), 1) + " cents rms off it, "
                + Figures.percent(played.inTune().sound().within25Share01()) + " of the time within 25 cents");
        talk.say("   sound follows the hand by " + Figures.text(passage.totalLagMs(), 0) + " ms in all");
        talk.say("   a hand held still for 10 s wobbles " + Figures.text(stillness.sentCents(), 1)
                + " cents rms as sent (the hand itself moved " + Figures.text(stillness.handCents(), 1)
                + " cents rms)");
        talk.say(
                "   " + Figures.count(played.framesSent()) + " bundles sent, " + Figures.count(played.packetsReceived())
                        + " received and decoded: " + Figures.count(played.messagesReceived()) + " messages, "
                        + played.malformed() + " malformed");
        talk.say("   room kept as " + stage(profile) + ", charts in " + out + ":");
        charts.forEach(chart -> talk.say("      " + chart.fileName() + "  " + chart.title()));
        talk.say("      " + STRIP + "  where the notes lie, to be printed at full size");
        ObjectNode result = Talk.node();
        result.put("out", out.toString());
        result.set("survey", JsonViews.reports(survey));
        result.set("room", RoomSummary.node(profile));
        JsonViews.number(result, "stillErrorCents", passage.stillErrorCents());
        JsonViews.number(result, "scaleErrorCents", played.inTune().sound().rmsCents());
        JsonViews.number(result, "rmsErrorCents", passage.rmsErrorCents());
        JsonViews.number(result, "totalLagMs", passage.totalLagMs());
        JsonViews.number(result, "jitterCents", stillness.sentCents());
        JsonViews.number(result, "handJitterCents", stillness.handCents());
        result.put("bundlesSent", played.framesSent());
        result.put("bundlesReceived", played.packetsReceived());
        result.put("messagesReceived", played.messagesReceived());
        result.put("malformed", played.malformed());
        ArrayNode files = result.putArray("charts");
        charts.forEach(chart -> files.add(out.resolve(chart.fileName()).toString()));
        result.put("strip", out.resolve(STRIP).toString());
        int exit = allThere ? Exit.DONE : Exit.NO;
        result.put("exitCode", exit);
        talk.object(result);
        if (!allThere) {
            talk.warn("not every bundle arrived: is another program flooding this machine's network?");
        }
        show(talk, stage);
        return exit;
    }

    private String stage(RoomProfile profile) {
        return out.resolve("profiles").resolve(profile.room().name() + ".json").toString();
    }

    private void show(Talk talk, DemoStage stage) {
        if (noWindow || talk.isJson()) {
            return;
        }
        if (!Screens.canBeOpened()) {
            talk.say("   (no screen can be opened here, so no window)");
            return;
        }
        talk.say("   the same room and instrument are open in the desktop program, not playing yet; close it to end");
        new OpenWindow(
                        stage.rooms(),
                        stage.byTheClock(),
                        true,
                        DemoStage.ROOM,
                        stage.source(),
                        Showing.first(false).at(Station.PLAY))
                .showAndWait(talk, WindowMemory.ofUser());
    }
}
