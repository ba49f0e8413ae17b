package handspan.profile;

import handspan.instrument.sensor.Instrument;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The folder of room files: {@code ROOM.json} in it, instruments in {@code instruments}, earlier versions in
 * {@code .history/ROOM}. Keeps nothing in memory; files changed by hand are seen at once. Of two programs that save at
 * once one waits for the other, so that both their versions are kept; the later one is today's.
 */
public final class ProfileFolder {
    private static final String INSTRUMENTS = "instruments";
    private static final String HISTORY = ".history";

    private static final Pattern PLAIN_WORD = Pattern.compile("[\\p{L}\\p{N}._/:=+-]+");

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

    /** A folder beside the rooms, for what is no room; need not exist. */
    public Path beside(String name) {
        return folder.resolve(name);
    }

    /** Names of the rooms there are, sorted; none when the folder does not exist. */
    public List<String> rooms() throws ProfileException {
        return BaseName.in(folder, "profile folder");
    }

    /** The rooms there are, sorted by name; those that can't be read among them. */
    public List<KeptRoom> kept() throws ProfileException {
        List<KeptRoom> kept = new ArrayList<>();
        for (String name : rooms()) {
            try {
                kept.add(new KeptRoom(name, Optional.of(load(name)), ""));
            } catch (ProfileException e) {
                kept.add(new KeptRoom(name, Optional.empty(), String.valueOf(e.getMessage())));
            }
        }
        return kept;
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
            throw unknown(room);
        }
        try {
            return RoomJson.form(BaseName.normal(room)).read(bytes.get(), file);
        } catch (ProfileException e) {
            throw e.advising("", orRestore(room, file));
        }
    }

    private ProfileException unknown(String room) throws ProfileException {
        List<String> rooms = rooms();
        return new ProfileException(
                ProfileException.Kind.UNKNOWN_ROOM,
                "room '" + room + "' is not in " + folder + " ("
                        + (rooms.isEmpty() ? "no room is there yet" : String.join(", ", rooms)) + ")",
                rooms.isEmpty() ? "calibrate it first" : "name one of these, or calibrate it first",
                null);
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
        refuseTwin(room, file);
        Change change = change(profile, file);
        if (change.isNone()) {
            return;
        }
        SafeFile.requireWritable(file);
        FolderLock.during(made(file), () -> replaced(profile, file));
    }

    private boolean replaced(RoomProfile profile, Path file) throws ProfileException {
        // once more: another program may have saved meanwhile
        Change change = change(profile, file);
        if (change.isNone()) {
            return false;
        }
        Optional<byte[]> older = change.older();
        if (older.isPresent()) {
            history(file).add(older.get(), file);
        }
        SafeFile.write(file, change.bytes());
        history(file).prune();
        return SafeFile.clearLeftOvers(file);
    }

    /** What a save would do to a file. */
    private static final class Change {
        private final Optional<byte[]> older;
        private final byte[] bytes;

        Change(Optional<byte[]> older, byte[] bytes) {
            this.older = older;
            this.bytes = bytes;
        }

        Optional<byte[]> older() {
            return older;
        }

        byte[] bytes() {
            return bytes;
        }

        boolean isNone() {
            return older.isPresent() && Arrays.equals(older.get(), bytes);
        }
    }

    private Change change(RoomProfile profile, Path file) throws ProfileException {
        String room = profile.room().name();
        try {
            Optional<byte[]> older = SafeFile.read(file);
            return new Change(older, RoomJson.form(room).bytes(profile, older, file));
        } catch (ProfileException e) {
            throw e.advising(UNTOUCHED, orRestore(room, file));
        }
    }

    /** Refuses a name that no room can be kept under here, before anything is measured for it. */
    public void requireName(String room) throws ProfileException {
        refuseTwin(room, fileOf(room));
    }

    /** A folder with two such rooms could not be copied to a system that takes capitals for small letters. */
    private void refuseTwin(String room, Path file) throws ProfileException {
        if (Files.exists(file)) {
            return;
        }
        for (String other : Files.isDirectory(folder) ? rooms() : List.<String>of()) {
            if (BaseName.areTwins(room, other)) {
                throw new ProfileException(
                        ProfileException.Kind.BAD_NAME,
                        "room name '" + room + "' differs from room '" + other
                                + "' by nothing but capitals, and some systems take both for one file",
                        "name '" + other + "' if you mean it, or choose another name",
                        null);
            }
        }
    }

    /** The folder of a file, made where it is missing. */
    private static Path made(Path file) throws ProfileException {
        Path parent = SafeFile.folderOf(file);
        try {
            SafeFile.makeFolder(parent);
        } catch (IOException e) {
            throw SafeFile.notWritable(file, e);
        }
        return parent;
    }

    /** Numbers of a room's earlier versions, the newest first. */
    public List<Integer> versions(String room) throws ProfileException {
        return history(fileOf(room)).numbers();
    }

    /** A room's earlier versions, the newest first; those that can't be read among them. */
    public List<Version> history(String room) throws ProfileException {
        History history = history(fileOf(room));
        List<Version> versions = new ArrayList<>();
        for (int number : history.numbers()) {
            Optional<RoomProfile> profile = Optional.empty();
            String fault = "";
            try {
                profile = Optional.of(version(room, number));
            } catch (ProfileException e) {
                fault = String.valueOf(e.getMessage());
            }
            versions.add(new Version(number, history.savedAt(number), profile, fault));
        }
        return versions;
    }

    /** An earlier version of a room. */
    public RoomProfile version(String room, int number) throws ProfileException {
        return RoomJson.form(BaseName.normal(room)).read(versionBytes(room, number), versionFile(room, number));
    }

    private Path versionFile(String room, int number) throws ProfileException {
        return history(fileOf(room)).file(number);
    }

    private byte[] versionBytes(String room, int number) throws ProfileException {
        Optional<byte[]> bytes = SafeFile.read(versionFile(room, number));
        if (bytes.isPresent()) {
            return bytes.get();
        }
        List<Integer> numbers = versions(room);
        if (numbers.isEmpty() && !has(room)) {
            throw unknown(room);
        }
        throw new ProfileException(
                ProfileException.Kind.NOT_FOUND,
                "version " + number + " of room '" + room + "' is not there ("
                        + (numbers.isEmpty()
                                ? "no earlier version is kept"
                                : numbers.stream().map(String::valueOf).collect(Collectors.joining(", ")))
                        + ")",
                numbers.isEmpty() ? "there is nothing to go back to" : "name one of these",
                null);
    }

    /**
     * Makes an earlier version today's again, byte by byte. Nothing is lost: today's file becomes the newest of the
     * earlier versions or, when it can't be read, is set aside beside them.
     */
    public Restored restore(String room, int number) throws ProfileException {
        Path file = fileOf(room);
        RoomProfile wanted = version(room, number);
        SafeFile.requireWritable(file);
        return FolderLock.during(made(file), () -> {
            byte[] bytes = versionBytes(room, number);
            Optional<byte[]> today = SafeFile.read(file);
            Optional<RoomProfile> before = today.flatMap(old -> readable(room, old, file));
            Optional<Path> aside = Optional.empty();
            if (today.isPresent() && before.isEmpty()) {
                aside = Optional.of(history(file).setAside(today.get()));
            } else if (today.isPresent() && !Arrays.equals(today.get(), bytes)) {
                history(file).add(today.get(), file);
            }
            SafeFile.write(file, bytes);
            history(file).prune();
            return new Restored(wanted, before, aside);
        });
    }

    private static Optional<RoomProfile> readable(String room, byte[] bytes, Path file) {
        try {
            return Optional.of(RoomJson.form(BaseName.normal(room)).read(bytes, file));
        } catch (ProfileException e) {
            return Optional.empty();
        }
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
            SafeFile.clearLeftOvers(file);
        }
        return file;
    }

    private static Path fileIn(Path folder, String name, String what) throws ProfileException {
        String composed = BaseName.normal(name);
        BaseName.check(composed, what);
        try {
            Path file = folder.resolve(composed + BaseName.JSON);
            Path decomposed = folder.resolve(Normalizer.normalize(composed, Normalizer.Form.NFD) + BaseName.JSON);
            // some systems write names that way
            return !Files.exists(file) && Files.exists(decomposed) ? decomposed : file;
        } catch (InvalidPathException e) {
            throw new ProfileException(
                    ProfileException.Kind.BAD_NAME,
                    what + " name '" + name + "' cannot be a file name on this system",
                    "choose a name in plain letters, or set the system's character set to UTF-8",
                    e);
        }
    }

    private History history(Path file) {
        String name = String.valueOf(file.getFileName());
        return new History(folder.resolve(HISTORY).resolve(name.substring(0, name.length() - BaseName.JSON.length())));
    }

    /** Offers the newest earlier version that can be read, with the command that brings it back. */
    private String orRestore(String room, Path file) {
        History history = history(file);
        for (int number : history.numbers()) {
            if (isReadable(room, history.file(number))) {
                return ", or bring back the newest good version (the file is set aside): handspan rooms restore --room "
                        + quoted(room) + " --version " + number + " --profiles " + quoted(folder.toString());
            }
        }
        return ", or move the file away and calibrate the room anew";
    }

    private static boolean isReadable(String room, Path file) {
        try {
            return readable(room, SafeFile.needed(file, "version"), file).isPresent();
        } catch (ProfileException e) {
            return false;
        }
    }

    /** As one word of a command line. */
    private static String quoted(String word) {
        if (PLAIN_WORD.matcher(word).matches()) {
            return word;
        }
        String quote = word.indexOf('$') >= 0 || word.indexOf('`') >= 0 || word.indexOf('!') >= 0 ? "'" : "\"";
        return quote + word + quote;
    }
}
