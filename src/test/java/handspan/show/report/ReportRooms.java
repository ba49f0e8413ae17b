package handspan.show.report;

import handspan.music.tuning.Direction;
import handspan.music.tuning.Tuning;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import handspan.profile.SampleRooms;
import handspan.room.Room;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rooms to report on, by name: those of the project, invented ones of every sensor kind, and ones that ask much. */
final class ReportRooms {
    static final LocalDate DAY = LocalDate.of(2026, 11, 26);

    private static final Map<String, RoomReport> REPORTS = reports();

    private ReportRooms() {}

    /** What is said of each of them under its first tuning. */
    static Map<String, RoomReport> allReports() {
        return REPORTS;
    }

    private static Map<String, RoomReport> reports() {
        try {
            Map<String, RoomReport> reports = new LinkedHashMap<>();
            all().forEach((name, profile) -> reports.put(name, report(profile)));
            return Collections.unmodifiableMap(reports);
        } catch (ProfileException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, RoomProfile> all() throws ProfileException {
        ProfileFolder folder = new ProfileFolder(Path.of("profiles"));
        Map<String, RoomProfile> rooms = new LinkedHashMap<>();
        for (String name : folder.rooms()) {
            rooms.put(name, folder.load(name));
        }
        SampleRooms.all()
                .filter(profile -> profile.room().ratePerS() < 1000)
                .forEach(profile -> rooms.put(profile.room().name(), profile));
        rooms.put("light alone", light());
        rooms.put("sixty notes", hall().with(sixty()));
        rooms.put("long names", longNames());
        rooms.put("many tunings", manyTunings());
        return rooms;
    }

    static RoomProfile hall() throws ProfileException {
        return new ProfileFolder(Path.of("profiles")).load("saltmill-hall");
    }

    static RoomReport report(RoomProfile profile) {
        return RoomReport.of(profile, profile.tunings().get(0), DAY);
    }

    /** Five octaves less a semitone, all notes: 60 of them. */
    private static Tuning sixty() {
        return Samples.tuning("chromatic", "C", Samples.TWELVE, 36, 95, Direction.HIGH_FAR, 0)
                .named("first");
    }

    /** Pitch and level by light. */
    private static RoomProfile light() {
        Tuning tuning = Samples.tuning("minor-pentatonic", "D", Samples.TWELVE, 62, 74, Direction.HIGH_NEAR, 0);
        return Samples.room(
                Samples.scaled("1:photoresistor:counts12", new handspan.room.Response.AsMeasured()),
                Samples.scaled("2:photoresistor:counts12", new handspan.room.Response.AsMeasured()),
                tuning,
                handspan.music.level.LevelCurve.USUAL);
    }

    private static RoomProfile longNames() throws ProfileException {
        RoomProfile hall = hall();
        Room room = hall.room();
        String name =
                "the-upper-drying-loft-of-the-old-saltmill-behind-the-second-weir-where-nobody-ever-goes-by-night";
        Room renamed = new Room(
                name,
                room.calibratedAt(),
                room.instrument(),
                room.air(),
                room.ratePerS(),
                room.pitch(),
                room.level(),
                room.holds(),
                room.aim());
        Tuning tuning = hall.tunings().get(0).named("the one that we agreed upon after the third rehearsal & <break>");
        return new RoomProfile(renamed, List.of(tuning), hall.level(), hall.send());
    }

    private static RoomProfile manyTunings() throws ProfileException {
        RoomProfile hall = hall();
        List<Tuning> tunings = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            tunings.add(hall.tunings().get(1).named("piece " + i).shifted(i - 6, 2.5));
        }
        return new RoomProfile(hall.room(), tunings, hall.level(), hall.send());
    }
}
