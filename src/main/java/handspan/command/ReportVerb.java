package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.session.LinkException;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.show.report.NoteFigures;
import handspan.show.report.Paper;
import handspan.show.report.ReportFile;
import handspan.show.report.RoomReport;
import handspan.wiring.SourceOptions;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes down what was measured. */
@Command(
        name = "report",
        description =
                "writes down what was measured in a room and what it can promise, with charts and cautions, as a PDF"
                        + " or an HTML file")
final class ReportVerb extends Verb {
    @Parameters(
            arity = "0..2",
            paramLabel = "TAKE",
            description = "a recording, take:FILE: how in tune it was in the room; two: side by side")
    List<String> takes = List.of();

    @Mixin
    SeveralRooms room = new SeveralRooms();

    @Option(
            names = "--rate",
            paramLabel = "PER_SECOND",
            description = "lines a second of a recording that has no times")
    @Nullable
    Double ratePerS;

    @Option(names = "--tuning", paramLabel = "NAME", description = "which tuning (default: the first)")
    @Nullable
    String tuningName;

    @Option(names = "--paper", paramLabel = "PAPER", description = "of a PDF: a4 (default) or letter")
    String paper = "a4";

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "a file that ends in .pdf or .html, of recordings also .png; replaced if it is there already;"
                    + " of recordings it may be left out")
    @Nullable
    Path written;

    @Override
    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        return takes.isEmpty() ? ofRoom(talk) : ofTakes(talk);
    }

    private int ofTakes(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        Paper sheet = UsageException.reading(() -> Paper.parse(paper));
        OptionalDouble rate = ratePerS == null ? OptionalDouble.empty() : OptionalDouble.of(ratePerS);
        SourceOptions options = new SourceOptions(SourceOptions.USUAL.baud(), rate, 1, false);
        return new TakeReport(takes, room, tuningName, options, new TakeReport.Sheet(written, sheet)).run(talk);
    }

    private int ofRoom(Talk talk) throws UsageException, IOException, ProfileException {
        Path out = written;
        if (out == null || room.rooms.size() > 1) {
            throw new UsageException("the report of a room takes one --room and --out FILE.pdf or FILE.html");
        }
        Paper sheet = UsageException.reading(() -> Paper.parse(paper));
        ReportFile file = UsageException.reading(() -> ReportFile.of(out));
        RoomProfile profile = room.first();
        String name = tuningName;
        Tuning tuning = name == null ? profile.tunings().get(0) : UsageException.reading(() -> profile.tuning(name));
        RoomReport report = RoomReport.of(profile, tuning, LocalDate.now(ZoneId.systemDefault()));
        int pages = file.write(report, sheet);
        boolean paged = file.format() == ReportFile.Format.PDF;
        talk.say("report of room '" + profile.room().name() + "', tuning '" + tuning.name() + "', in " + out
                + (paged ? ": " + pages + " pages " + sheet.title() : ""));
        ObjectNode result = Talk.node();
        result.put("room", profile.room().name());
        result.put("tuning", tuning.name());
        result.put("file", out.toString());
        result.put("format", file.format().word());
        result.put("paper", paged ? sheet.word() : null);
        result.put("pages", pages);
        ArrayNode notes = result.putArray("notes");
        report.notes().forEach(note -> notes.add(note(note)));
        talk.object(result);
        return Exit.DONE;
    }

    private static ObjectNode note(NoteFigures note) {
        ObjectNode node = Talk.node();
        node.put("noteName", note.name());
        JsonViews.number(node, "keyNumber", note.keyNumber());
        JsonViews.number(node, "pitchHz", note.hz());
        JsonViews.number(node, "atMm", note.atMm());
        JsonViews.number(node, "widthMm", note.widthMm());
        node.put("openSide", note.open());
        JsonViews.number(node, "miss01", note.miss01());
        JsonViews.number(node, "standardCents", note.standardCents());
        JsonViews.number(node, "expandedCents", note.expandedCents());
        return node;
    }
}
