package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.instrument.survey.ChannelReport;
import handspan.live.session.LinkException;
import handspan.music.passage.Comparison;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.RoomProfile;
import handspan.room.budget.SensorContrast;
import handspan.room.budget.StepsBudget;
import handspan.show.chart.ChartFile;
import handspan.show.chart.NoteErrors;
import handspan.show.chart.PitchErrorChart;
import handspan.show.chart.Theme;
import handspan.show.report.ComparisonReport;
import handspan.show.report.Paper;
import handspan.show.report.PassageReport;
import handspan.show.report.ReportFile;
import handspan.show.report.ReportPart;
import handspan.show.report.ReportText;
import handspan.show.report.RoomReport;
import handspan.wiring.PlayedTake;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import handspan.wiring.TakeSurvey;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How in tune one recording was, or two side by side.
 *
 * @param takes one or two, as written
 * @param rooms of the command line
 * @param tuningName which tuning of each room; null for the first
 * @param options how recordings are read
 * @param sheet where it goes
 */
record TakeReport(
        List<String> takes, SeveralRooms rooms, @Nullable String tuningName, SourceOptions options, Sheet sheet) {
    private static final int COLUMNS = 100;
    private static final String PNG = ".png";

    /**
     * Where a report goes.
     *
     * @param out file; null for none
     * @param paper of a PDF
     */
    record Sheet(@Nullable Path out, Paper paper) {}

    private record Side(Source take, RoomProfile profile, Tuning tuning, PlayedTake played) {
        PassageReport report() {
            return new PassageReport(name(), played.figures(), tuning, played.missing01());
        }

        String name() {
            return take.shortText() + " in " + profile.room().name() + ", tuning '" + tuning.name() + "'";
        }
    }

    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        check();
        List<Side> sides = new ArrayList<>();
        int count = Math.max(takes.size(), rooms.rooms.size());
        for (int i = 0; i < count; i++) {
            sides.add(side(
                    takes.get(Math.min(i, takes.size() - 1)), rooms.rooms.get(Math.min(i, rooms.rooms.size() - 1))));
        }
        ObjectNode result = Talk.node();
        ArrayNode array = result.putArray("takes");
        for (Side side : sides) {
            array.add(node(side));
        }
        List<Side> silent = sides.stream()
                .filter(side -> side.played().figures().visits().isEmpty())
                .toList();
        boolean all = silent.isEmpty();
        if (!all) {
            silent.forEach(side -> talk.warn(silence(side)));
            List.of("comparison", "sensors", "file").forEach(result::putNull);
        } else if (sides.size() == 1) {
            one(talk, result, sides.get(0));
        } else {
            two(talk, result, sides.get(0), sides.get(1));
        }
        int exit = all ? Exit.DONE : Exit.NO;
        result.put("exitCode", exit);
        talk.object(result);
        return exit;
    }

    private void check() throws UsageException {
        for (String take : takes) {
            if (Source.parse(take).kind() != Source.Kind.TAKE) {
                throw new UsageException("'" + take + "' is no recording (take:FILE): record it with 'handspan record "
                        + take + " --out FILE' and report take:FILE");
            }
        }
        if (rooms.rooms.size() > 2) {
            throw new UsageException(rooms.rooms.size() + " rooms (1, or 2 to hear them side by side)");
        }
        Path out = sheet.out();
        if (out != null && !isPng(out)) {
            UsageException.reading(() -> ReportFile.of(out));
        }
    }

    private static boolean isPng(Path out) {
        return out.toString().toLowerCase(Locale.ROOT).endsWith(PNG);
    }

    private Side side(String take, String room) throws UsageException, LinkException, IOException, ProfileException {
        RoomProfile profile = rooms.folder().load(room);
        String name = tuningName;
        Tuning tuning = name == null ? profile.tunings().get(0) : UsageException.reading(() -> profile.tuning(name));
        Optional<String> refusal = StepsBudget.refusal(profile.room(), tuning);
        if (refusal.isPresent()) {
            throw new UsageException(refusal.get());
        }
        Source source = Source.parse(take);
        PlayedTake played = PlayedTake.of(source, options, profile, tuning);
        if (!played.refused().isEmpty()) {
            throw new UsageException("'" + take + "' can't be played in room '" + room + "': " + played.refused());
        }
        return new Side(source, profile, tuning, played);
    }

    private static ObjectNode node(Side side) {
        ObjectNode node = Talk.node();
        node.put("take", side.take().text());
        node.put("room", side.profile().room().name());
        node.put("tuning", side.tuning().name());
        node.put("readings", side.played().readings());
        node.set("rejections", JsonViews.rejections(side.played().rejections()));
        JsonViews.number(node, "missing01", side.played().missing01());
        PassageJson.into(node, side.played().figures());
        node.put("remark", side.played().remark());
        return node;
    }

    private void one(Talk talk, ObjectNode result, Side side) throws UsageException, IOException {
        PassageReport report = side.report();
        talk.say("how in tune was it?");
        say(talk, report.parts(), side);
        result.putNull("comparison");
        result.putNull("sensors");
        write(talk, result, "How in tune", report.parts(), report.layers(), List.of(report.caption()));
    }

    private void two(Talk talk, ObjectNode result, Side first, Side second)
            throws UsageException, LinkException, IOException {
        boolean same = first.take().equals(second.take());
        Comparison comparison = same
                ? Comparison.ofSame(first.played().figures(), second.played().figures())
                : Comparison.ofTwo(first.played().figures(), second.played().figures());
        List<String> sensors =
                same ? List.of("the same recording: there is only one instrument") : sensors(first, second);
        ComparisonReport report = new ComparisonReport(first.report(), second.report(), comparison, sensors);
        talk.say("two passages side by side");
        say(talk, report.parts(), first, second);
        ObjectNode compared = PassageJson.compared(comparison);
        compared.put("verdict", report.verdict());
        result.set("comparison", compared);
        ArrayNode words = result.putArray("sensors");
        sensors.forEach(words::add);
        write(talk, result, "Two passages", report.parts(), report.layers(), report.captions());
    }

    private List<String> sensors(Side first, Side second) throws LinkException, IOException {
        List<ChannelReport> one = TakeSurvey.of(first.take(), options, first.profile());
        List<ChannelReport> other = TakeSurvey.of(second.take(), options, second.profile());
        List<String> words = new ArrayList<>();
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            words.add((i == 0 ? "pitch hand: " : "level hand: ")
                    + new SensorContrast(one.get(i), other.get(i)).words(ComparisonReport.A, ComparisonReport.B));
        }
        return words.isEmpty() ? List.of("it can't be told: too few readings") : words;
    }

    private static void say(Talk talk, List<ReportPart> parts, Side... sides) {
        ReportText.lines(parts, COLUMNS).forEach(talk::say);
        for (Side side : sides) {
            if (!side.played().remark().isEmpty()) {
                talk.say("note: " + side.played().remark());
            }
        }
    }

    private static String silence(Side side) {
        String take = side.take().text();
        if (side.played().readings() == 0 || !side.played().remark().isEmpty()) {
            return "no note was heard in " + take + ": its lines are not those of room '"
                    + side.profile().room().name() + "'"
                    + (side.played().remark().isEmpty()
                            ? ""
                            : " (" + side.played().remark() + ")")
                    + "; 'handspan watch " + take + "' says what they look like";
        }
        return "no note was heard in " + take + ": no hand stayed in the zone of room '"
                + side.profile().room().name() + "' with the level hand up; 'handspan survey " + take
                + "' says what is in it";
    }

    private void write(
            Talk talk,
            ObjectNode result,
            String title,
            List<ReportPart> parts,
            List<NoteErrors.Layer> layers,
            List<String> captions)
            throws UsageException, IOException {
        Path out = sheet.out();
        result.put("file", out == null ? null : out.toString());
        if (out == null) {
            return;
        }
        if (isPng(out)) {
            draw(layers, captions, out);
        } else {
            RoomReport report = new RoomReport(title, "Handspan, " + String.join("; ", captions), parts, List.of());
            UsageException.reading(() -> ReportFile.of(out)).write(report, sheet.paper());
        }
        talk.say("");
        talk.say("written to " + out);
    }

    private static void draw(List<NoteErrors.Layer> layers, List<String> captions, Path png) throws IOException {
        try {
            ChartFile.write(
                    PitchErrorChart.of(layers, captions, Theme.LIGHT),
                    png,
                    ChartFile.USUAL_WIDTH_PX,
                    ChartFile.USUAL_HEIGHT_PX);
        } catch (IOException e) {
            throw new IOException("chart " + png + " cannot be written: see that its folder is there", e);
        }
    }
}
