package handspan.profile;

import handspan.music.tuning.Direction;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A program of its own that saves a room over and over, to be killed or to save beside others. */
final class SavingProgram {
    private SavingProgram() {}

    /** A room's version, told from the others by its tuning's trim. */
    static RoomProfile version(String room, int number) {
        Tuning tuning = new Tuning(
                "first",
                ReferencePitch.A440,
                Scales.named("major"),
                0,
                48,
                72,
                Direction.HIGH_FAR,
                Snap.FREE,
                0,
                number / 100.0);
        return SampleRooms.twoHands(room).with(tuning);
    }

    /** Folder, room, first number, how many saves. */
    public static void main(String[] args) throws ProfileException {
        ProfileFolder profiles = new ProfileFolder(Path.of(args[0]));
        int first = Integer.parseInt(args[2]);
        int saves = Integer.parseInt(args[3]);
        for (int i = first; i < first + saves; i++) {
            profiles.save(version(args[1], i));
        }
    }

    /** No more than it needs: a start then takes half the time. */
    private static String classPath() {
        String all = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(all.split(Pattern.quote(File.pathSeparator), -1))
                .filter(part -> !part.endsWith(".jar") || part.contains("jackson") || part.contains("jspecify"))
                .collect(Collectors.joining(File.pathSeparator));
    }

    /** Starts it; its words go to a file beside the folder. */
    static Process start(Path folder, String room, int first, int saves) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-Xshare:auto",
                "-XX:+UseSerialGC",
                "-cp",
                classPath(),
                SavingProgram.class.getName(),
                folder.toString(),
                room,
                String.valueOf(first),
                String.valueOf(saves)));
        File words = folder.resolveSibling(folder.getFileName() + ".log").toFile();
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(words))
                .start();
    }
}
