package handspan.command;

import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.wiring.ProfilePlaces;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The room of a report on the command line; with recordings it may be two. */
final class ReportRooms {
    @Option(
            names = "--room",
            paramLabel = "NAME",
            required = true,
            description = "the room; with recordings a second one, to hear the same hand in both")
    List<String> rooms = List.of();

    @Option(
            names = "--profiles",
            paramLabel = "DIR",
            description = "folder of the rooms (default: profiles where it is present, else the user's data folder)")
    @Nullable
    Path profiles;

    /** The first or only one. */
    String first() {
        return rooms.get(0);
    }

    RoomProfile load() throws ProfileException {
        return load(first());
    }

    RoomProfile load(String room) throws ProfileException {
        return new ProfileFolder(ProfilePlaces.folder(profiles)).load(room);
    }
}
