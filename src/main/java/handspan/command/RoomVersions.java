package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.Restored;
import handspan.profile.RoomComparison;
import handspan.profile.RoomHistory;
import handspan.profile.RoomProfile;
import handspan.profile.Version;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a room was like before, and how to get back there. */
final class RoomVersions {
    private RoomVersions() {}

    /** Lists a room's earlier versions. */
    @Command(name = "history", description = "lists a room's earlier versions: when they were saved, what changed then")
    static final class HistoryVerb extends Verb {
        @Mixin
        RoomArguments room = new RoomArguments();

        @Override
        int run(Talk talk) throws ProfileException {
            RoomHistory history = RoomHistory.of(room.folder(), room.room);
            if (!history.fault().isEmpty()) {
                talk.warn("today's file: " + history.fault());
            }
            ObjectNode result = Talk.node();
            result.put("room", room.room);
            result.put("damaged", !history.fault().isEmpty());
            result.put("error", history.fault());
            ArrayNode array = result.putArray("versions");
            for (RoomHistory.Entry entry : history.entries()) {
                Version version = entry.version();
                ObjectNode node = array.addObject();
                node.put("version", version.number());
                node.put("savedAt", entry.savedAt());
                node.put("damaged", version.profile().isEmpty());
                node.put("error", version.fault());
                ArrayNode changed = node.putArray("changedAfter");
                entry.changedAfter().forEach(changed::add);
                talk.say("version " + version.number() + "  saved " + entry.savedAt() + "  " + entry.words());
            }
            talk.say(
                    history.entries().isEmpty()
                            ? "no earlier version is kept: there is one once the room is changed"
                            : "'handspan rooms compare --room NAME --version N' says more, 'rooms restore' brings one back");
            talk.object(result);
            return Exit.DONE;
        }
    }

    /** Compares a room with another, or with what it was. */
    @Command(
            name = "compare",
            description =
                    "what differs between a room and another, or an earlier version and today's: in mm, cents, dB")
    static final class CompareVerb extends VersionedVerb {
        @Mixin
        RoomArguments room = new RoomArguments();

        @Option(names = "--with", paramLabel = "OTHER", description = "another room")
        @Nullable
        String with;

        @Option(names = "--version", paramLabel = "N", description = "an earlier version (default: the newest)")
        @Nullable
        Integer version;

        @Override
        int run(Talk talk) throws UsageException, ProfileException {
            if (with != null && version != null) {
                throw new UsageException("--with and --version: one of both");
            }
            ProfileFolder folder = room.folder();
            RoomProfile today = room.load();
            String other = with;
            ObjectNode result = Talk.node();
            RoomProfile before;
            RoomProfile after;
            if (other != null) {
                before = today;
                after = folder.load(other);
                result.put("from", room.room);
                result.put("to", other);
            } else {
                List<Integer> numbers = folder.versions(room.room);
                int number = version != null ? version : numbers.isEmpty() ? 1 : numbers.get(0);
                before = folder.version(room.room, number);
                after = today;
                result.put("from", "version " + number);
                result.put("to", room.room);
            }
            talk.say("from " + result.get("from").asText() + " to "
                    + result.get("to").asText() + ":");
            into(result, RoomComparison.of(before, after), talk);
            talk.object(result);
            return Exit.DONE;
        }
    }

    private static void into(ObjectNode result, RoomComparison comparison, Talk talk) {
        JsonViews.number(result, "nearMm", comparison.nearMm());
        JsonViews.number(result, "farMm", comparison.farMm());
        ArrayNode cents = result.putArray("centsByPlace");
        for (int i = 0; i < RoomComparison.PLACES.size(); i++) {
            ObjectNode node = cents.addObject();
            JsonViews.number(node, "place01", RoomComparison.PLACES.get(i));
            JsonViews.number(node, "cents", comparison.centsByPlace().get(i));
        }
        JsonViews.number(result, "noiseMm", comparison.noiseMm());
        comparison
                .light()
                .ifPresentOrElse(
                        light -> {
                            ObjectNode node = result.putObject("light");
                            JsonViews.number(node, "factor", light.factor());
                            JsonViews.number(node, "levelDb", light.levelDb());
                        },
                        () -> result.putNull("light"));
        ArrayNode differences = result.putArray("differences");
        for (RoomComparison.Difference difference : comparison.differences()) {
            differences.addObject().put("what", difference.what()).put("words", difference.words());
            talk.say("  " + difference.what() + ": " + difference.words());
        }
        if (comparison.differences().isEmpty()) {
            talk.say("  nothing differs");
        }
    }

    /** Brings an earlier version back. */
    @Command(
            name = "restore",
            description = "brings an earlier version back; today's goes into the history, a damaged file is set aside")
    static final class RestoreVerb extends VersionedVerb {
        @Mixin
        RoomArguments room = new RoomArguments();

        @Option(
                names = "--version",
                paramLabel = "N",
                required = true,
                description = "which: 'rooms history' lists them")
        int version;

        @Override
        int run(Talk talk) throws ProfileException {
            Restored restored = room.folder().restore(room.room, version);
            ObjectNode result = Talk.node();
            result.put("room", room.room);
            result.put("version", version);
            result.put("setAside", restored.setAside().map(Object::toString).orElse(""));
            ArrayNode changed = result.putArray("changed");
            List<String> words = restored.words(version);
            talk.say(words.get(0));
            List<RoomComparison.Difference> differences =
                    restored.comparison().map(RoomComparison::differences).orElse(List.of());
            differences.forEach(difference -> {
                changed.add(difference.what());
                talk.say("  " + difference.what() + ": " + difference.words());
            });
            words.subList(1, words.size()).forEach(line -> talk.say("  " + line));
            talk.object(result);
            return Exit.DONE;
        }
    }
}
