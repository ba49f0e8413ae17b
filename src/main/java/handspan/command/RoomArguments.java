package handspan.command;

import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The room on the command line, and the folder it is kept in. */
final class RoomArguments {
    @Option(names = "--room", paramLabel = "NAME", required = true, description = "the room")
    String room = "";

    @Mixin
    ProfilesArguments profiles = new ProfilesArguments();

    ProfileFolder folder() {
        return profiles.folder();
    }

    RoomProfile load() throws ProfileException {
        return folder().load(room);
    }
}
