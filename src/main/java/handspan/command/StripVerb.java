package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.show.report.NoteStrip;
import handspan.show.report.Paper;
import handspan.show.report.StripPdf;
import java.io.IOException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Prints where the notes lie. */
@Command(
        name = "strip",
        description = "prints where the notes, or the levels, lie: a PDF at full size, to be cut out and laid under the"
                + " hand's path")
final class StripVerb extends Verb {
    @Mixin
    RoomArguments room = new RoomArguments();

    @Option(names = "--tuning", paramLabel = "NAME", description = "which tuning (default: the first)")
    @Nullable
    String tuningName;

    @Option(names = "--hand", paramLabel = "HAND", description = "pitch (default) or level")
    String hand = "pitch";

    @Option(names = "--paper", paramLabel = "PAPER", required = true, description = "a4 or letter")
    String paper = "";

    @Option(
            names = "--out",
            paramLabel = "FILE",
            required = true,
            description = "the PDF; replaced if it is there already")
    Path out = Path.of("");

    @Override
    int run(Talk talk) throws UsageException, IOException, ProfileException {
        Paper sheet = UsageException.reading(() -> Paper.parse(paper));
        RoomProfile profile = room.load();
        String name = tuningName;
        Tuning tuning = name == null ? profile.tunings().get(0) : UsageException.reading(() -> profile.tuning(name));
        NoteStrip strip = UsageException.reading(() -> strip(profile, tuning));
        StripPdf.Printed printed = StripPdf.write(strip, sheet, out);
        say(talk, printed, sheet);
        ObjectNode result = Talk.node();
        result.put("room", room.room);
        result.put("tuning", tuning.name());
        result.put("hand", strip.hand().word());
        result.put("paper", sheet.word());
        result.put("file", out.toString());
        result.put("pages", printed.pages());
        result.put("notes", printed.marks());
        result.put("named", printed.named());
        result.put("nearMm", strip.zone().nearMm());
        result.put("farMm", strip.zone().farMm());
        result.put("lengthMm", printed.lengthMm());
        talk.object(result);
        return Exit.DONE;
    }

    private NoteStrip strip(RoomProfile profile, Tuning tuning) {
        return switch (hand) {
            case "pitch" -> NoteStrip.ofPitch(profile, tuning);
            case "level" -> NoteStrip.ofLevel(profile);
            default -> throw new IllegalArgumentException("hand '" + hand + "' (pitch, level): name one of these");
        };
    }

    private void say(Talk talk, StripPdf.Printed printed, Paper sheet) {
        talk.say("strip of " + Figures.text(printed.lengthMm(), 0) + " mm from the sensor in " + out + ": "
                + printed.pages() + (printed.pages() == 1 ? " sheet " : " sheets ") + sheet.title() + ", "
                + printed.marks() + (hand.equals("pitch") ? " notes, " : " levels, ") + printed.named() + " named");
        talk.say("print it at 100 %, not \"fit to page\", and measure its bar: 100 mm");
    }
}
