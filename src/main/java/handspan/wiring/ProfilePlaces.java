package handspan.wiring;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Where profiles are kept. */
public final class ProfilePlaces {
    private static final String PROJECT_FOLDER = "profiles";
    private static final String OWN_FOLDER = "handspan";

    private ProfilePlaces() {}

    /**
     * The folder to use.
     *
     * @param named on the command line; null when none was
     * @return that one; else {@code profiles} where it is present; else the user's data folder
     */
    public static Path folder(@Nullable Path named) {
        if (named != null) {
            return named;
        }
        Path here = Path.of(PROJECT_FOLDER);
        return Files.isDirectory(here)
                ? here
                : userFolder(System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", "."));
    }

    /** The user's data folder by the custom of each system: the XDG base directories on Linux. */
    static Path userFolder(Map<String, String> environment, String osName, String home) {
        String os = osName.toLowerCase(Locale.ROOT);
        String appData = environment.get("APPDATA");
        String dataHome = environment.get("XDG_DATA_HOME");
        Path base;
        if (os.contains("windows") && appData != null) {
            base = Path.of(appData);
        } else if (os.contains("mac")) {
            base = Path.of(home, "Library", "Application Support");
        } else if (dataHome != null && !dataHome.isBlank()) {
            base = Path.of(dataHome);
        } else {
            base = Path.of(home, ".local", "share");
        }
        return base.resolve(OWN_FOLDER).resolve(PROJECT_FOLDER);
    }
}
