package handspan.show.scene;

import handspan.music.tuning.Direction;
import handspan.music.tuning.Scale;
import handspan.music.tuning.ScaleStep;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.profile.RoomProfile;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What can be said of a tuning. */
final class NotesFields {
    static final List<String> CURVES = List.of("even", "finer near", "finer far");

    /** Of the two named curves that are not even, as on the command line. */
    static final double NAMED_WARP = 1;

    private static final List<String> TEMPERAMENTS = List.of(
            "12-equal",
            "just",
            "5-equal",
            "7-equal",
            "17-equal",
            "19-equal",
            "22-equal",
            "24-equal",
            "31-equal",
            "53-equal");

    private static final List<String> KEYS = List.of("C", "Db", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B");
    private static final List<String> STEPS = List.of("-2", "-1.5", "-1", "-0.5", "0", "0.5", "1", "1.5", "2");

    private NotesFields() {}

    static Block.Field tuning(RoomProfile profile, Tuning tuning) {
        return new Block.Field(
                Ask.TUNING,
                "Tuning",
                tuning.name(),
                profile.tunings().stream().map(Tuning::name).toList(),
                "",
                "which of the room's tunings is worked on here; what plays does not change by that");
    }

    static List<Block.Field> besides(Tuning tuning) {
        List<String> temperaments = new ArrayList<>(TEMPERAMENTS);
        if (!temperaments.contains(tuning.temperament().word())) {
            temperaments.add(tuning.temperament().word());
        }
        return List.of(
                new Block.Field(Ask.TUNING_NAME, "Name", tuning.name(), List.of(), "", "what it is called"),
                new Block.Field(
                        Ask.TEMPERAMENT,
                        "Temperament",
                        tuning.temperament().word(),
                        temperaments,
                        "",
                        "how an octave is divided; the tonic stands where twelve equal steps have it"),
                new Block.Field(
                        Ask.TRANSPOSE,
                        "Transposed",
                        String.valueOf(tuning.transpose()),
                        List.of(),
                        "semitones",
                        "added to all, -48..48 semitones"),
                new Block.Field(
                        Ask.TRIM_CENTS,
                        "Trim",
                        Figures.shortest(tuning.trimCents()),
                        List.of(),
                        "cents",
                        "added to all, -100..100 cents"),
                new Block.Field(
                        Ask.A4_HZ,
                        "A4",
                        Figures.shortest(tuning.reference().a4Hz()),
                        List.of(),
                        "Hz",
                        "reference pitch, 415..466 Hz"),
                new Block.Field(
                        Ask.STRENGTH_PERCENT,
                        "Strength",
                        Figures.shortest(100 * tuning.snapping().strength01()),
                        List.of(),
                        "%",
                        "how strongly pull draws, 0..100 %; of no account with the other ways"),
                new Block.Field(
                        Ask.STEPS,
                        "Own steps",
                        isOwn(tuning) ? steps(tuning) : "",
                        List.of(),
                        "",
                        "a scale of your own, in cents or ratios from 0 up, parted by commas: 0,204,386.3 or"
                                + " 1/1,9/8,5/4"));
    }

    /** Whether its scale is none of those that have a name of their own. */
    private static boolean isOwn(Tuning tuning) {
        return Scales.all().stream().noneMatch(scale -> scale.equals(tuning.scale()));
    }

    private static String steps(Tuning tuning) {
        return tuning.scale().steps().stream().map(ScaleStep::text).collect(Collectors.joining(","));
    }

    static List<Block.Field> which(Tuning tuning) {
        List<String> scales =
                new ArrayList<>(Scales.all().stream().map(Scale::name).toList());
        if (!scales.contains(tuning.scale().name())) {
            scales.add(tuning.scale().name());
        }
        List<String> keys = new ArrayList<>(KEYS);
        if (!keys.contains(tuning.tonic().name())) {
            keys.add(tuning.tonic().name());
        }
        return List.of(
                new Block.Field(Ask.SCALE, "Scale", tuning.scale().name(), scales, "", "notes that there are"),
                new Block.Field(Ask.KEY, "Key", tuning.tonic().name(), keys, "", "first note of the scale"),
                new Block.Field(Ask.LOW, "Lowest", tuning.lowName(), List.of(), "", "a note name, for example A3"),
                new Block.Field(Ask.HIGH, "Highest", tuning.highName(), List.of(), "", "a note name, for example A5"));
    }

    static List<Block.Field> how(Tuning tuning) {
        double warp = tuning.range().warp();
        String curve = warp == 0
                ? CURVES.get(0)
                : warp == NAMED_WARP ? CURVES.get(1) : warp == -NAMED_WARP ? CURVES.get(2) : Figures.shortest(warp);
        List<String> curves = new ArrayList<>(CURVES);
        if (!curves.contains(curve)) {
            curves.add(curve);
        }
        String quickness = Figures.shortest(tuning.quickness().steps());
        List<String> steps = new ArrayList<>(STEPS);
        if (!steps.contains(quickness)) {
            steps.add(quickness);
        }
        return List.of(
                new Block.Field(
                        Ask.SNAP,
                        "Snapping",
                        tuning.snap().word(),
                        words(Snap.values()),
                        "",
                        "free: none; pull:"
                                + " drawn to the nearest note; steps: notes only; onset: where the hand rests is a note"),
                new Block.Field(Ask.CURVE, "Spread", curve, curves, "", "whether all notes are equally wide"),
                new Block.Field(
                        Ask.DIRECTION,
                        "Direction",
                        tuning.direction().word(),
                        Arrays.stream(Direction.values()).map(Direction::word).toList(),
                        "",
                        "which end of the zone is high"),
                new Block.Field(
                        Ask.QUICKNESS,
                        "Steadier to quicker",
                        quickness,
                        steps,
                        "steps",
                        "-2 (steadier) to 2 (quicker): each step doubles the wobble of a still hand and halves the averaging"));
    }

    private static List<String> words(Snap[] snaps) {
        return Arrays.stream(snaps).map(Snap::word).toList();
    }
}
