package handspan.command;

import handspan.profile.ProfileFolder;
import handspan.wiring.ProfilePlaces;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The folder of the rooms on the command line. */
final class ProfilesArguments {
    @Option(
            names = "--profiles",
            paramLabel = "DIR",
            description = "folder of the rooms (default: profiles where it is present, else the user's data folder)")
    @Nullable
    Path profiles;

    ProfileFolder folder() {
        return new ProfileFolder(ProfilePlaces.folder(profiles));
    }
}
