package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.profile.KeptRoom;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.room.Room;
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
            for (KeptRoom each : kept.kept()) {
                ObjectNode node = array.addObject();
                node.put("name", each.name());
                if (each.profile().isPresent()) {
                    Room held = each.profile().get().room();
                    node.put("calibratedAt", held.calibratedAt());
                    node.put("instrument", held.instrument().name());
                    node.put("damaged", false);
                    talk.say(each.name() + "  " + held.instrument().name() + "  " + held.calibratedAt());
                } else {
                    node.put("damaged", true);
                    node.put("error", each.fault());
                    talk.say(each.name() + "  can't be read: " + each.fault());
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
