package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.wiring.ProfilePlaces;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The rooms that are kept. */
@Command(
        name = "rooms",
        mixinStandardHelpOptions = true,
        description = "the rooms that are kept",
        subcommands = {
            RoomsVerb.ListVerb.class,
            RoomsVerb.ShowVerb.class,
            RoomVersions.HistoryVerb.class,
            RoomVersions.CompareVerb.class,
            RoomVersions.RestoreVerb.class
        })
final class RoomsVerb implements Runnable {
    @Spec
    picocli.CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        throw new picocli.CommandLine.ParameterException(
                spec.commandLine(), "rooms list, or rooms show, history, compare or restore --room NAME");
    }

    /** Lists them. */
    @Command(name = "list", description = "lists the rooms")
    static final class ListVerb extends Verb {
        @Option(names = "--profiles", paramLabel = "DIR", description = "folder of the rooms")
        @Nullable
        Path profiles;

        @Override
        int run(Talk talk) throws ProfileException {
            Path folder = ProfilePlaces.folder(profiles);
            ProfileFolder kept = new ProfileFolder(folder);
            ObjectNode result = Talk.node();
            result.put("folder", folder.toString());
            ArrayNode array = result.putArray("rooms");
            for (String name : kept.rooms()) {
                ObjectNode node = array.addObject();
                node.put("name", name);
                try {
                    RoomProfile profile = kept.load(name);
                    node.put("calibratedAt", profile.room().calibratedAt());
                    node.put("instrument", profile.room().instrument().name());
                    node.put("damaged", false);
                    talk.say(name + "  " + profile.room().instrument().name() + "  "
                            + profile.room().calibratedAt());
                } catch (ProfileException e) {
                    node.put("damaged", true);
                    node.put("error", e.getMessage());
                    talk.say(name + "  can't be read: " + e.getMessage());
                }
            }
            if (array.isEmpty()) {
                talk.say("no room in " + folder + ": make one with 'handspan calibrate SOURCE --room NAME'");
            }
            talk.object(result);
            return Exit.DONE;
        }
    }

    /** Shows one. */
    @Command(name = "show", description = "shows a room: zones, noise, tunings, what can be promised")
    static final class ShowVerb extends Verb {
        @Mixin
        RoomArguments room = new RoomArguments();

        @Override
        int run(Talk talk) throws ProfileException {
            RoomProfile profile = room.load();
            RoomSummary.lines(profile).forEach(talk::say);
            BudgetView.notes(profile).forEach(talk::say);
            talk.object(RoomSummary.node(profile));
            return Exit.DONE;
        }
    }
}
