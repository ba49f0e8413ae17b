package handspan.command;

import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.wiring.ProfilePlaces;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The room on the command line, and the folder it is kept in. */
final class RoomArguments {
    @Option(names = "--room", paramLabel = "NAME", required = true, description = "the room")
    String room = "";

    @Option(
            names = "--profiles",
            paramLabel = "DIR",
            description = "folder of the rooms (default: profiles where it is present, else the user's data folder)")
    @Nullable
    Path profiles;

    ProfileFolder folder() {
        return new ProfileFolder(ProfilePlaces.folder(profiles));
    }

    RoomProfile load() throws ProfileException {
        return folder().load(room);
    }
}
