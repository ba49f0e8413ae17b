package handspan.profile;

import handspan.music.practice.PracticeRun;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The files of players, {@code players/NAME.json} beside the rooms. Keeps nothing in memory. Of two programs that add a
 * run at once one waits for the other, so that both runs are kept.
 */
public final class PlayerFolder {
    private static final String PLAYERS = "players";

    private final Path folder;

    /**
     * The players of a folder of rooms.
     *
     * @param rooms need not exist
     */
    public PlayerFolder(ProfileFolder rooms) {
        this.folder = rooms.beside(PLAYERS);
    }

    /** Names of the players there are, sorted; none when there is no folder. */
    public List<String> names() throws ProfileException {
        return BaseName.in(folder, "players' folder");
    }

    /** The file of a player, whether it exists or not. */
    public Path fileOf(String player) throws ProfileException {
        String name = BaseName.normal(player);
        BaseName.check(name, "player");
        try {
            return folder.resolve(name + BaseName.JSON);
        } catch (InvalidPathException e) {
            throw new ProfileException(
                    ProfileException.Kind.BAD_NAME,
                    "player name '" + player + "' cannot be a file name on this system",
                    "choose a name in plain letters",
                    e);
        }
    }

    /** A player; one without a run where there is no file yet. */
    public Player load(String player) throws ProfileException {
        Path file = fileOf(player);
        String name = BaseName.normal(player);
        Optional<byte[]> bytes = SafeFile.read(file);
        return bytes.isEmpty() ? newcomer(name) : PlayerJson.form(name).read(bytes.get(), file);
    }

    private Player newcomer(String name) throws ProfileException {
        for (String other : names()) {
            if (BaseName.areTwins(name, other)) {
                throw new ProfileException(
                        ProfileException.Kind.BAD_NAME,
                        "player name '" + name + "' differs from player '" + other
                                + "' by nothing but capitals, and some systems take both for one file",
                        "name '" + other + "' if you mean it, or choose another name",
                        null);
            }
        }
        return new Player(name, List.of());
    }

    /**
     * Adds a run to a player's file, which is made where it is missing. What the file holds beyond this version is
     * kept.
     *
     * @return the player with that run
     * @throws ProfileException also when the file is damaged: it is left as it is
     */
    public Player add(String player, PracticeRun run) throws ProfileException {
        Path file = fileOf(player);
        SafeFile.requireWritable(file);
        try {
            SafeFile.makeFolder(folder);
        } catch (IOException e) {
            throw SafeFile.notWritable(file, e);
        }
        return FolderLock.during(folder, () -> added(player, run, file));
    }

    private Player added(String player, PracticeRun run, Path file) throws ProfileException {
        try {
            Player more = load(player).and(run);
            Optional<byte[]> older = SafeFile.read(file);
            byte[] bytes = PlayerJson.form(more.name()).bytes(more, older, file);
            if (older.isEmpty() || !Arrays.equals(older.get(), bytes)) {
                SafeFile.write(file, bytes);
                SafeFile.clearLeftOvers(file);
            }
            return more;
        } catch (ProfileException e) {
            throw e.advising("this run was not kept and the file is as it was: ", ", or move the file away");
        }
    }
}
