package handspan.command;

import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** One room or several on the command line, and the folder they are kept in. */
final class SeveralRooms {
    @Option(
            names = "--room",
            paramLabel = "NAME",
            required = true,
            description = "the room; several times for several instruments, or to hear a recording in two")
    List<String> rooms = List.of();

    @Mixin
    ProfilesArguments profiles = new ProfilesArguments();

    ProfileFolder folder() {
        return profiles.folder();
    }

    RoomProfile first() throws ProfileException {
        return folder().load(rooms.get(0));
    }

    List<RoomProfile> all() throws ProfileException {
        List<RoomProfile> all = new ArrayList<>();
        for (String room : rooms) {
            all.add(folder().load(room));
        }
        return all;
    }
}
