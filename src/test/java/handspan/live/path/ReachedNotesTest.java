package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;

import handspan.FrameList;
import handspan.TestRooms;
import handspan.instrument.line.Reading;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Direction;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.ScaleLadder;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.Aim;
import handspan.room.budget.NoteChance;
import handspan.room.budget.PitchBudget;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The chances that are told beforehand are those with which the real path plays another note. */
@Tag("deep")
class ReachedNotesTest {
    private static final double NOISE_MM = 2.5;
    private static final int REACHES = 2000;
    private static final int READINGS = 60;

    /** Standard errors of a share by which a count may be off. */
    private static final double STANDARD_ERRORS = 4;

    /** Share that may be off besides: the path's smoothing is not exactly as quiet as its settings say. */
    private static final double SMOOTHING_01 = 0.005;

    static Stream<Tuning> tunings() {
        return Stream.of(
                Tuning.usual().withRange(57, 79),
                Tuning.usual()
                        .withScale(Scales.named("minor-pentatonic"))
                        .with(new PitchRange(57, 93, Direction.HIGH_NEAR, 0.5)));
    }

    /** A hand off by aim and map, read with noise, sounds for 1.2 s; which note is it in the end? */
    @ParameterizedTest
    @MethodSource("tunings")
    void thePathPlaysAnotherNoteAsOftenAsStated(Tuning tuning) {
        RoomProfile profile = TestRooms.twoDistances(50, tuning, NOISE_MM);
        Random random = new Random(7);
        ScaleLadder ladder = tuning.ladder();
        for (NoteChance note : NoteChance.of(profile.room(), tuning, Aim.ASSUMED)) {
            double place01 = profile.room().pitch().zone().place01(note.atMm());
            double mapMm = PitchBudget.at(profile.room().pitch(), place01, 1).standardCents();
            int missed = 0;
            for (int reach = 0; reach < REACHES; reach++) {
                double handMm = note.atMm() + Math.hypot(Aim.ASSUMED.mm(), mapMm) * random.nextGaussian();
                SoundFrame heard = heard(profile, handMm, random);
                boolean meant =
                        heard.degree() == ladder.degree(note.note()) && heard.octave() == ladder.octave(note.note());
                missed += meant ? 0 : 1;
            }
            double standardError = Math.sqrt(note.miss01() * (1 - note.miss01()) / REACHES);
            assertEquals(
                    note.miss01(),
                    (double) missed / REACHES,
                    STANDARD_ERRORS * standardError + SMOOTHING_01,
                    () -> tuning.noteName(ladder, note.note()));
        }
    }

    private static SoundFrame heard(RoomProfile profile, double handMm, Random random) {
        FrameList frames = new FrameList();
        long now = Nanos.PER_SECOND;
        PlayPath path = new PlayPath(
                profile,
                profile.tunings().get(0),
                TestRooms.SHAPE,
                PathSettings.USUAL.gliding(false).muted(false),
                List.of(frames),
                now);
        for (int i = 0; i < READINGS; i++) {
            now += 20 * Nanos.PER_MS;
            double mm = handMm + NOISE_MM * random.nextGaussian();
            path.onReading(new Reading(now, new double[] {mm, 300}, 0b11));
        }
        return frames.last();
    }
}
