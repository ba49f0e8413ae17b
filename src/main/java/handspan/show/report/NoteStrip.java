package handspan.show.report;

import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Response;
import handspan.room.Room;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;

/**
 * What a note strip says: where in a hand's travel its notes, or its levels, lie. All distances are mm from the sensor.
 *
 * @param hand which hand it is for
 * @param source the tuning, or the level curve, in a few words
 * @param about the room, the instrument and the date, in a few words
 * @param zone where the hand plays
 * @param nearWords what happens at the near end
 * @param farWords what happens at the far end
 * @param moreWords what grows towards one end: {@code higher}, {@code louder}
 * @param moreFar whether that is the far end
 * @param marks notes or levels, in the order of their distance
 * @param cells what belongs to each note, in the same order; none for levels
 * @param facts sentences about room, tuning and distances
 */
public record NoteStrip(
        HandRole hand,
        String source,
        String about,
        Zone zone,
        String nearWords,
        String farWords,
        String moreWords,
        boolean moreFar,
        List<Mark> marks,
        List<Cell> cells,
        List<String> facts) {
    /** Farthest end of a zone that is printed, mm. */
    public static final double MOST_MM = 5000;

    /** Copies the lists; checks that the zone lies before the sensor and not too far off. */
    public NoteStrip {
        marks = List.copyOf(marks);
        cells = List.copyOf(cells);
        facts = List.copyOf(facts);
        if (zone.nearMm() < 0 || zone.farMm() > MOST_MM) {
            throw new IllegalArgumentException("zone from " + Figures.text(zone.nearMm(), 1) + " to "
                    + Figures.text(zone.farMm(), 1) + " mm on a strip (0.." + Figures.text(MOST_MM, 0)
                    + " mm from the sensor): calibrate again with its ends within that");
        }
    }

    /**
     * A place with a name.
     *
     * @param mm from the sensor
     * @param name what is there
     * @param chief whether it is one to steer by: a keynote, an end of the levels
     */
    public record Mark(double mm, String name, boolean chief) {}

    /**
     * What belongs to a note: the stretch in which it is the nearest, within the zone.
     *
     * @param fromMm nearer boundary
     * @param toMm farther boundary
     */
    public record Cell(double fromMm, double toMm) {
        /** The note's width. */
        public double widthMm() {
            return toMm - fromMm;
        }
    }

    /**
     * The strip of a tuning, its notes called as they sound.
     *
     * @throws IllegalArgumentException when the pitch hand's distances are no true mm, or the zone cannot be printed
     */
    public static NoteStrip ofPitch(RoomProfile profile, Tuning tuning) {
        Room room = profile.room();
        requireMm(room.pitch(), HandRole.PITCH);
        Zone zone = room.pitch().zone();
        ScaleLadder ladder = tuning.ladder();
        PitchCurve curve = tuning.curve();
        boolean far = tuning.direction() == Direction.HIGH_FAR;
        List<Mark> marks = new ArrayList<>();
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < ladder.size(); i++) {
            int note = far ? i : ladder.size() - 1 - i;
            double mm = zone.mm(curve.place01(ladder.key(note)));
            marks.add(new Mark(mm, tuning.noteName(ladder, note), ladder.degree(note) == 1));
            double lower = zone.mm(curve.place01(Math.max(ladder.lowerBoundary(note), curve.lowKey())));
            double upper = zone.mm(curve.place01(Math.min(ladder.upperBoundary(note), curve.highKey())));
            cells.add(new Cell(Math.min(lower, upper), Math.max(lower, upper)));
        }
        List<String> facts = new ArrayList<>();
        facts.add(tuningWords(tuning));
        facts.add(widthWords(cells));
        facts.add(zoneWords(room.pitch()));
        return new NoteStrip(
                HandRole.PITCH,
                "tuning '" + tuning.name() + "'",
                about(room),
                zone,
                far ? "low" : "high",
                far ? "high" : "low",
                "higher",
                far,
                marks,
                cells,
                facts);
    }

    /**
     * The strip of the level curve.
     *
     * @throws IllegalArgumentException when there is no level hand, its distances are no true mm, or the zone cannot be
     *     printed
     */
    public static NoteStrip ofLevel(RoomProfile profile) {
        Room room = profile.room();
        HandSetup level = room.level();
        if (level == null) {
            throw new IllegalArgumentException("room '" + room.name()
                    + "' has no level hand, so there is no strip for it: print the pitch hand's");
        }
        requireMm(level, HandRole.LEVEL);
        LevelMarks levels = new LevelMarks(profile.level(), level.zone());
        List<String> facts = new ArrayList<>();
        facts.add(levels.words());
        facts.add(zoneWords(level));
        boolean far = profile.level().loudFar();
        return new NoteStrip(
                HandRole.LEVEL,
                "its level curve",
                about(room),
                level.zone(),
                far ? "silent" : "loudest",
                far ? "loudest" : "silent",
                "louder",
                far,
                levels.marks(),
                List.of(),
                facts);
    }

    private static void requireMm(HandSetup hand, HandRole role) {
        if (!hand.scaledTravel() || isByDataSheet(hand)) {
            return;
        }
        boolean light = role == HandRole.LEVEL;
        throw new IllegalArgumentException(
                "the " + role.word() + " hand's " + hand.channel().kind().word()
                        + " sensor was calibrated without a ruler, so its places have no distance in mm that could be printed: "
                        + (light
                                ? "print the pitch hand's strip"
                                : "calibrate it with --ruler and three distances or more, for example --ruler 100,200,300,400"));
    }

    private static boolean isByDataSheet(HandSetup hand) {
        return hand.scaledTravel() && hand.response() instanceof Response.Triangulation;
    }

    private static String tuningWords(Tuning tuning) {
        ScaleLadder ladder = tuning.ladder();
        String shift = (tuning.transpose() == 0 ? "" : ", transposed by " + tuning.transpose() + " semitones")
                + (tuning.trimCents() == 0 ? "" : ", trimmed by " + Figures.text(tuning.trimCents(), 1) + " cents");
        return "Scale " + tuning.scale().name() + " on "
                + tuning.tonic().name() + ", " + tuning.temperament().word() + ", A4 = "
                + Figures.text(tuning.reference().a4Hz(), 1) + " Hz, snapping "
                + tuning.snapping().words() + shift
                + ". Notes as they sound, from " + tuning.noteName(ladder, 0) + " to "
                + tuning.noteName(ladder, ladder.size() - 1) + ".";
    }

    private static String widthWords(List<Cell> cells) {
        List<Cell> inner = cells.size() > 2 ? cells.subList(1, cells.size() - 1) : cells;
        String least =
                Figures.text(inner.stream().mapToDouble(Cell::widthMm).min().orElse(0), 1);
        String most =
                Figures.text(inner.stream().mapToDouble(Cell::widthMm).max().orElse(0), 1);
        return "Width of a note: " + least + (most.equals(least) ? "" : " to " + most)
                + " mm; the first and the last end with the zone.";
    }

    private static String about(Room room) {
        return "room '" + room.name() + "', instrument '" + room.instrument().name() + "' revision "
                + room.instrument().revision() + ", calibrated " + day(room.calibratedAt());
    }

    /** The day of an ISO 8601 moment. */
    private static String day(String moment) {
        int time = moment.indexOf('T');
        return time < 0 ? moment : moment.substring(0, time);
    }

    private static String zoneWords(HandSetup hand) {
        return "Zone from " + Figures.text(hand.zone().nearMm(), 1) + " to "
                + Figures.text(hand.zone().farMm(), 1) + " mm; distances " + distanceWords(hand) + ".";
    }

    private static String distanceWords(HandSetup hand) {
        if (isByDataSheet(hand)) {
            return "after the data sheet's curve, no ruler was used: parts differ from it, so measure one note before you cut";
        }
        return hand.response() instanceof Response.AsMeasured
                ? "as the sensor measures them, no ruler was used"
                : "after a ruler";
    }
}
