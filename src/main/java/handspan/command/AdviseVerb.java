package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.Aim;
import handspan.room.budget.Advice;
import handspan.room.budget.Adviser;
import handspan.show.chart.ChartFile;
import handspan.show.chart.Picture;
import handspan.show.chart.Theme;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says what a room can hold for a player. */
@Command(
        name = "advise",
        description =
                "says which scales a room can hold and how wide, how likely each note is missed, and what would help",
        footer = {
            "",
            "A note is missed when a reach for it ends in another note's cell. How far reaches end from their note comes from"
                    + " the player's aim, the uncertainty of the map and the noise that smoothing leaves."
        })
final class AdviseVerb extends Verb {
    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--tuning", paramLabel = "NAME", description = "which tuning (default: the first)")
    @Nullable
    String tuningName;

    @Option(
            names = "--aim",
            paramLabel = "MM",
            description = "how far unaided reaches end from their place, rms (default: the room's, else 6 mm assumed)")
    @Nullable
    Double aimMm;

    @Option(
            names = "--miss",
            paramLabel = "SHARE",
            description = "largest share of reaches for the worst note that may miss"
                    + " (default: 0.2, or 0.1 where the aim was measured)")
    @Nullable
    Double mostMiss01;

    @Option(names = "--chart", paramLabel = "FILE", description = "draws the tuning's notes with their chances as PNG")
    @Nullable
    Path chart;

    @Override
    int run(Talk talk) throws UsageException, IOException, ProfileException {
        RoomProfile profile = room.load();
        String name = tuningName;
        Tuning tuning = name == null ? profile.tunings().get(0) : UsageException.reading(() -> profile.tuning(name));
        Adviser adviser = UsageException.reading(() -> adviser(profile));
        Advice advice = adviser.advice(tuning, scales(profile));
        AdviceView.lines(advice).forEach(talk::say);
        ObjectNode result = Talk.node();
        result.put("room", room.room);
        AdviceView.into(result, advice);
        Path png = chart;
        if (png != null) {
            draw(Picture.pitchLadder(profile, tuning, advice.chosen().chances(), Theme.LIGHT), png);
            talk.say("");
            talk.say("chart: " + png);
            result.put("chart", png.toString());
        }
        talk.object(result);
        return Exit.DONE;
    }

    static void draw(Picture picture, Path png) throws IOException {
        try {
            ChartFile.write(picture.chart(), png, ChartFile.USUAL_WIDTH_PX, ChartFile.USUAL_HEIGHT_PX);
        } catch (IOException e) {
            throw new IOException("chart " + png + " cannot be written: see that its folder is there", e);
        }
    }

    private Adviser adviser(RoomProfile profile) {
        Aim aim = aimMm == null ? profile.room().aim() : new Aim(aimMm, 0);
        return mostMiss01 == null ? Adviser.of(profile.room(), aim) : Adviser.of(profile.room(), aim, mostMiss01);
    }

    /** All that are known, and those of the room's own. */
    private static List<Scale> scales(RoomProfile profile) {
        List<Scale> scales = new ArrayList<>(Scales.all());
        for (Tuning each : profile.tunings()) {
            if (!scales.contains(each.scale())) {
                scales.add(each.scale());
            }
        }
        return scales;
    }
}
