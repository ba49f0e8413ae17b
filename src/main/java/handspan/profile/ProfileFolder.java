package handspan.profile;

import handspan.instrument.sensor.Instrument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The folder of room files: {@code ROOM.json} in it, instruments in {@code instruments}, earlier versions in
 * {@code .history/ROOM}. Keeps nothing in memory; files changed by hand are seen at once. One save of a room at a time:
 * of two at once the later one wins.
 */
public final class ProfileFolder {
    private static final String JSON = ".json";
    private static final String INSTRUMENTS = "instruments";
    private static final String HISTORY = ".history";

    /** Said first where a save stops at an older file. */
    private static final String UNTOUCHED = "nothing was saved and the file is as it was: ";

    private final Path folder;

    /**
     * A folder.
     *
     * @param folder need not exist; made by the first save
     */
    public ProfileFolder(Path folder) {
        this.folder = folder;
    }

    /** Names of the rooms there are, sorted; none when the folder does not exist. */
    public List<String> rooms() throws ProfileException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(JSON))
                    .map(name -> name.substring(0, name.length() - JSON.length()))
                    .filter(BaseName::isAllowed)
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new ProfileException(
                    ProfileException.Kind.NOT_FOUND,
                    "profile folder " + folder + " cannot be listed: " + SafeFile.reason(e),
                    "name a folder that can be read",
                    e);
        }
    }

    /** Whether a room has a file. */
    public boolean has(String room) {
        try {
            return Files.isRegularFile(fileOf(room));
        } catch (ProfileException e) {
            return false;
        }
    }

    /** The file of a room, whether it exists or not. */
    public Path fileOf(String room) throws ProfileException {
        return fileIn(folder, room, "room");
    }

    /** A room's profile. */
    public RoomProfile load(String room) throws ProfileException {
        Path file = fileOf(room);
        Optional<byte[]> bytes = SafeFile.read(file);
        if (bytes.isEmpty()) {
            List<String> rooms = rooms();
            throw new ProfileException(
                    ProfileException.Kind.UNKNOWN_ROOM,
                    "room '" + room + "' is not in " + folder + " ("
                            + (rooms.isEmpty() ? "no room is there yet" : String.join(", ", rooms)) + ")",
                    rooms.isEmpty() ? "calibrate it first" : "name one of these, or calibrate it first",
                    null);
        }
        try {
            return RoomJson.form(room).read(bytes.get(), file);
        } catch (ProfileException e) {
            throw e.advising("", orCopy(room));
        }
    }

    /**
     * Saves a room under its name. What an older file holds beyond this version is kept; the older file goes into the
     * history. A profile that changes nothing is not written again.
     *
     * @throws ProfileException also when the older file is damaged: it is left as it is
     * @throws IllegalArgumentException when the profile holds what no file can hold, for example an infinity
     */
    public void save(RoomProfile profile) throws ProfileException {
        String room = profile.room().name();
        Path file = fileOf(room);
        Optional<byte[]> older;
        byte[] bytes;
        try {
            older = SafeFile.read(file);
            bytes = RoomJson.form(room).bytes(profile, older, file);
        } catch (ProfileException e) {
            throw e.advising(UNTOUCHED, orCopy(room));
        }
        if (older.isPresent() && Arrays.equals(older.get(), bytes)) {
            return;
        }
        History history = history(room);
        SafeFile.requireWritable(file);
        if (older.isPresent()) {
            history.add(older.get());
        }
        SafeFile.write(file, bytes);
        history.prune();
    }

    /** Numbers of a room's earlier versions, the newest first. */
    public List<Integer> versions(String room) throws ProfileException {
        fileOf(room);
        return history(room).numbers();
    }

    /** An earlier version of a room; saving it puts it back. */
    public RoomProfile version(String room, int number) throws ProfileException {
        fileOf(room);
        Path file = history(room).file(number);
        return RoomJson.form(room).read(SafeFile.needed(file, "version"), file);
    }

    /** The instrument in a file, which need not lie in this folder. */
    public Instrument loadInstrument(Path file) throws ProfileException {
        return InstrumentJson.FORM.read(SafeFile.needed(file, "instrument file"), file);
    }

    /** The instrument of a name; empty when no file tells of it, or its name can't be a file's. */
    public Optional<Instrument> instrument(String name) throws ProfileException {
        Path file;
        try {
            file = fileIn(folder.resolve(INSTRUMENTS), name, "instrument");
        } catch (ProfileException e) {
            return Optional.empty();
        }
        Optional<byte[]> bytes = SafeFile.read(file);
        return bytes.isEmpty() ? Optional.empty() : Optional.of(InstrumentJson.FORM.read(bytes.get(), file));
    }

    /**
     * Saves an instrument under its name.
     *
     * @return its file
     */
    public Path saveInstrument(Instrument instrument) throws ProfileException {
        Path file = fileIn(folder.resolve(INSTRUMENTS), instrument.name(), "instrument");
        Optional<byte[]> older;
        byte[] bytes;
        try {
            older = SafeFile.read(file);
            bytes = InstrumentJson.FORM.bytes(instrument, older, file);
        } catch (ProfileException e) {
            throw e.advising(UNTOUCHED, ", or move the file away");
        }
        if (older.isEmpty() || !Arrays.equals(older.get(), bytes)) {
            SafeFile.requireWritable(file);
            SafeFile.write(file, bytes);
        }
        return file;
    }

    private static Path fileIn(Path folder, String name, String what) throws ProfileException {
        BaseName.check(name, what);
        try {
            return folder.resolve(name + JSON);
        } catch (InvalidPathException e) {
            throw new ProfileException(
                    ProfileException.Kind.BAD_NAME,
                    what + " name '" + name + "' cannot be a file name on this system",
                    "choose a name in plain letters, or set the system's character set to UTF-8",
                    e);
        }
    }

    private History history(String room) {
        return new History(folder.resolve(HISTORY).resolve(room));
    }

    /** Offers the newest earlier version that can be read. */
    private String orCopy(String room) {
        History history = history(room);
        return history.numbers().stream()
                .map(history::file)
                .filter(file -> isReadable(room, file))
                .findFirst()
                .map(file -> ", or copy the newest good version over it: " + file)
                .orElse(", or move the file away and calibrate the room anew");
    }

    private static boolean isReadable(String room, Path file) {
        try {
            RoomJson.form(room).read(SafeFile.needed(file, "version"), file);
            return true;
        } catch (ProfileException e) {
            return false;
        }
    }
}
